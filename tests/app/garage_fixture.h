#pragma once

#include "app_test.h"
#include "engine_texts.h"

#include <parts/app_context.h>

#include <work/vehicles.h>

#include <QAbstractButton>
#include <QApplication>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

#include <unistd.h>

#include <filesystem>
#include <functional>
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

/// An empty garage in a folder of its own, with a context on it.
struct Shop {
    Shop()
    {
        auto made = Garage::create(folder.filePath(QStringLiteral("shop.asleft")).toStdString(),
                                   {std::make_shared<SteppingClock>(), std::make_shared<CountedUids>(), "seat"});
        if (!made)
            qFatal("the garage could not be made");
        garage = std::move(*made);
        context = std::make_unique<AppContext>(*garage, Look::Light);
    }

    QTemporaryDir folder;
    std::unique_ptr<Garage> garage;
    std::unique_ptr<AppContext> context;
};

/// An even four in line, or what is made of it, stored as a person would type it.
inline NewVehicle addFour(Garage &garage, const std::function<void(VehicleText &)> &make)
{
    VehicleText text;
    text.name = "Hollin 40 tractor";
    text.engine = fourText();
    make(text);
    const auto added = addVehicle(garage, text);
    if (!added)
        qFatal("the vehicle could not be added");
    return *added;
}
inline NewVehicle addFour(Garage &garage, const char *name = "Hollin 40 tractor", const char *engineName = "")
{
    return addFour(garage, [&](VehicleText &text) {
        text.name = name;
        text.engineName = engineName;
    });
}

/// The garage of a shop once more, as it opens where it may only be read. The shop's own has to be closed before: reset() it.
struct ReadOnlyShop {
    explicit ReadOnlyShop(Shop &shop)
    {
        namespace fs = std::filesystem;
        const std::string path = shop.garage->path();
        shop.context.reset();
        shop.garage.reset();
        fs::permissions(shop.folder.path().toStdString(), fs::perms(0755));
        for (const auto &entry : fs::directory_iterator(shop.folder.path().toStdString()))
            fs::permissions(entry.path(), fs::perms(0444));
        fs::permissions(shop.folder.path().toStdString(), fs::perms(0555));
        // Who runs the tests as root may write anything: for this they are nobody in particular.
        constexpr uid_t nobody = 65534;
        const bool root = ::geteuid() == 0;
        if (root && ::seteuid(nobody) != 0)
            qFatal("root could not become nobody");
        auto opened = Garage::open(path, {std::make_shared<SteppingClock>(), std::make_shared<CountedUids>(), "seat"});
        if (root && ::seteuid(0) != 0)
            qFatal("nobody could not become root again");
        fs::permissions(shop.folder.path().toStdString(), fs::perms(0755));
        if (!opened)
            qFatal("the garage could not be opened");
        garage = std::move(*opened);
        context = std::make_unique<AppContext>(*garage, Look::Light);
    }

    std::unique_ptr<Garage> garage;
    std::unique_ptr<AppContext> context;
};

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
