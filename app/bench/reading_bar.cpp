#include <bench/reading_bar.h>

#include <drawn/scale_view.h>
#include <parts/choice_keys.h>
#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/reading_edit.h>
#include <parts/reason_line.h>

#include <words/errors.h>
#include <words/numbers.h>
#include <words/readings.h>

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace asleft {

namespace {

constexpr int widthForLongWords = 590;

/// The letter that presses a key, in the order of ReadingBar::Key.
const QString barLetters = QStringLiteral("sltnfkcp");
constexpr QLatin1Char insteadLetter('u');

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
      m_reason(new ReasonLine), m_chips(new ChipRow), m_instead(new KeyButton({})), m_units(new QButtonGroup(this)), m_message(m_edit)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 8, 0, 0);
    column->setSpacing(6);
    build(column);
    m_edit->setAccessibleName(tr("Reading"));
    m_edit->setLetters(barLetters);
    connect(m_edit, &QLineEdit::textChanged, this, [this] { showTyped(); });
    connect(m_edit, &QLineEdit::textEdited, this, [this] {
        m_message.typed();
        dropQuestion();
        Q_EMIT typing();
    });
    connect(m_edit, &LineEdit::entered, this, &ReadingBar::enter);
    connect(m_edit, &ReadingEdit::arrowPressed, this, &ReadingBar::arrowPressed);
    connect(m_edit, &ReadingEdit::letterPressed, this, &ReadingBar::pressLetter);
    connect(m_edit, &ReadingEdit::answerPressed, this, &ReadingBar::insteadTaken);
    connect(m_chips, &ChipRow::touched, this, [this](const QString &text) {
        m_edit->setText(text);
        enter();
    });
    connect(m_instead, &KeyButton::clicked, this, &ReadingBar::insteadTaken);
    connect(m_reason, &ReasonLine::given, this, &ReadingBar::reasonGiven);
    connect(m_reason, &ReasonLine::left, this, &ReadingBar::leaveReason);
}

void ReadingBar::build(QVBoxLayout *column)
{
    m_now->setWordWrap(true);
    m_spec->setWordWrap(true);
    m_nowRow = rowIn(column, 8);
    m_nowRow->addWidget(m_now, 1);
    auto *specs = rowIn(column, 12);
    specs->addWidget(m_spec, 1);
    specs->addWidget(m_beside, 0, Qt::AlignTop | Qt::AlignRight);
    buildValues(column);
    column->addWidget(m_message.line());
    auto *choices = rowIn(column, chipGap);
    m_instead->setVisible(false);
    choices->addWidget(m_instead);
    choices->addWidget(m_chips);
    choices->addStretch(1);
    buildKeys(rowIn(column, 8));
    choices->addWidget(key(Key::OtherPhase));
    buildUnits(choices);
}

void ReadingBar::buildValues(QVBoxLayout *column)
{
    auto *page = new QWidget;
    auto *values = new QHBoxLayout(page);
    values->setContentsMargins(0, 0, 0, 0);
    values->setSpacing(16);
    values->addWidget(m_edit);
    values->addWidget(m_scale, 1);
    values->addStretch(0);
    m_values = new QStackedWidget;
    m_values->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    m_values->addWidget(page);
    m_values->addWidget(m_reason);
    column->addWidget(m_values);
}

