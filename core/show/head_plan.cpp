#include <show/head.h>

#include <show/words.h>

#include <QCoreApplication>
#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace asleft {

namespace {

class HeadWords {
    Q_DECLARE_TR_FUNCTIONS(HeadWords)
};

constexpr double gutter = 60; // for "front", "exhaust", "intake"
constexpr double rightMargin = 6;
constexpr double labelHeight = 16;  // names of points
constexpr double numberHeight = 24; // numbers of cylinders
constexpr double leastMargin = 4;   // between a casting's edge and what stands on it
constexpr double mostMargin = 20;
constexpr double wantedPoint = 44;
constexpr double largestPoint = 84;

/// Sizes shared by all banks of one plan.
struct Measure {
    const EngineDesign &design;
    QSizeF size;
    bool oneRow = false;    ///< in the maker's order along one line
    bool twoLevels = false; ///< one line too crowded for a finger: every other valve a level lower
    double gap = 0;         ///< between two banks
    double pitch = 0;       ///< from column to column
    double diameter = 0;
    double margin = 0; ///< above and below what stands on a casting
    double numberZone = 0;
    double bankHeight = 0;
    double left = 0;  ///< of the castings
    double width = 0; ///< of the castings

    [[nodiscard]] int rows() const { return oneRow && !twoLevels ? 1 : 2; }
    [[nodiscard]] int labelLines() const { return rows(); }
    [[nodiscard]] double fixedHeight() const { return 2 * leastMargin + labelLines() * labelHeight + numberHeight; }
    /// On two levels the squares reach half a column further out at both ends.
    [[nodiscard]] double endRoom() const { return twoLevels ? 0.5 : 0; }
    [[nodiscard]] double column(double index) const { return left + gutter + (index + 0.5 + endRoom()) * pitch; }
};

double longestBank(const EngineDesign &design)
{
    std::size_t longest = 1;
    for (const auto &bank : design.banks)
        longest = std::max(longest, bank.size());
    return static_cast<double>(longest);
}

double gapBetweenBanks(const EngineDesign &design, double height)
{
    if (design.banks.size() < 2)
        return 0;
    return design.layout == Layout::Flat ? std::clamp(height * 0.08 - 8, 16.0, 56.0) : std::clamp(height * 0.03, 8.0, 24.0);
}

double heightPerBank(const Measure &measure)
{
    const double banks = std::max(1.0, static_cast<double>(measure.design.banks.size()));
    return (measure.size.height() - 2 - (banks - 1) * measure.gap) / banks;
}

double diameterByHeight(const Measure &measure)
{
    return (heightPerBank(measure) - measure.fixedHeight()) / measure.rows();
}

void chooseLevels(Measure &measure, double columns, double room)
{
    if (!measure.oneRow)
        return;
    const double inOneLine = std::min(room / columns, diameterByHeight(measure));
    if (inOneLine >= wantedPoint)
        return;
    measure.twoLevels = true;
    measure.twoLevels = std::min(2 * room / (columns + 1), diameterByHeight(measure)) > inOneLine;
}

/// The room that is left over goes first between the rows, then to the edges, never so far that the head falls apart.
void spreadHeight(Measure &measure)
{
    double spare = std::max(0.0, heightPerBank(measure) - measure.fixedHeight() - measure.rows() * measure.diameter);
    const double toNumbers = std::min(spare * 0.6, measure.diameter * 0.9);
    spare -= toNumbers;
    const double toMargins = std::min(spare / 2, mostMargin - leastMargin);
    measure.numberZone = numberHeight + toNumbers;
    measure.margin = leastMargin + toMargins;
    measure.bankHeight = 2 * measure.margin + measure.labelLines() * labelHeight + measure.numberZone + measure.rows() * measure.diameter;
}

Measure measureHead(const EngineDesign &design, QSizeF size)
{
    Measure measure{design, size.expandedTo(smallestHead)};
    measure.oneRow = design.valveRows == ValveRows::One && !design.valveOrder.empty();
    measure.gap = gapBetweenBanks(design, measure.size.height());
    const double columns = longestBank(design) * (measure.oneRow ? 2 : 1);
    const double room = measure.size.width() - 2 - gutter - rightMargin;
    chooseLevels(measure, columns, room);
    const double pitchAvailable = room / (columns + 2 * measure.endRoom());
    const double byWidth = measure.twoLevels ? 2 * pitchAvailable : pitchAvailable;
    measure.diameter = std::max(1.0, std::floor(std::min({largestPoint, byWidth, diameterByHeight(measure)})));
    measure.pitch = std::min(pitchAvailable, measure.diameter * (measure.oneRow ? 1.6 : 3));
    measure.width = gutter + (columns + 2 * measure.endRoom()) * measure.pitch + rightMargin;
    measure.left = (measure.size.width() - measure.width) / 2;
    spreadHeight(measure);
    return measure;
}

/// Where the parts of one bank lie, top to bottom.
struct BankLines {
    double upperRow = 0;
    double lowerRow = 0; ///< the same as `upperRow` in one line
    double upperLabel = 0;
    double lowerLabel = 0;
    double number = 0;
};

BankLines twoRowLines(const Measure &measure, double top)
{
    BankLines lines;
    lines.upperLabel = top + measure.margin + labelHeight / 2;
    lines.upperRow = top + measure.margin + labelHeight + measure.diameter / 2;
    lines.number = lines.upperRow + measure.diameter / 2 + measure.numberZone / 2;
    lines.lowerRow = lines.number + measure.numberZone / 2 + measure.diameter / 2;
    lines.lowerLabel = lines.lowerRow + measure.diameter / 2 + labelHeight / 2;
    return lines;
}

/// Names outward and numbers inward; the first bank's inside is below it.
BankLines oneRowLines(const Measure &measure, double top, bool insideBelow)
{
    BankLines lines;
    const double between = measure.twoLevels ? measure.diameter : 0;
    double y = top + measure.margin + (insideBelow ? 0 : measure.numberZone);
    lines.upperLabel = y + labelHeight / 2;
    const bool labelAbove = insideBelow || measure.twoLevels;
    y += labelAbove ? labelHeight : 0;
    lines.upperRow = y + measure.diameter / 2;
    lines.lowerRow = lines.upperRow + between;
    lines.lowerLabel = lines.lowerRow + measure.diameter / 2 + labelHeight / 2;
    if (!measure.twoLevels)
        (insideBelow ? lines.lowerLabel : lines.upperLabel) = insideBelow ? lines.upperLabel : lines.lowerLabel;
    const double lastLabel = measure.twoLevels || !insideBelow ? labelHeight : 0;
    const double below = lines.lowerRow + measure.diameter / 2 + lastLabel + measure.numberZone / 2;
    lines.number = insideBelow ? below : top + measure.margin + measure.numberZone / 2;
    return lines;
}

/// One valve's place.
struct Spot {
    QPointF middle;
    double labelY;
    double leaderX;
};

PlacedText placed(const QString &text, QPointF middle, double width, double height, TextSize size)
{
    return {text, QRectF(middle.x() - width / 2, middle.y() - height / 2, width, height), size, Qt::AlignCenter};
}

/// Place of the valve's letter among the letters of its bank: the n-th intake letter is the n-th cylinder's intake.
int letterIndex(const std::vector<Side> &letters, Side side, int cylinderInBank)
{
    int seen = 0;
    for (std::size_t letter = 0; letter < letters.size(); ++letter) {
        if (letters[letter] == side && seen++ == cylinderInBank)
            return static_cast<int>(letter);
    }
    return cylinderInBank * 2 + (side == Side::Intake ? 0 : 1);
}

Spot spotInTwoRows(const Measure &measure, const BankLines &lines, int cylinderInBank, bool upper)
{
    const double x = measure.column(cylinderInBank);
    const double aside = std::min(measure.pitch / 2, measure.diameter * 0.8);
    return {{x, upper ? lines.upperRow : lines.lowerRow}, upper ? lines.upperLabel : lines.lowerLabel, x + aside};
}

/// The leader line goes down on the side away from the cylinder's other valve, where no number stands.
Spot spotInOneRow(const Measure &measure, const BankLines &lines, int letter, int otherLetter)
{
    const double x = measure.column(letter);
    if (!measure.twoLevels)
        return {{x, lines.upperRow}, lines.upperLabel, x + (letter < otherLetter ? -0.5 : 0.5) * measure.pitch};
    const bool upper = letter % 2 == 0;
    return {{x, upper ? lines.upperRow : lines.lowerRow}, upper ? lines.upperLabel : lines.lowerLabel, upper ? x : x + measure.pitch};
}

void addPoint(HeadPlan &plan, const Measure &measure, const Spot &spot, AdjusterRef valve)
{
    const double labelWidth = measure.twoLevels ? 2 * measure.pitch : measure.pitch;
    plan.points.append(spot.middle);
    plan.leaderX.append(std::min(spot.leaderX, measure.left + measure.width - 2));
    plan.pointLabels.append(
        placed(pointShort(measure.design, valve), {spot.middle.x(), spot.labelY}, labelWidth, labelHeight, TextSize::Small));
}

void addGutter(HeadPlan &plan, const Measure &measure, double y, const QString &text)
{
    const QRectF box(measure.left + 8, y - labelHeight / 2, gutter - 8, labelHeight);
    plan.labels.append({text, box, TextSize::Small, Qt::AlignLeft | Qt::AlignVCenter});
}

void addTwoRowBank(HeadPlan &plan, const Measure &measure, const std::vector<Cylinder> &bank, double top, bool exhaustAbove)
{
    const BankLines lines = twoRowLines(measure, top);
    for (std::size_t place = 0; place < bank.size(); ++place) {
        const int index = static_cast<int>(place);
        addPoint(plan, measure, spotInTwoRows(measure, lines, index, !exhaustAbove), {bank[place], Side::Intake});
        addPoint(plan, measure, spotInTwoRows(measure, lines, index, exhaustAbove), {bank[place], Side::Exhaust});
        plan.numbers[bank[place].index] =
            placed(QString::fromStdString(measure.design.label(bank[place])), {measure.column(index), lines.number}, measure.pitch,
                   measure.numberZone, TextSize::Number);
    }
    addGutter(plan, measure, lines.upperRow, sideName(exhaustAbove ? Side::Exhaust : Side::Intake));
    addGutter(plan, measure, lines.number, HeadWords::tr("◂ front"));
    addGutter(plan, measure, lines.lowerRow, sideName(exhaustAbove ? Side::Intake : Side::Exhaust));
}

void addOneRowBank(HeadPlan &plan, const Measure &measure, std::size_t bankIndex, double top)
{
    const auto &bank = measure.design.banks[bankIndex];
    const auto &letters = measure.design.valveOrder[std::min(bankIndex, measure.design.valveOrder.size() - 1)];
    const BankLines lines = oneRowLines(measure, top, bankIndex == 0);
    for (std::size_t place = 0; place < bank.size(); ++place) {
        const int intake = letterIndex(letters, Side::Intake, static_cast<int>(place));
        const int exhaust = letterIndex(letters, Side::Exhaust, static_cast<int>(place));
        addPoint(plan, measure, spotInOneRow(measure, lines, intake, exhaust), {bank[place], Side::Intake});
        addPoint(plan, measure, spotInOneRow(measure, lines, exhaust, intake), {bank[place], Side::Exhaust});
        plan.numbers[bank[place].index] =
            placed(QString::fromStdString(measure.design.label(bank[place])), {measure.column((intake + exhaust) / 2.0), lines.number},
                   2 * measure.pitch, measure.numberZone, TextSize::Number);
    }
    addGutter(plan, measure, lines.number, HeadWords::tr("◂ front"));
}

/// The widest number decides the size of all of them.
void fitNumbers(HeadPlan &plan, const Measure &measure)
{
    const double room = measure.oneRow ? 1.6 * measure.pitch : 0.7 * measure.pitch;
    const auto fits = [&plan, room](TextSize size) {
        const QFontMetricsF metrics(textFont(size));
        return std::all_of(plan.numbers.begin(), plan.numbers.end(),
                           [&](const PlacedText &number) { return metrics.horizontalAdvance(number.text) <= room; });
    };
    const TextSize chosen = fits(TextSize::Number) ? TextSize::Number : fits(TextSize::Now) ? TextSize::Now : TextSize::BodyStrong;
    for (PlacedText &number : plan.numbers)
        number.size = chosen;
}

void addCrankcase(HeadPlan &plan, const Measure &measure)
{
    if (measure.design.layout != Layout::Flat || plan.castings.size() < 2)
        return;
    const QRectF &above = plan.castings.first();
    const double height = measure.gap * 0.4;
    const double middle = above.bottom() + measure.gap / 2;
    plan.crankcase = QRectF(above.left() + gutter / 2, middle - height / 2, above.width() - gutter / 2 - rightMargin, height);
}

} // namespace

QRectF HeadPlan::pointRect(qsizetype index) const
{
    const QPointF half(pointDiameter / 2, pointDiameter / 2);
    return {points.at(index) - half, points.at(index) + half};
}

HeadPlan planHead(const EngineDesign &design, QSizeF size)
{
    const Measure measure = measureHead(design, size);
    HeadPlan plan;
    plan.size = measure.size;
    plan.pointDiameter = measure.diameter;
    plan.numbers.resize(design.cylinders());
    const double banks = static_cast<double>(design.banks.size());
    double top = (measure.size.height() - banks * measure.bankHeight - (banks - 1) * measure.gap) / 2;
    for (std::size_t bank = 0; bank < design.banks.size(); ++bank) {
        plan.castings.append(QRectF(measure.left, top, measure.width, measure.bankHeight));
        if (measure.oneRow)
            addOneRowBank(plan, measure, bank, top);
        else
            addTwoRowBank(plan, measure, design.banks[bank], top, bank == 0);
        top += measure.bankHeight + measure.gap;
    }
    addCrankcase(plan, measure);
    fitNumbers(plan, measure);
    return plan;
}

} // namespace asleft
