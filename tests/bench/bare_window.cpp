// What every desktop program pays: an empty main window, from the start of the process to its first paint. With --text it holds one line of
// text: a window that says anything has the fonts to find as well.
#include "first_paint.h"

#include <QLabel>
#include <QMainWindow>
#include <QStyleFactory>

int main(int count, char **words)
{
    QApplication application(count, words);
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    EndsAtFirstPaint end;
    application.installEventFilter(&end);
    QMainWindow window;
    if (count > 1 && QByteArrayView(words[1]) == "--text")
        window.setCentralWidget(new QLabel(QStringLiteral("Asleft")));
    window.resize(1280, 800);
    window.show();
    return QApplication::exec();
}
