#include <parts/app_context.h>

#include <QGuiApplication>

namespace asleft {

AppContext::AppContext(Garage &garage, Look look, QObject *parent) : QObject(parent), m_garage(garage), m_look(look)
{
    QGuiApplication::setPalette(palette(look));
}

void AppContext::setLook(Look look)
{
    if (look == m_look)
        return;
    m_look = look;
    QGuiApplication::setPalette(palette(look));
    Q_EMIT lookChanged();
}

} // namespace asleft
