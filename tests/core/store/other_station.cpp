#include "other_station.h"

#include "sample.h"
#include "support.h"

#include <QCoreApplication>

#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <iostream>

namespace asleft {
namespace {

void expectAnswer(int hear)
{
    char answer = 0;
    if (::read(hear, &answer, 1) != 1 || answer != '.')
        throw std::runtime_error("the other seat does not answer");
}

} // namespace

OtherStation::OtherStation(const std::string &path)
{
    int tell[2] = {};
    int hear[2] = {};
    if (::pipe(tell) != 0 || ::pipe(hear) != 0)
        throw std::runtime_error("no pipe");
    m_process = ::fork();
    if (m_process == 0) {
        ::dup2(tell[0], STDIN_FILENO);
        ::dup2(hear[1], STDOUT_FILENO);
        for (const int end : {tell[0], tell[1], hear[0], hear[1]})
            ::close(end);
        ::execl("/proc/self/exe", "seat", "other-seat", path.c_str(), nullptr);
        ::_exit(1);
    }
    ::close(tell[0]);
    ::close(hear[1]);
    m_tell = tell[1];
    m_hear = hear[0];
    expectAnswer(m_hear);
}

OtherStation::~OtherStation()
{
    if (m_process != 0)
        kill();
}

void OtherStation::addVehicle(const std::string &name)
{
    const std::string line = name + "\n";
    if (::write(m_tell, line.data(), line.size()) != static_cast<ssize_t>(line.size()))
        throw std::runtime_error("the other seat does not listen");
    expectAnswer(m_hear);
}

void OtherStation::leave()
{
    ::close(m_tell);
    m_tell = -1;
    end();
}

void OtherStation::kill()
{
    ::kill(m_process, SIGKILL);
    end();
}

void OtherStation::end()
{
    int status = 0;
    ::waitpid(m_process, &status, 0);
    m_process = 0;
    for (int *end : {&m_tell, &m_hear})
        if (*end >= 0)
            ::close(*end);
    m_tell = m_hear = -1;
}

int runOtherStation(int count, char **arguments)
{
    const QCoreApplication application(count, arguments);
    const auto garage = Database::open(arguments[2]);
    if (!garage || (*garage)->readOnly())
        return 1;
    std::cout << '.' << std::flush;
    for (std::string name; std::getline(std::cin, name);) {
        done(**garage, [&](Transaction &transaction) { return insertVehicle(transaction, newVehicle(name)).map([](VehicleId) {}); });
        std::cout << '.' << std::flush;
    }
    return 0;
}

} // namespace asleft
