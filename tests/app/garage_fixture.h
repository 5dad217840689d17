#pragma once

#include "desk.h"

#include <show/fonts.h>
#include <work/vehicles.h>

#include <QAbstractButton>
#include <QApplication>
#include <QRegularExpression>
#include <QStyleFactory>
#include <QTemporaryDir>
#include <QTest>

#include <memory>

namespace asleft::testing {

/// Each look at this clock is a minute later than the one before.
class SteppingClock final : public Clock {
public:
    [[nodiscard]] Moment now() const override { return {m_at += 60'000}; }

private:
    mutable std::int64_t m_at = 1'763'000'000'000;
};

class CountedUids final : public UidSource {
public:
    Uid next() override { return QStringLiteral("%1").arg(++m_count, 32, 16, QLatin1Char('0')).toStdString(); }

private:
    int m_count = 0;
};

/// An empty garage in a folder of its own, with a desk on it.
struct Shop {
    Shop()
    {
        auto made = Garage::create(folder.filePath(QStringLiteral("shop.asleft")).toStdString(),
                                   {std::make_shared<SteppingClock>(), std::make_shared<CountedUids>(), "seat"});
        if (!made)
            qFatal("the garage could not be made");
        garage = std::move(*made);
        desk = std::make_unique<Desk>(*garage, Look::Light);
    }

    QTemporaryDir folder;
    std::unique_ptr<Garage> garage;
    std::unique_ptr<Desk> desk;
};

/// An even four in line, stored as a person would type it.
inline NewVehicle addFour(Garage &garage, const char *name = "Hollin 40 tractor")
{
    VehicleText text;
    text.name = name;
    text.engine.firingOrder = "1-3-4-2";
    const auto added = addVehicle(garage, text);
    if (!added)
        qFatal("the vehicle could not be added");
    return *added;
}

/// Shows a page and gives it the keyboard, as an opened window has it.
inline void present(QWidget &page, QSize size = {1280, 800})
{
    page.resize(size);
    page.show();
    QApplication::setActiveWindow(&page);
    QCoreApplication::processEvents();
}

/// Types into whatever has the keyboard.
inline void type(const QString &text)
{
    QTest::keyClicks(QApplication::focusWidget(), text);
}

inline void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {})
{
    QTest::keyClick(QApplication::focusWidget(), key, modifiers);
}

inline void click(QAbstractButton *button)
{
    QVERIFY(button->isVisible() && button->isEnabled());
    QTest::mouseClick(button, Qt::LeftButton);
}

/// The visible button of this name.
inline QAbstractButton *buttonNamed(const QWidget &page, const QString &words)
{
    for (auto *button : page.findChildren<QAbstractButton *>())
        if (button->isVisible() && button->text() == words)
            return button;
    qFatal("no button \"%s\"", qPrintable(words));
}

/// A warning of Qt or of ours is a failure: nobody reads them otherwise. To be called by every init().
inline void failOnWarnings()
{
    // What the offscreen platform says about itself is no fault of ours.
    QTest::failOnWarning(QRegularExpression(QStringLiteral("^(?!This plugin does not support)")));
}

} // namespace asleft::testing

#define APP_TEST(TestClass)                                                                                                                \
    int main(int count, char **words)                                                                                                      \
    {                                                                                                                                      \
        qputenv("QT_QPA_PLATFORM", "offscreen");                                                                                           \
        QApplication application(count, words);                                                                                            \
        QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));                                                           \
        QApplication::setFont(asleft::textFont(asleft::TextSize::Body));                                                                   \
        TestClass test;                                                                                                                    \
        return QTest::qExec(&test, count, words);                                                                                          \
    }
