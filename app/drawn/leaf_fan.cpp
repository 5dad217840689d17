#include <drawn/leaf_fan.h>

#include <parts/ink_of.h>
#include <parts/tools_model.h>

#include <words/numbers.h>

#include <QPainter>

namespace asleft {

namespace {

constexpr int fanHeight = 96;
constexpr double bladeHeight = 60;
constexpr double widestBlade = 22;
constexpr double gap = 3;

} // namespace

LeafFan::LeafFan(QWidget *parent) : QWidget(parent)
{
    setFixedHeight(fanHeight);
    setAccessibleName(tr("Drawing of the leaves"));
}

void LeafFan::show(const std::vector<Typed<Length>> &leaves)
{
    m_leaves = leaves;
    setAccessibleDescription(leavesWords(leaves));
    update();
}

void LeafFan::paintEvent(QPaintEvent *)
{
    if (m_leaves.empty())
        return;
    const Ink &ink = inkOf(*this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const auto count = double(m_leaves.size());
    const double room = qMin(widestBlade, (width() - gap * count) / count);
    const double thickest = toMillimetres(m_leaves.back().value);
    double x = 0;
    for (const Typed<Length> &leaf : m_leaves) {
        const double blade = qMax(1.0, room * toMillimetres(leaf.value) / thickest);
        painter.fillRect(QRectF(x + (room - blade) / 2, 0, blade, bladeHeight), ink.shape);
        x += room + gap;
    }
    painter.setFont(textFont(TextSize::Small));
    painter.setPen(ink.quietText);
    const QRectF words(0, bladeHeight + 6, width(), fanHeight - bladeHeight - 6);
    painter.drawText(words, Qt::AlignLeft | Qt::AlignTop, typedText(m_leaves.front()));
    if (m_leaves.size() > 1 && x > 160)
        painter.drawText(QRectF(words.left(), words.top(), x - gap, words.height()), Qt::AlignRight | Qt::AlignTop,
                         typedText(m_leaves.back()));
}

} // namespace asleft
