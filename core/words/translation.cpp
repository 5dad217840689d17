#include <words/translation.h>

#include <QCoreApplication>
#include <QTranslator>

namespace asleft {

void installTranslation(QCoreApplication &application)
{
    auto *english = new QTranslator(&application);
    const bool loaded = english->load(QStringLiteral(":/translations/asleft_en.qm"));
    Q_ASSERT(loaded);
    if (loaded)
        QCoreApplication::installTranslator(english);
}

} // namespace asleft
