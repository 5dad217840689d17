#include "head_names.h"

#include <QCoreApplication>
#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace asleft {

namespace {

class HeadWords {
    Q_DECLARE_TR_FUNCTIONS(HeadWords)
};

constexpr double lineHeight = 16;
constexpr double leastApart = 13; // between the middles of two texts of the gutter

/// The letters before the digits of a label.
QString lettersOf(const QString &label)
{
    qsizetype count = 0;
    while (count < label.size() && label[count].isLetter())
        ++count;
    return label.first(count);
}

/// The letters all cylinders of a bank share, where no other bank has them.
QString sharedLetters(const EngineDesign &design, std::size_t bank)
{
    const auto lettersAt = [&design](Cylinder cylinder) { return lettersOf(QString::fromStdString(design.label(cylinder))); };
    const QString letters = lettersAt(design.banks[bank].front());
    for (std::size_t other = 0; other < design.banks.size(); ++other) {
        for (const Cylinder cylinder : design.banks[other]) {
            if ((lettersAt(cylinder) == letters) != (other == bank))
                return {};
        }
    }
    return letters;
}

QString rowName(int row, int rows)
{
    if (row == 0)
        return HeadWords::tr("front row");
    return row == rows - 1 ? HeadWords::tr("rear row") : HeadWords::tr("row %1").arg(row + 1);
}

} // namespace

QString frontWord()
{
    return HeadWords::tr("◂ front");
}

QString seenFromFrontWords()
{
    return HeadWords::tr("seen from the front");
}

QString bankName(const EngineDesign &design, int bank)
{
    const int banks = static_cast<int>(design.banks.size());
    if (banks < 2)
        return {};
    if (design.layout == Layout::Radial)
        return rowName(bank, banks);
    const QString letters = sharedLetters(design, static_cast<std::size_t>(bank));
    if (!letters.isEmpty())
        return HeadWords::tr("bank %1").arg(letters);
    if (design.layout == Layout::Opposed && banks == 4)
        return bank < 2 ? HeadWords::tr("upper %1", "bank of stacked rows").arg(bank + 1) : HeadWords::tr("lower %1").arg(bank + 1);
    return HeadWords::tr("bank %1").arg(bank + 1);
}

void GutterColumn::add(double y, const QString &text)
{
    const bool taken = std::any_of(m_taken.begin(), m_taken.end(), [y](double other) { return std::abs(other - y) < leastApart; });
    if (text.isEmpty() || taken)
        return;
    m_taken.append(y);
    const bool small = QFontMetricsF(textFont(TextSize::Small)).horizontalAdvance(text) <= m_width;
    m_plan.labels.append({text, QRectF(m_left, y - lineHeight / 2, m_width, lineHeight), small ? TextSize::Small : TextSize::Fine,
                          Qt::AlignLeft | Qt::AlignVCenter});
}

void fitNumbers(HeadPlan &plan)
{
    const auto fits = [&plan](TextSize size) {
        const QFontMetricsF metrics(textFont(size));
        return std::all_of(plan.numbers.begin(), plan.numbers.end(), [&](const PlacedText &number) {
            return metrics.horizontalAdvance(number.text) <= 0.8 * number.box.width() && metrics.capHeight() <= number.box.height() - 2;
        });
    };
    constexpr TextSize largestFirst[] = {TextSize::Number, TextSize::Now, TextSize::BodyStrong, TextSize::SmallStrong};
    const auto chosen = std::find_if(std::begin(largestFirst), std::end(largestFirst), fits);
    for (PlacedText &number : plan.numbers)
        number.size = chosen == std::end(largestFirst) ? TextSize::FineStrong : *chosen;
}

} // namespace asleft
