#pragma once

#include <draw/palette.h>
#include <words/numbers.h>
#include <work/garage.h>

#include <QObject>

namespace asleft {

/// What every page of the window shares: the open garage, the look, and how people here write numbers.
class AppContext : public QObject {
    Q_OBJECT

public:
    AppContext(Garage &garage, Look look, QObject *parent = nullptr);

    [[nodiscard]] Garage &garage() const { return m_garage; }
    [[nodiscard]] Look look() const { return m_look; }
    [[nodiscard]] const Ink &ink() const { return asleft::ink(m_look); }
    [[nodiscard]] DecimalMark mark() const { return decimalMark(); }

    /// Sets the application's palette too.
    void setLook(Look look);

Q_SIGNALS:
    void lookChanged();

private:
    Garage &m_garage;
    Look m_look;
};

} // namespace asleft
