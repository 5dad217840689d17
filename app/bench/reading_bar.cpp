#include "bench/reading_bar.h"

#include "bench/reading_edit.h"
#include "bench/scale_view.h"
#include "parts/choice_keys.h"
#include "parts/heading.h"
#include "parts/key_button.h"
#include "parts/message_line.h"

#include <show/words.h>

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QVBoxLayout>

namespace asleft {

namespace {

constexpr LengthUnit benchUnits[] = {LengthUnit::Millimetre, LengthUnit::Inch, LengthUnit::Thou};
constexpr int mostChips = 5;
constexpr int widthForAllChips = 700;

/// The letter that presses a key, in the order of ReadingBar::Key.
const QString letters = QStringLiteral("sltnfkcp");

QHBoxLayout *rowIn(QVBoxLayout *column, int spacing)
{
    auto *row = new QHBoxLayout;
    row->setSpacing(spacing);
    column->addLayout(row);
    return row;
}

} // namespace

ReadingBar::ReadingBar(DecimalMark mark, QWidget *parent)
    : QWidget(parent), m_mark(mark), m_now(new Heading({}, TextSize::Now)), m_spec(new Heading({}, TextSize::Small, Heading::Tone::Quiet)),
      m_beside(new Heading({}, TextSize::Small, Heading::Tone::Quiet)), m_edit(new ReadingEdit), m_scale(new ScaleView),
      m_units(new QButtonGroup(this)), m_message(new MessageLine)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 8, 0, 0);
    column->setSpacing(6);
    m_now->setWordWrap(true);
    m_spec->setWordWrap(true);
    m_nowRow = rowIn(column, 8);
    m_nowRow->addWidget(m_now, 1);
    auto *specs = rowIn(column, 12);
    specs->addWidget(m_spec, 1);
    specs->addWidget(m_beside, 0, Qt::AlignTop | Qt::AlignRight);
    auto *values = rowIn(column, 16);
    values->addWidget(m_edit);
    values->addWidget(m_scale, 1);
    // The line keeps its room while it is empty: nothing above it moves when something is said.
    QSizePolicy kept = m_message->sizePolicy();
    kept.setRetainSizeWhenHidden(true);
    m_message->setSizePolicy(kept);
    m_message->setMinimumHeight(m_message->fontMetrics().height());
    column->addWidget(m_message);
    m_chips = rowIn(column, 6);
    m_chips->addStretch(1);
    buildUnits(m_chips);
    buildKeys(rowIn(column, 8));

    m_edit->setAccessibleName(tr("Reading"));
    m_edit->setLetters(letters);
    connect(m_edit, &QLineEdit::textChanged, this, [this] { showTyped(); });
    connect(m_edit, &QLineEdit::textEdited, this, [this] {
        m_message->clear();
        m_edit->setRefused(false);
        Q_EMIT typing();
    });
    connect(m_edit, &LineEdit::entered, this, &ReadingBar::enter);
    connect(m_edit, &ReadingEdit::arrowPressed, this, &ReadingBar::arrowPressed);
    connect(m_edit, &ReadingEdit::letterPressed, this, &ReadingBar::pressLetter);
}

void ReadingBar::buildKeys(QHBoxLayout *row)
{
    const QStringList names{tr("spec leaf, locked, felt"),
                            tr("loose"),
                            tr("tight"),
                            tr("nut open"),
                            tr("by feel"),
                            tr("keep it"),
                            tr("check again"),
                            QString()};
    const QStringList meanings{tr("Set with the spec's leaf, locked, felt again"),
                               tr("More than the spec's leaf"),
                               tr("Less than the spec's leaf"),
                               tr("The lock nut is open now"),
                               tr("Done by feel, not measured"),
                               tr("Keep it as it is, outside its band"),
                               tr("Work done since may have moved it: check it again"),
                               tr("Write this one as found or as left")};
    for (qsizetype i = 0; i < names.size(); ++i) {
        auto *button = new KeyButton(names[i]);
        button->setToolTip(tr("%1 (%2)").arg(meanings[i], letters[i].toUpper()));
        button->setAccessibleName(meanings[i]);
        connect(button, &KeyButton::clicked, this, [this, i] { Q_EMIT keyed(Key(i)); });
        m_keys.append(button);
        if (Key(i) < Key::Keep)
            row->addWidget(button);
    }
    row->addStretch(1);
    key(Key::SpecLeaf)->setStrong(true);
    key(Key::CheckAgain)->setPlain(true);
    for (const Key seldom : {Key::CheckAgain, Key::Keep})
        m_nowRow->addWidget(key(seldom), 0, Qt::AlignTop);
    m_chips->insertWidget(m_chips->count() - 1, key(Key::OtherPhase));
}

void ReadingBar::buildUnits(QHBoxLayout *row)
{
    auto *units = new QHBoxLayout;
    units->setSpacing(0);
    row->addLayout(units);
    for (const LengthUnit unit : benchUnits) {
        auto *button = new ChoiceKey(unitText(unit));
        button->setAccessibleName(tr("Unit: %1").arg(unitText(unit)));
        m_units->addButton(button, int(unit));
        units->addWidget(button);
    }
    connect(m_units, &QButtonGroup::idClicked, this, [this](int id) { Q_EMIT unitChosen(LengthUnit(id)); });
}

