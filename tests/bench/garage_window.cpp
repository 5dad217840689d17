// The program as a person starts it, with a garage: the same way as its own main, to the first paint.
#include "first_paint.h"

#include <window/opening.h>

#include <draw/fonts.h>

#include <QStyleFactory>

int main(int count, char **words)
{
    QApplication application(count, words);
    QCoreApplication::setOrganizationName(QStringLiteral("AsleftBench"));
    QCoreApplication::setApplicationName(QStringLiteral("AsleftBench"));
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    QApplication::setFont(asleft::textFont(asleft::TextSize::Body));
    EndsAtFirstPaint end;
    application.installEventFilter(&end);
    asleft::Opening opening;
    if (const auto code = opening.begin(asleft::readArguments(QCoreApplication::arguments())))
        return *code == 0 ? 1 : *code;
    return QApplication::exec();
}