void ReadingBar::buildKeys(QHBoxLayout *row)
{
    const QStringList names{{}, tr("loose"), tr("tight"), tr("nut open"), tr("by feel"), tr("keep it"), tr("check again"), {}};
    const QStringList meanings{tr("Set with the spec's leaf, locked, felt again"),
                               tr("More than the spec's leaf"),
                               tr("Less than the spec's leaf"),
                               tr("The lock nut is open now"),
                               tr("Done by feel, not measured"),
                               tr("Keep it as it is, outside its band"),
                               tr("Work done since may have moved what is left: check it again"),
                               tr("Write this one as found or as left")};
    for (qsizetype i = 0; i < names.size(); ++i) {
        auto *button = new KeyButton(names[i]);
        button->setToolTip(tr("%1 (%2)").arg(meanings[i], barLetters[i].toUpper()));
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
}

void ReadingBar::buildUnits(QHBoxLayout *row)
{
    auto *units = new QHBoxLayout;
    units->setSpacing(0);
    row->addLayout(units);
    for (const LengthUnit unit : lengthUnits) {
        auto *button = new ChoiceKey(unitText(unit));
        button->setAccessibleName(tr("Unit: %1").arg(unitText(unit)));
        m_units->addButton(button, int(unit));
        units->addWidget(button);
    }
    connect(m_units, &QButtonGroup::idClicked, this, [this](int id) { Q_EMIT unitChosen(LengthUnit(id)); });
}

void ReadingBar::pressLetter(QChar letter)
{
    KeyButton *button = key(Key(barLetters.indexOf(letter)));
    if (button->isVisibleTo(this) && button->isEnabled())
        button->click();
    else
        refuse(tr("%1: there is nothing to do that to here. Nothing was logged.").arg(button->accessibleName()));
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
    m_edit->setEnabled(view.hasPoint || m_edit->hasFocus());
    m_edit->setReadOnly(view.readOnly);
    if (view.hasPoint && view.turns)
        m_scale->setTurns(*view.turns);
    else
        m_scale->setBand(view.hasPoint ? view.bands : std::nullopt, view.unit);
    m_scale->setVisible(view.hasPoint);
    showKeys();
    showChips();
    showTyped();
}

void ReadingBar::showKeys()
{
    const bool works = m_view.hasPoint;
    KeyButton *leaf = key(Key::SpecLeaf);
    const bool wide = width() >= widthForLongWords;
    leaf->setText(m_view.turns ? (wide ? tr("spec turns, locked") : tr("spec turns"))
                  : wide       ? tr("spec leaf, locked, felt")
                               : tr("spec leaf"));
    leaf->setEnabled(works && m_view.hasLeaf);
    key(Key::Keep)->setVisible(m_view.canKeep);
    key(Key::CheckAgain)->setVisible(m_view.canCheckAgain);
    key(Key::OtherPhase)->setText(m_view.phase == Phase::AsFound ? tr("as found") : tr("as left"));
    for (const Key other : {Key::Loose, Key::Tight, Key::NutOpen, Key::ByFeel, Key::OtherPhase})
        key(other)->setEnabled(works);
    for (const LengthUnit unit : lengthUnits)
        unitKey(unit)->setVisible(!m_view.turns);
    unitKey(m_view.unit)->setChecked(true);
}

void ReadingBar::resizeEvent(QResizeEvent *)
{
    showKeys();
    showChips();
}

/// The chips have what the phase and the units leave them.
void ReadingBar::showChips()
{
    int taken = key(Key::OtherPhase)->sizeHint().width();
    for (const LengthUnit unit : lengthUnits)
        taken += m_view.turns ? 0 : unitKey(unit)->sizeHint().width();
    m_chips->setRoom(width() - taken - 3 * chipGap);
    m_chips->setChips(m_view.hasPoint ? m_view.chips : QList<BarChip>(), !m_view.readOnly);
    m_chips->setVisible(!m_asksWhich);
}

TypedAs ReadingBar::typedAs() const
{
    return {m_view.unit, m_view.turns.has_value(), m_mark};
}

QString ReadingBar::emptyEcho() const
{
    if (!m_view.hasPoint)
        return {};
    return tr("%1, %2").arg(phaseName(m_view.phase), m_view.turns ? tr("turns") : unitText(m_view.unit));
}

void ReadingBar::showTyped()
{
    const QString text = m_edit->text();
    const auto reading = readTyped(text, typedAs());
    if (text.isEmpty())
        showJudgement(m_view.logged, {});
    else if (!reading)
        showJudgement(std::nullopt, {});
    else
        showJudgement(m_view.worth ? m_view.worth(*reading) : Judgement{}, typedText(*reading));
}

void ReadingBar::showJudgement(const std::optional<Judgement> &worth, const QString &typed)
{
    const bool sure = typed.isEmpty() || worth->uncertainty.isEmpty();
    m_edit->setEcho(typed.isEmpty() ? emptyEcho() : sure ? typed : tr("%1 %2", "value, its uncertainty").arg(typed, worth->uncertainty));
    m_scale->setValue(worth ? worth->onScale : std::nullopt);
    m_scale->setTurned(worth ? worth->turnsOnScale : std::nullopt);
    // What no scale shows is said beside the spec.
    const bool offScale = !typed.isEmpty() && !(m_view.turns ? worth->turnsOnScale.has_value() : worth->onScale.has_value());
    m_beside->setText(offScale ? worth->words : m_view.beside);
}

void ReadingBar::enter()
{
    if (m_edit->text().trimmed().isEmpty()) {
        m_edit->clear();
        Q_EMIT nothingEntered();
        return;
    }
    const auto reading = readTyped(m_edit->text(), typedAs());
    if (!reading)
        refuse(sentence(reading.error()));
    else
        Q_EMIT valueEntered(*reading);
}

void ReadingBar::clearValue()
{
    m_edit->clear();
    m_edit->setRefused(false);
    quiet();
    m_values->setCurrentIndex(0);
}

void ReadingBar::dropQuestion()
{
    m_asksWhich = false;
    m_instead->setVisible(false);
    m_edit->setAnswer({});
    showChips();
}

void ReadingBar::ask(const QString &sentence)
{
    dropQuestion();
    m_message.ask(sentence);
}

void ReadingBar::askWhich(const QString &sentence, const QString &instead)
{
    m_message.ask(sentence);
    m_asksWhich = true;
    m_instead->setText(tr("%1 instead (%2)").arg(instead, QString(insteadLetter).toUpper()));
    m_instead->setAccessibleName(tr("Log %1 instead").arg(instead));
    m_instead->setVisible(true);
    m_edit->setAnswer(insteadLetter);
    showChips();
}

void ReadingBar::notice(const QString &sentence)
{
    dropQuestion();
    m_message.notice(sentence);
}

void ReadingBar::refuse(const QString &sentence)
{
    dropQuestion();
    m_message.refuse(sentence);
}

void ReadingBar::done(const QString &sentence)
{
    dropQuestion();
    m_message.done(sentence);
}

void ReadingBar::quiet()
{
    dropQuestion();
    m_message.quiet();
}

void ReadingBar::askReason()
{
    quiet();
    m_values->setCurrentWidget(m_reason);
    m_reason->begin(tr("Why it is kept; Enter alone keeps it without a reason"), tr("keep it"));
}

bool ReadingBar::asksReason() const
{
    return m_values->currentWidget() == m_reason;
}

void ReadingBar::leaveReason()
{
    m_values->setCurrentIndex(0);
    focusValue();
}

void ReadingBar::focusValue()
{
    m_edit->setEnabled(true);
    if (asksReason())
        m_reason->edit()->setFocus(Qt::OtherFocusReason);
    else
        m_edit->setFocus(Qt::OtherFocusReason);
}

} // namespace asleft
