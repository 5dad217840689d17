#include <window/arguments.h>

#include <window/page_picture.h>

#include <QCommandLineParser>
#include <QCoreApplication>

#include <algorithm>
#include <array>
#include <string_view>

namespace asleft {

namespace {

using Wish = Arguments::Wish;

constexpr int leastSide = 320;
constexpr int mostSide = 8000;

class ArgumentWords {
    Q_DECLARE_TR_FUNCTIONS(ArgumentWords)
};

Arguments refused(const QString &sentence)
{
    Arguments arguments;
    arguments.wish = Wish::Refused;
    arguments.refusal = sentence;
    return arguments;
}

struct Options {
    QCommandLineOption open{QStringLiteral("open"), {}, QStringLiteral("file")};
    QCommandLineOption make{QStringLiteral("new"), {}, QStringLiteral("file")};
    QCommandLineOption picture{QStringLiteral("picture"), {}, QStringLiteral("screen")};
    QCommandLineOption look{QStringLiteral("look"), {}, QStringLiteral("look")};
    QCommandLineOption size{QStringLiteral("size"), {}, QStringLiteral("size")};
    QCommandLineOption help{{QStringLiteral("h"), QStringLiteral("help")}};
    QCommandLineOption version{QStringLiteral("version")};

    void addTo(QCommandLineParser &parser) const { parser.addOptions({open, make, picture, look, size, help, version}); }
};

std::optional<Look> lookNamed(const QString &name)
{
    if (name == QLatin1String("light"))
        return Look::Light;
    if (name == QLatin1String("dark"))
        return Look::Dark;
    return std::nullopt;
}

std::optional<QSize> sizeNamed(const QString &text)
{
    const QStringList sides = text.split(QLatin1Char('x'));
    if (sides.size() != 2)
        return std::nullopt;
    const QSize size(sides[0].toInt(), sides[1].toInt());
    const auto fits = [](int side) { return side >= leastSide && side <= mostSide; };
    return fits(size.width()) && fits(size.height()) ? std::optional(size) : std::nullopt;
}

/// How a picture is to look; a sentence if it cannot be told.
QString readPictureOptions(const QCommandLineParser &parser, const Options &options, Arguments &arguments)
{
    if (parser.isSet(options.look)) {
        arguments.look = lookNamed(parser.value(options.look));
        if (!arguments.look)
            return ArgumentWords::tr("There is no look “%1”; there are light and dark.").arg(parser.value(options.look));
    }
    if (parser.isSet(options.size)) {
        const auto size = sizeNamed(parser.value(options.size));
        if (!size)
            return ArgumentWords::tr("“%1” is no size; give it as 1280x800, from 320 to 8000 a side.").arg(parser.value(options.size));
        arguments.size = *size;
    }
    return {};
}

QString readPictureWish(const QCommandLineParser &parser, const Options &options, Arguments &arguments)
{
    if (arguments.garage.isEmpty())
        return ArgumentWords::tr("A picture is drawn from a garage; name it with --open.");
    arguments.wish = Wish::Picture;
    arguments.page = parser.value(options.picture);
    if (!pageNames().contains(arguments.page))
        return ArgumentWords::tr("There is no page “%1”; there are %2.").arg(arguments.page, pageNames().join(QStringLiteral(", ")));
    if (parser.positionalArguments().size() != 1)
        return ArgumentWords::tr("Name the file the picture goes into, behind the page.");
    arguments.out = parser.positionalArguments().constFirst();
    return {};
}

} // namespace

Arguments readArguments(const QStringList &given)
{
    const Options options;
    QCommandLineParser parser;
    options.addTo(parser);
    Arguments arguments;
    if (!parser.parse(given))
        return refused(ArgumentWords::tr("%1. See --help.").arg(parser.errorText()));
    if (parser.isSet(options.help) || parser.isSet(options.version)) {
        arguments.wish = parser.isSet(options.help) ? Wish::Help : Wish::Version;
        return arguments;
    }
    if (const QString refusal = readPictureOptions(parser, options, arguments); !refusal.isEmpty())
        return refused(refusal);
    arguments.garage = parser.isSet(options.make) ? parser.value(options.make) : parser.value(options.open);
    if (parser.isSet(options.picture)) {
        const QString refusal = readPictureWish(parser, options, arguments);
        return refusal.isEmpty() ? arguments : refused(refusal);
    }
    const QStringList files = parser.positionalArguments();
    const int named = int(files.size()) + (parser.isSet(options.open) ? 1 : 0) + (parser.isSet(options.make) ? 1 : 0);
    if (named > 1)
        return refused(ArgumentWords::tr("One garage can be opened at a time; several are named."));
    if (!files.isEmpty())
        arguments.garage = files.constFirst();
    if (named == 1)
        arguments.wish = parser.isSet(options.make) ? Wish::New : Wish::Open;
    return arguments;
}

bool needsNoDisplay(int count, char **given)
{
    constexpr std::array<std::string_view, 4> quiet{"--picture", "--help", "-h", "--version"};
    return std::any_of(given, given + count, [&](const char *argument) {
        const std::string_view name = std::string_view(argument).substr(0, std::string_view(argument).find('='));
        return std::ranges::find(quiet, name) != quiet.end();
    });
}

QString helpText()
{
    return ArgumentWords::tr("asleft [FILE]\n"
                             "    Opens a garage; without one, the garage opened last.\n"
                             "asleft --open FILE\n"
                             "    Opens this garage.\n"
                             "asleft --new FILE\n"
                             "    Makes a new garage and opens it.\n"
                             "asleft --open FILE --picture PAGE OUT.png [--look light|dark] [--size 1280x800]\n"
                             "    Draws a page of a garage as it is into a picture; needs no display. Pages: %1.\n"
                             "asleft --version\n"
                             "    Tells which version this is.\n")
        .arg(pageNames().join(QStringLiteral(", ")));
}

} // namespace asleft
