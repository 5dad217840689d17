#include <parts/chip_row.h>

#include <parts/ink_of.h>
#include <parts/key_button.h>

#include <draw/fonts.h>

#include <QFontMetrics>
#include <QHBoxLayout>

namespace asleft {

namespace {

constexpr int mostChips = 5;
constexpr int padding = 36; ///< what a key is wider than its words

} // namespace

ChipRow::ChipRow(QWidget *parent) : QWidget(parent), m_row(new QHBoxLayout(this))
{
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->setSpacing(chipGap);
}

void ChipRow::setChips(const QList<BarChip> &chips, bool enabled)
{
    m_chips = chips;
    m_enabled = enabled;
    fill();
}

void ChipRow::setRoom(int width)
{
    m_room = width;
    fill();
}

qsizetype ChipRow::most() const
{
    int widest = touchHeight;
    for (const BarChip &chip : m_chips)
        widest = qMax(widest, QFontMetrics(textFont(TextSize::Body)).horizontalAdvance(chip.label) + padding);
    return qBound(0, (m_room + chipGap) / (widest + chipGap), mostChips);
}

void ChipRow::fill()
{
    const auto wanted = qMin(most(), m_chips.size());
    while (m_keys.size() < wanted) {
        auto *key = new KeyButton({});
        m_row->addWidget(key);
        m_keys.append(key);
        connect(key, &KeyButton::clicked, this, [this, key] { Q_EMIT touched(key->property("types").toString()); });
    }
    for (qsizetype i = 0; i < m_keys.size(); ++i) {
        m_keys[i]->setVisible(i < wanted);
        m_keys[i]->setEnabled(m_enabled);
        if (i >= wanted)
            continue;
        m_keys[i]->setProperty("types", m_chips[i].text);
        m_keys[i]->setText(m_chips[i].label);
        m_keys[i]->setAccessibleName(m_chips[i].name);
    }
}

} // namespace asleft
