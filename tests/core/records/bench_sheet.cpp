#include "recorder.h"
#include "samples.h"

#include <records/bench_sheet.h>

#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QLocale>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <csignal>
#include <sys/resource.h>

namespace asleft {

namespace {

class GuiEnvironment : public ::testing::Environment {
public:
    void SetUp() override
    {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        m_application = std::make_unique<QGuiApplication>(m_count, m_arguments);
    }
    void TearDown() override { m_application.reset(); }

private:
    int m_count = 1;
    char m_name[5] = "test";
    char *m_arguments[2] = {m_name, nullptr};
    std::unique_ptr<QGuiApplication> m_application;
};

const auto *const guiEnvironment = ::testing::AddGlobalTestEnvironment(new GuiEnvironment);

constexpr Moment printed{1'700'000'000'000};
constexpr double millimetre = 72 / 25.4;

/// ISO 216 A4 and the American Letter, in whole points.
QSize sizeOf(SheetPaper paper)
{
    return paper == SheetPaper::A4 ? QSize(595, 842) : QSize(612, 792);
}

QList<RecordedPage> recorded(const JobState &state, const CrankPlan &plan, SheetPaper paper)
{
    RecordingPaper sheet(sizeOf(paper));
    QPainter painter(&sheet);
    paintBenchSheet(painter, state, plan, paper, printed, [&sheet] { sheet.nextPage(); });
    painter.end();
    return sheet.pages();
}

QString allText(const QList<RecordedPage> &pages)
{
    QString all;
    for (const RecordedPage &page : pages) {
        for (const RecordedText &text : page.texts)
            all += text.text + u'\n';
    }
    return all;
}

void expectInsideTheMargins(const QList<RecordedPage> &pages, SheetPaper paper)
{
    // Half a point for lines of type that are wider on one device than on another.
    const QRectF room = QRectF(QPointF(), QSizeF(sizeOf(paper))).marginsRemoved(QMarginsF(1, 1, 1, 1) * (paperMargin - 0.5));
    for (const RecordedPage &page : pages) {
        for (const RecordedText &text : page.texts)
            EXPECT_TRUE(room.contains(text.box)) << text.text.toStdString() << " " << text.box.left() << " " << text.box.right();
        for (const QRectF &box : page.rectangles)
            EXPECT_TRUE(room.contains(box));
    }
}

void expectReadable(const QList<RecordedPage> &pages)
{
    for (const RecordedPage &page : pages) {
        for (qsizetype first = 0; first < page.texts.size(); ++first) {
            EXPECT_GE(page.texts[first].size, 9 - 1e-6) << page.texts[first].text.toStdString();
            const QRectF ink = page.texts[first].box.adjusted(0, 3, 0, -3);
            for (qsizetype second = first + 1; second < page.texts.size(); ++second)
                EXPECT_FALSE(ink.intersects(page.texts[second].box.adjusted(0, 3, 0, -3)))
                    << page.texts[first].text.toStdString() << " / " << page.texts[second].text.toStdString();
        }
    }
}

/// Room for a pencil: as found and as left, and two ticks for each point.
void expectBoxes(const QList<RecordedPage> &pages, std::size_t points)
{
    std::size_t boxes = 0;
    for (const RecordedPage &page : pages) {
        for (const QRectF &box : page.rectangles) {
            EXPECT_GE(box.height(), 8 * millimetre - 0.01);
            EXPECT_GE(box.width(), 8 * millimetre - 0.01);
            ++boxes;
        }
    }
    EXPECT_GE(boxes, 4 * points);
}

void expectEachPageToSayWhatItIs(const QList<RecordedPage> &pages)
{
    for (qsizetype page = 0; page < pages.size(); ++page) {
        // A long title is broken between any two words.
        const QString text = allText({pages[page]}).simplified() + u' ';
        for (const QString &part :
             {QStringLiteral("Hollin 40 tractor"), QStringLiteral("LK 4021"), QStringLiteral("Valve set"),
              QStringLiteral("go before this program"), QStringLiteral("page %1 of %2 ").arg(page + 1).arg(pages.size())})
            EXPECT_TRUE(text.contains(part)) << part.toStdString();
    }
}

/// An engine with so many cylinders, of the first layout that can have them.
EngineText engineWith(int cylinders)
{
    for (const Layout layout : {Layout::InLine, Layout::Vee, Layout::W}) {
        EngineText text = engineText(layout, cylinders);
        if (designEngine(text))
            return text;
    }
    EngineText radial = engineText(Layout::Radial, cylinders);
    for (int cylinder = 1; cylinder <= cylinders; ++cylinder)
        radial.numbering += std::to_string(cylinder) + " ";
    return radial;
}

struct SheetCase {
    int cylinders;
    SheetPaper paper;
};

class EachSheet : public ::testing::TestWithParam<SheetCase> {};

TEST_P(EachSheet, HoldsEveryPointAndNothingIsCutOff)
{
    const auto frame = frameOf(engineWith(GetParam().cylinders));
    const EngineDesign &design = frame->engine.design;
    const auto pages = recorded(stateOf(frame), generatePlan(design, PlanWay::TwoPositions), GetParam().paper);
    expectInsideTheMargins(pages, GetParam().paper);
    expectReadable(pages);
    expectBoxes(pages, design.adjusters().size());
    expectEachPageToSayWhatItIs(pages);
    const QString text = allText(pages);
    for (const AdjusterRef adjuster : design.adjusters()) {
        const QString name = QString::fromStdString(shortName(design, adjuster));
        // Once on the head, once in a table.
        EXPECT_TRUE(text.contains(u'\n' + name + u'\n')) << name.toStdString();
        EXPECT_TRUE(text.contains(u'\n' + name + u' ')) << name.toStdString();
    }
}

std::vector<SheetCase> everySheet()
{
    std::vector<SheetCase> cases;
    for (int cylinders = 1; cylinders <= 24; ++cylinders) {
        for (const SheetPaper paper : {SheetPaper::A4, SheetPaper::Letter})
            cases.push_back({cylinders, paper});
    }
    return cases;
}

INSTANTIATE_TEST_SUITE_P(Cylinders, EachSheet, ::testing::ValuesIn(everySheet()));

EngineText sixWithEverything()
{
    EngineText text = engineText(Layout::InLine, 6, "1-5-3-6-2-4");
    text.valves = "2+2";
    text.bridged = text.bridgeScrews = text.injectors = text.decompressors = true;
    text.barring = "132/11";
    return text;
}

TEST(BenchSheet, SaysHowEachPositionIsFound)
{
    const auto frame = frameOf(sixWithEverything());
    const auto pages = recorded(stateOf(frame), generatePlan(frame->engine.design, PlanWay::TwoPositions), SheetPaper::A4);
    expectInsideTheMargins(pages, SheetPaper::A4);
    expectReadable(pages);
    const QString text = allText(pages);
    EXPECT_TRUE(text.contains(QStringLiteral("1. No. 1 on compression"))) << text.toStdString();
    EXPECT_TRUE(text.contains(QStringLiteral("Turn 360° in the normal direction, clockwise seen from the front.")));
    EXPECT_TRUE(text.contains(QStringLiteral("12 turns of it, anticlockwise")));
    EXPECT_TRUE(text.contains(QStringLiteral("both its rockers are loose")));
    EXPECT_LT(text.indexOf(QStringLiteral("1. No. 1 on compression")), text.indexOf(QStringLiteral("2. ")));
    for (const char *part :
         {"0.25 to 0.35 mm (0.010 to 0.014 in)", "Hollin Workshop Manual p. 41", "from memory", "Lock nut: 20.0 to 24.0 N·m", "Hands clear",
          "Hot parts", "Neutral", "temperature", "hours since it ran", "meter", "measured with"})
        EXPECT_TRUE(text.contains(QString::fromUtf8(part))) << part;
}

TEST(BenchSheet, NothingThatWasReadIsPrinted)
{
    const auto frame = frameOf(engineText(Layout::InLine, 4, "1-3-4-2"));
    const CrankPlan plan = generatePlan(frame->engine.design, PlanWay::TwoPositions);
    const ReadingFact reading{PointId(1),   Phase::AsFound, ReadingForm::Exact, *parse<Length>("0.37", LengthUnit::Millimetre),
                              std::nullopt, std::nullopt,   std::nullopt,       EngineCondition::Cold,
                              false,        false,          std::nullopt};
    const Act act{ActSeq(1), {"uid", JobId(1), PersonId(1), "seat", Moment{}, std::nullopt, reading}};
    const JobState read = fold(frame, std::span(&act, 1));
    ASSERT_TRUE(read.point(PointId(1)).found);
    EXPECT_EQ(allText(recorded(read, plan, SheetPaper::A4)), allText(recorded(stateOf(frame), plan, SheetPaper::A4)));
}

TEST(BenchSheet, PointsNoPositionSetsHaveATableOfTheirOwn)
{
    const auto frame = frameOf(engineText(Layout::InLine, 4, "1-3-4-2"));
    CrankPlan plan = generatePlan(frame->engine.design, PlanWay::TwoPositions);
    plan.unreached = {plan.positions.front().points.back().adjuster};
    plan.positions.front().points.pop_back();
    plan.positions.front().points.front().margin = degrees(-5);
    const QString text = allText(recorded(stateOf(frame), plan, SheetPaper::A4));
    EXPECT_TRUE(text.contains(QStringLiteral("Set by no position of the plan")));
    EXPECT_TRUE(text.contains(QStringLiteral("No position of this plan sets")));
    EXPECT_TRUE(text.contains(QStringLiteral("doubtful")));
}

TEST(BenchSheet, HydraulicTappetsAreTurnedOnAndWaitedFor)
{
    const auto frame = frameOf(engineText(Layout::InLine, 4, "1-3-4-2"));
    frame->engine.bleedDown = std::chrono::minutes(15);
    frame->specs.erase(frame->specs.begin());
    frame->specs.push_back({SpecId(9),
                            EngineId(1),
                            SpecSubject::IntakeLash,
                            1,
                            EngineCondition::Cold,
                            {"Handbook", "9", Certainty::ReadInManual},
                            SpecBand<Angle>{*parseBand<Angle>("3/4 ± 1/8 turn", AngleUnit::Turn), std::nullopt}});
    const QString text = allText(recorded(stateOf(frame), generatePlan(frame->engine.design, PlanWay::TwoPositions), SheetPaper::A4));
    EXPECT_TRUE(text.contains(QStringLiteral("3/4 turn (0.63 to 0.87)")));
    EXPECT_TRUE(text.contains(QStringLiteral("Wait 15 min")));
}

TEST(BenchSheet, ALockNutNobodyLookedUpHasABox)
{
    const auto frame = frameOf(engineText(Layout::InLine, 4, "1-3-4-2"));
    frame->specs.clear();
    const QString text = allText(recorded(stateOf(frame), generatePlan(frame->engine.design, PlanWay::TwoPositions), SheetPaper::A4));
    EXPECT_TRUE(text.contains(QStringLiteral("Lock nut torque, not known here")));
    EXPECT_TRUE(text.contains(QStringLiteral("no spec yet")));
}

/// Without the blanks and line ends that breaking lines changes.
QString lettersOf(QString text)
{
    static const QRegularExpression blanks(QStringLiteral("\\s"));
    return text.remove(blanks);
}

TEST(BenchSheet, NoTextIsTooLong)
{
    const auto frame = frameOf(engineText(Layout::InLine, 4, "1-3-4-2"));
    const std::string words = [] {
        std::string all;
        for (int word = 0; word < 300; ++word)
            all += "Band" + std::to_string(word) + " ";
        return all;
    }();
    frame->vehicle.name = "Hollin 40 tractor " + std::string(200, 'x');
    frame->specs.front().source.manual = words;
    for (const SheetPaper paper : {SheetPaper::A4, SheetPaper::Letter}) {
        const auto pages = recorded(stateOf(frame), generatePlan(frame->engine.design, PlanWay::TwoPositions), paper);
        expectInsideTheMargins(pages, paper);
        expectReadable(pages);
        expectEachPageToSayWhatItIs(pages);
        // The sentences at foot and head of a page stand between the lines of what goes on over its end.
        const QString text = allText(pages);
        for (int word = 0; word < 300; ++word)
            EXPECT_TRUE(text.contains(QStringLiteral("Band%1").arg(word))) << word;
        EXPECT_TRUE(lettersOf(text).contains(QString(200, u'x')));
    }
}

class SheetFile : public ::testing::Test {
protected:
    void SetUp() override { ASSERT_TRUE(m_folder.isValid()); }

