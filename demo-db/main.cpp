#include "demo_garage.h"

#include <QCoreApplication>

#include <iostream>

namespace {

/// Names what the world refused; the sentences of the program live further up and need a screen's fonts and language.
std::string whatWasSaid(const asleft::Error &error)
{
    std::string said =
        error.kind == asleft::ErrorKind::FileExists ? "there already:" : "refused (" + std::to_string(static_cast<int>(error.kind)) + "):";
    for (const std::string &argument : error.arguments)
        said += " " + argument;
    return said;
}

} // namespace

int main(int count, char **arguments)
{
    const QCoreApplication application(count, arguments);
    if (count != 2 || arguments[1][0] == '-') {
        std::cerr << "asleft-demo OUT.asleft makes the invented garage in a new file.\n";
        return 2;
    }
    if (const auto made = asleft::makeDemoGarage(arguments[1]); !made) {
        std::cerr << "asleft-demo: " << whatWasSaid(made.error()) << '\n';
        return 1;
    }
    return 0;
}
