#pragma once

#include <sys/types.h>

#include <string>

namespace asleft {

/// Another program at the same garage: a process of its own, which keeps the garage open and writes when it is told to. It may do so
/// whatever rights are taken from the files after it has opened them.
class OtherStation {
public:
    explicit OtherStation(const std::string &path);
    ~OtherStation();
    OtherStation(const OtherStation &) = delete;
    OtherStation &operator=(const OtherStation &) = delete;

    /// Stores a vehicle and waits until that is acknowledged.
    void addVehicle(const std::string &name);
    /// Closes the garage and ends.
    void leave();
    /// Ends it as it stands: the log and its index stay.
    void kill();

private:
    void end();

    pid_t m_process = 0;
    int m_tell = -1;
    int m_hear = -1;
};

/// What the other process does; its main() calls this where arguments say so.
int runOtherStation(int count, char **arguments);

} // namespace asleft