    [[nodiscard]] std::string path(const char *name) const { return m_folder.filePath(QString::fromLatin1(name)).toStdString(); }
    [[nodiscard]] static QByteArray contents(const std::string &path)
    {
        QFile file(QString::fromStdString(path));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    Done write(const std::string &to, SheetPaper paper = SheetPaper::A4) const
    {
        return writeBenchSheet(m_state, m_plan, paper, printed, to);
    }

    QTemporaryDir m_folder;
    const JobState m_state = stateOf(frameOf(sixWithEverything()));
    const CrankPlan m_plan = generatePlan(m_state.frame->engine.design, PlanWay::EachOnCompression);
};

/// Width and height of every page of a PDF, by its own word.
QList<QSizeF> mediaBoxes(const QByteArray &pdf)
{
    static const QRegularExpression box(QStringLiteral("/MediaBox \\[0 0 ([0-9.]+) ([0-9.]+)\\]"));
    QList<QSizeF> sizes;
    auto matches = box.globalMatch(QString::fromLatin1(pdf));
    while (matches.hasNext()) {
        const auto match = matches.next();
        sizes.append(QSizeF(match.captured(1).toDouble(), match.captured(2).toDouble()));
    }
    return sizes;
}

TEST_F(SheetFile, HasTheSizeOfItsPaperOnEveryPage)
{
    for (const SheetPaper paper : {SheetPaper::A4, SheetPaper::Letter}) {
        ASSERT_TRUE(write(path("sheet.pdf"), paper));
        const QList<QSizeF> boxes = mediaBoxes(contents(path("sheet.pdf")));
        EXPECT_EQ(boxes.size(), recorded(m_state, m_plan, paper).size());
        for (const QSizeF &box : boxes)
            EXPECT_EQ(box.toSize(), sizeOf(paper));
    }
}

QByteArray withoutTime(QByteArray pdf)
{
    static const QRegularExpression time(QStringLiteral("/CreationDate \\([^)]*\\)"));
    QString text = QString::fromLatin1(pdf);
    EXPECT_TRUE(text.contains(time));
    return text.remove(time).toLatin1();
}

TEST_F(SheetFile, IsTheSameEachTimeButForItsTime)
{
    ASSERT_TRUE(write(path("first.pdf")));
    ASSERT_TRUE(write(path("second.pdf")));
    EXPECT_EQ(withoutTime(contents(path("first.pdf"))), withoutTime(contents(path("second.pdf"))));
    EXPECT_TRUE(contents(path("first.pdf")).startsWith("%PDF-"));
}

TEST_F(SheetFile, AFolderThatIsNotThereIsSaid)
{
    const auto refused = write(path("nowhere/sheet.pdf"));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, ErrorKind::DiskFault);
    EXPECT_EQ(refused.error().arguments.size(), 2U);
    EXPECT_EQ(refused.error().arguments.front(), path("nowhere/sheet.pdf"));
}

/// Files of this process may not grow past so many bytes; a write beyond fails as on a full disk.
class SmallDisk {
public:
    explicit SmallDisk(rlim_t bytes)
    {
        m_handler = std::signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &m_before);
        const rlimit small{bytes, m_before.rlim_max};
        setrlimit(RLIMIT_FSIZE, &small);
    }
    ~SmallDisk()
    {
        setrlimit(RLIMIT_FSIZE, &m_before);
        std::signal(SIGXFSZ, m_handler);
    }
    SmallDisk(const SmallDisk &) = delete;
    SmallDisk &operator=(const SmallDisk &) = delete;

private:
    void (*m_handler)(int);
    rlimit m_before{};
};

TEST_F(SheetFile, AFailedWriteLeavesTheOldFileWhole)
{
    ASSERT_TRUE(write(path("sheet.pdf")));
    const QByteArray before = contents(path("sheet.pdf"));
    for (const rlim_t bytes : {rlim_t(0), rlim_t(1), rlim_t(4096), rlim_t(before.size() - 1)}) {
        const SmallDisk disk(bytes);
        const auto refused = write(path("sheet.pdf"));
        ASSERT_FALSE(refused) << bytes;
        EXPECT_EQ(refused.error().kind, ErrorKind::DiskFault);
        EXPECT_EQ(contents(path("sheet.pdf")), before) << bytes;
    }
    EXPECT_EQ(QDir(m_folder.path()).entryList(QDir::Files), QStringList{QStringLiteral("sheet.pdf")});
    EXPECT_TRUE(write(path("sheet.pdf")));
}

} // namespace

} // namespace asleft
