#pragma once

#include <shop/things.h>

#include <QString>

namespace asleft {

// What can hurt.

struct CautionWords {
    QString title;
    QString sentence;
};
CautionWords cautionWords(Caution caution);
/// The manual, local codes and licensed practice go before this program.
QString standingSentence();

} // namespace asleft
