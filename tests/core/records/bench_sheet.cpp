// What stands on a bench sheet, and where.
#include "gui.h"
#include "joint_texts.h"
#include "printing.h"
#include "samples.h"

#include <words/cautions.h>
#include <words/crank.h>
#include <words/joints.h>
#include <words/numbers.h>
#include <words/specs.h>

#include <QCoreApplication>
#include <QRegularExpression>
#include <QSet>

#include <algorithm>

namespace asleft {

namespace bench_sheet_tests {

QString allText(const QList<RecordedPage> &pages)
{
    QString all;
    for (const RecordedPage &page : pages) {
        for (const RecordedText &text : page.texts)
            all += text.text + u'\n';
    }
    return all;
}

/// Without the blanks and line ends that breaking lines changes.
QString lettersOf(QString text)
{
    static const QRegularExpression blanks(QStringLiteral("\\s"));
    return text.remove(blanks);
}

/// Whether words stand on the paper, wherever their lines are broken.
void expectSaid(const QString &printed, const QStringList &words)
{
    for (const QString &each : words)
        EXPECT_TRUE(!each.isEmpty() && lettersOf(printed).contains(lettersOf(each))) << each.toStdString() << "\n" << printed.toStdString();
}

/// Words only the sheet has.
QString sheetWords(const char *words, const char *note = nullptr)
{
    return QCoreApplication::translate("SheetWords", words, note);
}

/// Also of a line, whose box has no area.
bool lies(const QRectF &box, const QRectF &room)
{
    return room.contains(box.topLeft()) && room.contains(box.bottomRight());
}

void expectInsideTheMargins(const QList<RecordedPage> &pages, SheetPaper paper)
{
    // Half a point for lines of type that are wider on one device than on another.
    const QRectF room = QRectF(QPointF(), QSizeF(sizeOf(paper))).marginsRemoved(QMarginsF(1, 1, 1, 1) * (paperMargin - 0.5));
    for (const RecordedPage &page : pages) {
        for (const RecordedText &text : page.texts)
            EXPECT_TRUE(room.contains(text.box)) << text.text.toStdString() << " " << text.box.left() << " " << text.box.right();
        for (const QRectF &box : page.rectangles + page.shapes)
            EXPECT_TRUE(lies(box, room)) << box.left() << " " << box.top() << " " << box.right() << " " << box.bottom();
    }
}

/// Where the ink of a text is, but for what hangs below its line.
QRectF inkOf(const RecordedText &text)
{
    return text.box.adjusted(0, 3, 0, -3);
}

void expectReadable(const QList<RecordedPage> &pages)
{
    for (const RecordedPage &page : pages) {
        for (qsizetype first = 0; first < page.texts.size(); ++first) {
            EXPECT_GE(page.texts[first].size, 9 - 1e-6) << page.texts[first].text.toStdString();
            for (qsizetype second = first + 1; second < page.texts.size(); ++second)
                EXPECT_FALSE(inkOf(page.texts[first]).intersects(inkOf(page.texts[second])))
                    << page.texts[first].text.toStdString() << " / " << page.texts[second].text.toStdString();
        }
    }
}

/// Every box is large enough for a pencil, and a text is in it or clear of it; no box covers another.
void expectBoxesToWriteIn(const QList<RecordedPage> &pages)
{
    for (const RecordedPage &page : pages) {
        for (qsizetype index = 0; index < page.rectangles.size(); ++index) {
            const QRectF &box = page.rectangles[index];
            EXPECT_GE(box.height(), 8 * millimetre - 0.01);
            EXPECT_GE(box.width(), 8 * millimetre - 0.01);
            for (const RecordedText &text : page.texts)
                EXPECT_TRUE(box.contains(inkOf(text)) || !box.intersects(inkOf(text))) << text.text.toStdString();
            for (qsizetype other = index + 1; other < page.rectangles.size(); ++other)
                EXPECT_FALSE(box.intersects(page.rectangles[other]));
        }
    }
}

QList<const RecordedText *> found(const RecordedPage &page, const QString &text, bool strong)
{
    QList<const RecordedText *> all;
    for (const RecordedText &recorded : page.texts) {
        if (recorded.text == text && recorded.strong == strong)
            all.append(&recorded);
    }
    return all;
}

/// The boxes in the row of a point: as found and as left to write in, locked and felt again to tick.
void expectBoxesOf(const RecordedPage &page, const RecordedText &point)
{
    QList<QRectF> wide;
    for (const QRectF &box : page.rectangles) {
        const bool beside = box.top() < point.box.center().y() && point.box.center().y() < box.bottom() && box.left() > point.box.right();
        if (beside && box.width() > 20 * millimetre)
            wide.append(box);
    }
    ASSERT_EQ(wide.size(), 2) << point.text.toStdString();
    const auto ticks = std::count_if(page.rectangles.begin(), page.rectangles.end(), [&](const QRectF &box) {
        return box.left() > wide.last().right() && wide.last().top() < box.center().y() && box.center().y() < wide.last().bottom();
    });
    EXPECT_EQ(ticks, 2) << point.text.toStdString();
}

/// Once on the head, once in a table with its boxes.
void expectEveryPointOnce(const QList<RecordedPage> &pages, const EngineDesign &design)
{
    for (const AdjusterRef adjuster : design.adjusters()) {
        const QString name = QString::fromStdString(shortName(design, adjuster));
        EXPECT_EQ(found(pages.first(), name, false).size(), 1) << name.toStdString();
        int rows = 0;
        for (const RecordedPage &page : pages) {
            for (const RecordedText *row : found(page, name, true)) {
                expectBoxesOf(page, *row);
                ++rows;
            }
        }
        EXPECT_EQ(rows, 1) << name.toStdString();
    }
}

/// Below the title of a position follows a point on the same page.
void expectNoTitleAlone(const QList<RecordedPage> &pages, const EngineDesign &design)
{
    static const QRegularExpression title(QStringLiteral("^[0-9]+\\. "));
    QSet<QString> names;
    for (const AdjusterRef adjuster : design.adjusters())
        names.insert(QString::fromStdString(shortName(design, adjuster)));
    for (const RecordedPage &page : pages) {
        bool pointSince = true;
        for (const RecordedText &text : page.texts) {
            if (text.strong && title.match(text.text).hasMatch()) {
                EXPECT_TRUE(pointSince) << text.text.toStdString();
                pointSince = false;
            } else if (text.strong && names.contains(text.text)) {
                pointSince = true;
            }
        }
        EXPECT_TRUE(pointSince);
    }
}

void expectEachPageToSayWhatItIs(const QList<RecordedPage> &pages)
{
    for (qsizetype page = 0; page < pages.size(); ++page) {
        const QString text = allText({pages[page]});
        expectSaid(text,
                   {QStringLiteral("Hollin 40 tractor"), QStringLiteral("LK 4021"), QStringLiteral("Set the valves"), standingSentence()});
        EXPECT_TRUE(text.split(u'\n').contains(sheetWords("page %1 of %2").arg(page + 1).arg(pages.size()))) << text.toStdString();
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

/// Every number of cylinders, and the layouts and valve trains that make a sheet long or its head crowded.
std::vector<EngineText> everyEngine()
{
    std::vector<EngineText> engines{sixWithEverything()};
    for (int cylinders = 1; cylinders <= 24; ++cylinders)
        engines.push_back(engineWith(cylinders));
    for (const int cylinders : {9, 18})
        engines.push_back(engineText(Layout::Radial, cylinders));
    engines.push_back(engineText(Layout::Flat, 16));
    engines.push_back(engineText(Layout::Opposed, 24));
    EngineText three = engineText(Layout::InLine, 3);
    three.valves = "2+2";
    three.bridged = three.bridgeScrews = true;
    EngineText twelve = engineText(Layout::InLine, 12);
    twelve.valves = "3+2";
    EngineText twoStroke = engineText(Layout::Vee, 8);
    twoStroke.cycle = Cycle::TwoStroke;
    twoStroke.valves = "0+4";
    twoStroke.bridged = twoStroke.injectors = true;
    engines.insert(engines.end(), {three, twelve, twoStroke});
    return engines;
}

using SheetCase = std::tuple<EngineText, SheetPaper, PlanWay>;

class EachSheet : public ::testing::TestWithParam<SheetCase> {};

TEST_P(EachSheet, HoldsEveryPointAndNothingIsCutOff)
{
    const auto &[engine, paper, way] = GetParam();
    const auto frame = frameOf(engine);
    const EngineDesign &design = frame->engine.design;
    const auto pages = recorded(stateOf(frame), generatePlan(design, way), paper);
    expectInsideTheMargins(pages, paper);
    expectReadable(pages);
    expectBoxesToWriteIn(pages);
    expectEveryPointOnce(pages, design);
    expectNoTitleAlone(pages, design);
    expectEachPageToSayWhatItIs(pages);
}

INSTANTIATE_TEST_SUITE_P(Engines, EachSheet,
                         ::testing::Combine(::testing::ValuesIn(everyEngine()), ::testing::Values(SheetPaper::A4, SheetPaper::Letter),
                                            ::testing::Values(PlanWay::TwoPositions, PlanWay::EachOnCompression)));

TEST(BenchSheet, SaysHowEachPositionIsFound)
{
    const auto frame = frameOf(sixWithEverything());
    const EngineDesign &design = frame->engine.design;
    const CrankPlan plan = generatePlan(design, PlanWay::TwoPositions);
    const auto pages = recorded(stateOf(frame), plan, SheetPaper::A4);
    expectInsideTheMargins(pages, SheetPaper::A4);
    expectReadable(pages);
    const QString text = allText(pages);
    const auto title = [&](int number) {
        return sheetWords("%1.  %2", "number of the position, its name")
            .arg(number)
            .arg(positionName(design, plan.positions.at(std::size_t(number) - 1)));
    };
    EXPECT_EQ(plan.positions.front().place, (CrankPosition{Cylinder{0}, CrankEvent::Compression}));
    expectSaid(text, {title(1), title(2), travelSentence(design, degrees(0), degrees(360)),
                      pinionSentence(design, degrees(0), degrees(360)), strokeCheckSentence(design, strokeCheck(design, Cylinder{0}))});
    const QString letters = lettersOf(text);
    EXPECT_LT(letters.indexOf(lettersOf(title(1))), letters.indexOf(lettersOf(title(2))));
    for (const Spec &spec : frame->specs)
        expectSaid(text, {sourceText(spec.source)});
    expectSaid(text, {bandText(bands("0.30 ± 0.05 mm", ".012 ± .002 in")), sheetWords("Lock nut: %1").arg(specLine(frame->specs.back()))});
    for (const Caution caution : {Caution::HandsClear, Caution::HotParts, Caution::Neutral})
        expectSaid(text, {cautionWords(caution).title});
    for (const char *words : {"temperature", "hours since it ran", "meter", "measured with", "turned, mark and stroke checked", "Remarks"})
        expectSaid(text, {sheetWords(words)});
    expectSaid(text, {QStringLiteral("mm / in"), QStringLiteral("printed 14")});
}

TEST(BenchSheet, NothingThatWasReadIsPrinted)
{
    const auto frame = frameOf(fourText());
    const CrankPlan plan = generatePlan(frame->engine.design, PlanWay::TwoPositions);
    const PointId point = frame->engine.points.front().id;
    const ReadingFact reading{.point = point, .value = length("0.37"), .next = {}, .judgedBy = SpecId(1), .tool = {}, .corrects = {}};
    const Act act{ActSeq(1), {"uid", JobId(1), PersonId(1), "seat", Moment{}, std::nullopt, reading}};
    const JobState read = fold(frame, std::span(&act, 1));
    ASSERT_TRUE(read.point(point).found);
    EXPECT_EQ(allText(recorded(read, plan, SheetPaper::A4)), allText(recorded(stateOf(frame), plan, SheetPaper::A4)));
}

TEST(BenchSheet, PointsNoPositionSetsHaveATableOfTheirOwn)
{
    const auto frame = frameOf(fourText());
    CrankPlan plan = generatePlan(frame->engine.design, PlanWay::TwoPositions);
    plan.unreached = {plan.positions.front().points.back().adjuster};
    plan.positions.front().points.pop_back();
    plan.positions.front().points.front().margin = degrees(-5);
    const QString text = allText(recorded(stateOf(frame), plan, SheetPaper::A4));
    const EngineDesign &design = frame->engine.design;
    expectSaid(text, {sheetWords("Set by no position of the plan"), planWarning(design, plan),
                      marginText(design, plan.positions.front().points.front())});
}

TEST(BenchSheet, HydraulicTappetsAreTurnedOnAndWaitedFor)
{
    const auto frame = frameOf(fourText());
    frame->engine.bleedDown = std::chrono::minutes(15);
    frame->specs.erase(frame->specs.begin());
    frame->specs.push_back(specOf(SpecId(9), SpecSubject::IntakeLash, turnBands("3/4 ± 1/8 turn")));
    const QString text = allText(recorded(stateOf(frame), generatePlan(frame->engine.design, PlanWay::TwoPositions), SheetPaper::A4));
    expectSaid(text, {bandText(turnBands("3/4 ± 1/8 turn")),
                      sheetWords("turned, %1", "in the box of a screw turned on from zero lash; unit").arg(unitText(AngleUnit::Turn)),
                      sheetWords("Hydraulic tappets: after the last one is set, wait %1 min before the crank is turned.").arg(15)});
}

TEST(BenchSheet, ATwoStrokeHasNoStrokeToCheck)
{
    EngineText engine = engineText(Layout::InLine, 3);
    engine.cycle = Cycle::TwoStroke;
    const auto frame = frameOf(engine);
    const QString text = allText(recorded(stateOf(frame), generatePlan(frame->engine.design, PlanWay::EachOnCompression), SheetPaper::A4));
    expectSaid(text, {sheetWords("turned, mark checked")});
    EXPECT_FALSE(lettersOf(text).contains(lettersOf(sheetWords("turned, mark and stroke checked"))));
}

TEST(BenchSheet, ALockNutNobodyLookedUpHasABox)
{
    const auto frame = frameOf(fourText());
    frame->specs.clear();
    const QString text = allText(recorded(stateOf(frame), generatePlan(frame->engine.design, PlanWay::TwoPositions), SheetPaper::A4));
    expectSaid(text, {sheetWords("Lock nut torque, not known here; manual and page"), sheetWords("no spec yet")});
}

TEST(BenchSheet, LinesOfJointsArePrintedWithWhatTheManualAsks)
{
    const auto frame = frameOf(fourText());
    const CrankPlan plan = generatePlan(frame->engine.design, PlanWay::TwoPositions);
    EXPECT_FALSE(allText(recorded(stateOf(frame), plan, SheetPaper::A4)).contains(sheetWords("Fasteners")));
    JointText text = coverText();
    text.blindHole = true;
    frame->joints = {jointOfText(text)};
    frame->job.steps.push_back({StepId(2), StepKind::Loosen, "Loosen the cover", "", Gate::FirstStart, {}, frame->joints.front().id});
    frame->job.steps.push_back({StepId(3), StepKind::Tighten, "Tighten the cover", "", Gate::FirstStart, {}, frame->joints.front().id});
    frame->job.steps.push_back({StepId(4), StepKind::Tighten, "Tighten what is gone", "", Gate::FirstStart, {}, JointId(77)});
    for (const SheetPaper paper : {SheetPaper::A4, SheetPaper::Letter}) {
        const auto pages = recorded(stateOf(frame), plan, paper);
        expectInsideTheMargins(pages, paper);
        expectReadable(pages);
        expectBoxesToWriteIn(pages);
        const QString printedText = allText(pages);
        const Joint &cover = frame->joints.front();
        QStringList passes;
        for (std::size_t pass = 0; pass < cover.passes.size(); ++pass)
            passes.append(passName(cover, pass, 0));
        expectSaid(printedText,
                   {QStringLiteral("Loosen the cover"), sheetWords("Order: %1").arg(looseningLine(cover)),
                    QStringLiteral("Tighten the cover"), sheetWords("Order: %1").arg(orderLine(cover)), jointLine(cover),
                    jointSpecLine(cover), sheetWords("Passes: %1", "of a joint").arg(passes.join(sheetWords("; ", "between passes")))});
        expectSaid(printedText, jointCautions(cover));
        EXPECT_FALSE(printedText.contains(QStringLiteral("what is gone")));
    }
}

TEST(BenchSheet, AJointIsPrintedByTheRevisionItIsWorkedBy)
{
    const auto frame = frameOf(fourText());
    const CrankPlan plan = generatePlan(frame->engine.design, PlanWay::TwoPositions);
    Joint first = jointOfText(rowText(2));
    Joint second = jointOfText(rowText(2, "25 ± 2 N·m"));
    second.revision = 2;
    frame->joints = {first, second};
    frame->job.steps.push_back({StepId(2), StepKind::Tighten, "Tighten the bracket", "", Gate::FirstStart, {}, first.id});
    const auto printed = [&](const std::vector<Act> &acts) { return allText(recorded(fold(frame, acts), plan, SheetPaper::A4)); };
    const QString newer = sheetWords("This is revision %1, by which the work was begun; there is revision %2.").arg(1).arg(2);

    const QString untouched = printed({});
    EXPECT_TRUE(untouched.contains(QStringLiteral("25 ± 2 N·m")));
    EXPECT_FALSE(untouched.contains(newer));

    const TicksFact ticks{first.id, 1, {{{1, 0, 1}}}, TickHow::ByFeel};
    const QString begun = printed({{ActSeq(1), {"u", frame->job.id, PersonId(1), "bench", {}, {}, ticks}}});
    EXPECT_TRUE(begun.contains(QStringLiteral("32 ± 4 N·m")));
    EXPECT_FALSE(begun.contains(QStringLiteral("25 ± 2 N·m")));
    EXPECT_TRUE(begun.contains(newer)) << begun.toStdString();
}

TEST(BenchSheet, NoTextIsTooLong)
{
    const auto frame = frameOf(fourText());
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

} // namespace bench_sheet_tests

} // namespace asleft
