// What every desktop program pays: an empty main window, from the start of the process to its first paint.
#include "first_paint.h"

#include <QMainWindow>
#include <QStyleFactory>

int main(int count, char **words)
{
    QApplication application(count, words);
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    EndsAtFirstPaint end;
    application.installEventFilter(&end);
    QMainWindow window;
    window.resize(1280, 800);
    window.show();
    return QApplication::exec();
}