void ReadingBar::pressLetter(QChar letter)
{
    KeyButton *button = key(Key(letters.indexOf(letter)));
    if (button->isVisibleTo(this) && button->isEnabled())
        button->click();
    else
        m_message->say(MessageLine::Role::Refusal,
                       tr("%1: there is nothing to do that to here. Nothing was logged.").arg(button->accessibleName()));
}

KeyButton *ReadingBar::key(Key key) const
{
    return m_keys.at(qsizetype(key));
}

ChoiceKey *ReadingBar::unitKey(LengthUnit unit) const
{
    return qobject_cast<ChoiceKey *>(m_units->button(int(unit)));
}

void ReadingBar::present(const BarView &view)
{
    m_view = view;
    m_now->setText(view.now);
    m_spec->setText(view.spec);
    m_beside->setText(view.beside);
    unitKey(view.unit)->setChecked(true);
    key(Key::SpecLeaf)->setEnabled(view.hasPoint && view.hasLeaf);
    key(Key::Keep)->setVisible(view.canKeep);
    key(Key::CheckAgain)->setVisible(view.canCheckAgain);
    key(Key::OtherPhase)->setText(view.phase == Phase::AsFound ? tr("as found") : tr("as left"));
    for (const Key other : {Key::Loose, Key::Tight, Key::NutOpen, Key::ByFeel, Key::OtherPhase})
        key(other)->setEnabled(view.hasPoint);
    m_edit->setEnabled(view.hasPoint || m_edit->hasFocus());
    m_scale->setBand(view.hasPoint ? view.bands : std::nullopt, view.unit);
    m_scale->setVisible(view.hasPoint);
    showChips();
    showTyped();
}

void ReadingBar::resizeEvent(QResizeEvent *)
{
    showChips();
}

void ReadingBar::showChips()
{
    const qsizetype room = width() < widthForAllChips ? mostChips - 1 : mostChips;
    const auto wanted = qMin(room, m_view.hasPoint ? m_view.leaves.size() : 0);
    while (m_chipKeys.size() < wanted) {
        auto *chip = new KeyButton({});
        m_chips->insertWidget(int(m_chipKeys.size()), chip);
        m_chipKeys.append(chip);
        connect(chip, &KeyButton::clicked, this, [this, chip] {
            m_edit->setText(chip->property("leaf").toString());
            enter();
        });
    }
    for (qsizetype i = 0; i < m_chipKeys.size(); ++i) {
        m_chipKeys[i]->setVisible(i < wanted);
        if (i >= wanted)
            continue;
        const QString leaf = typedText(m_view.leaves[i]);
        m_chipKeys[i]->setProperty("leaf", leaf);
        m_chipKeys[i]->setText(QString::fromStdString(m_view.leaves[i].text));
        m_chipKeys[i]->setAccessibleName(tr("Leaf %1").arg(leaf));
    }
}

QString ReadingBar::emptyEcho() const
{
    return m_view.hasPoint ? tr("%1, %2").arg(phaseName(m_view.phase), unitText(m_view.unit)) : QString();
}

void ReadingBar::showTyped()
{
    const QString text = m_edit->text();
    if (text.isEmpty()) {
        m_edit->setEcho(emptyEcho());
        m_scale->setValue(m_view.logged);
        return;
    }
    const auto reading = parseReading(text.toStdString(), m_view.unit, m_mark);
    if (!reading) {
        m_edit->setEcho(emptyEcho());
        m_scale->setValue(std::nullopt);
        return;
    }
    const QString value = typedText(reading->value);
    m_edit->setEcho(reading->next ? tr("%1 goes, %2 does not").arg(value, typedText(*reading->next)) : value);
    const auto interval = reading->next ? Interval<Length>::bracket(reading->value.value, reading->next->value)
                                        : Interval<Length>::point(reading->value.value);
    m_scale->setValue(ScaleValue{interval, reading->value.unit, m_view.judge ? m_view.judge(*reading) : Verdict::NoSpec});
}

void ReadingBar::enter()
{
    if (m_edit->text().trimmed().isEmpty()) {
        m_edit->clear();
        Q_EMIT nothingEntered();
        return;
    }
    const auto reading = parseReading(m_edit->text().toStdString(), m_view.unit, m_mark);
    if (!reading)
        refuse(sentence(reading.error()));
    else
        Q_EMIT valueEntered(*reading);
}

void ReadingBar::clearValue()
{
    m_edit->clear();
    m_edit->setRefused(false);
    m_message->clear();
}

void ReadingBar::ask(const QString &sentence)
{
    m_message->say(MessageLine::Role::Refusal, sentence);
}

void ReadingBar::refuse(const QString &sentence)
{
    m_edit->setRefused(!m_edit->text().isEmpty());
    m_message->refuse(sentence);
}

void ReadingBar::done(const QString &sentence)
{
    m_message->done(sentence);
}

void ReadingBar::quiet()
{
    m_message->clear();
}

void ReadingBar::focusValue()
{
    m_edit->setEnabled(true);
    m_edit->setFocus(Qt::OtherFocusReason);
}

} // namespace asleft
