#include <window/page_picture.h>

#include <parts/garage_copy.h>
#include <window/window.h>
#include <words/errors.h>

#include <QApplication>
#include <QPixmap>

#include <array>

namespace asleft {

namespace {

struct NamedPage {
    const char *name;
    Page page;
};

constexpr std::array<NamedPage, 5> namedPages{
    {{"vehicles", Page::Vehicles}, {"jobs", Page::Jobs}, {"bench", Page::Bench}, {"specs", Page::Specs}, {"tools", Page::Tools}}};

/// Of the qualities of PNG, which all look the same: a little larger than by itself, and several times as fast.
constexpr int quicklyPacked = 80;

} // namespace

QStringList pageNames()
{
    QStringList names;
    for (const NamedPage &named : namedPages)
        names.append(QLatin1String(named.name));
    return names;
}

QString drawWindow(QWidget &window, QSize size, const std::function<void()> &prepare, const QString &out)
{
    window.resize(size);
    window.show();
    QApplication::setActiveWindow(&window);
    prepare();
    // Layouts settle when their events are seen; wrapped lines take a second round.
    QCoreApplication::processEvents();
    QCoreApplication::processEvents();
    if (window.grab().save(out, "PNG", quicklyPacked))
        return {};
    return QCoreApplication::translate("Pictures", "The picture %1 could not be written; is there room, and may one write there?").arg(out);
}

QString drawPage(const QString &garage, Look look, const QString &page, QSize size, const QString &out)
{
    const auto copy = GarageCopy::of(garage);
    if (!copy)
        return sentence(copy.error());
    AppContext context(copy->garage(), look);
    Window window(context);
    const auto *const named = std::ranges::find(namedPages, page, [](const NamedPage &each) { return QString::fromLatin1(each.name); });
    Q_ASSERT(named != namedPages.end());
    return drawWindow(
        window, size,
        [&] {
            window.begin();
            window.goTo(named->page);
        },
        out);
}

} // namespace asleft
