#pragma once

#include <QCoreApplication>

namespace asleft {

/// What is printed on a bench sheet, for the translator.
class SheetWords {
    Q_DECLARE_TR_FUNCTIONS(SheetWords)
};

} // namespace asleft
