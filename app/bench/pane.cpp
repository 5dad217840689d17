#include <bench/pane.h>

namespace asleft {

void Pane::showStep(StepId) {}

void Pane::takeUp(const Subject &) {}

void Pane::tellDone(ActSeq) {}

void Pane::tellRefused(const QString &) {}

bool Pane::takeBack(bool)
{
    return false;
}

} // namespace asleft
