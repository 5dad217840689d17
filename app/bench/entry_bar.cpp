#include <bench/entry_bar.h>

#include "keys_layout.h"
#include <drawn/scale_view.h>
#include <parts/choice_keys.h>
#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/reading_edit.h>
#include <parts/reason_line.h>

#include <words/numbers.h>

#include <QApplication>
#include <QButtonGroup>
#include <QHBoxLayout>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace asleft {

namespace {

constexpr int widthForLongWords = 590;
constexpr int widthForOneLine = 600;
constexpr int besideGap = 16;

/// Takes the other value that a question offers, while it stands.
constexpr QLatin1Char insteadLetter('u');

QHBoxLayout *rowIn(QBoxLayout *column, int spacing)
{
    auto *row = new QHBoxLayout;
    row->setSpacing(spacing);
    column->addLayout(row);
    return row;
}

} // namespace

EntryBar::EntryBar(const QString &fieldName, const QList<BarKey> &keys, BesideField beside, QWidget *parent)
    : QWidget(parent), m_besideField(beside), m_now(Heading::wrapped({}, TextSize::Now)),
      m_spec(Heading::wrapped({}, TextSize::Small, Heading::Tone::Quiet)), m_large(new Heading({}, TextSize::Value)),
      m_small(beside == BesideField::Scale ? new Heading({}, TextSize::Small, Heading::Tone::Quiet)
                                           : Heading::wrapped({}, TextSize::Small)),
      m_asked(Heading::wrapped({}, TextSize::SmallStrong)), m_edit(new ReadingEdit), m_scale(new ScaleView), m_reason(new ReasonLine),
      m_chips(new ChipRow), m_instead(new KeyButton({})), m_units(new QButtonGroup(this)), m_message(m_edit), m_keys(keys, this)
{
    build();
    m_edit->setAccessibleName(fieldName);
    m_edit->setLetters(m_keys.letters());
    wire();
}

void EntryBar::build()
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, hasScale() ? 8 : 6, 0, 0);
    column->setSpacing(hasScale() ? 6 : 5);
    buildNow(column);
    buildValues(column);
    buildAsked(column);
    column->addWidget(m_message.line());
    buildChoices(column);
    auto *work = new KeysLayout;
    m_places[BarKey::Place::Work] = work;
    column->addLayout(work);
    placeKeys();
    buildUnits();
}

void EntryBar::buildNow(QVBoxLayout *column)
{
    auto *row = rowIn(column, hasScale() ? 8 : 4);
    row->addWidget(m_now, 1);
    m_places[BarKey::Place::Seldom] = row;
    auto *specs = new QWidget;
    auto *line = new QHBoxLayout(specs);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(12);
    line->addWidget(m_spec, 1);
    if (hasScale())
        line->addWidget(m_small, 0, Qt::AlignTop | Qt::AlignRight);
    column->addWidget(specs);
    specs->setVisible(hasScale()); // now that it has a parent: before, it would be a window
}

void EntryBar::buildValues(QVBoxLayout *column)
{
    auto *page = new QWidget;
    auto *values = new QHBoxLayout(page);
    values->setContentsMargins(0, 0, 0, 0);
    values->setSpacing(besideGap);
    values->addWidget(m_edit, 0, hasScale() ? Qt::Alignment() : Qt::AlignTop);
    values->addWidget(m_scale, 1);
    if (hasScale()) {
        values->addStretch(0);
        m_large->setParent(this);
    } else {
        auto *words = new QVBoxLayout;
        words->setSpacing(2);
        words->addWidget(m_large);
        words->addWidget(m_small);
        m_places[BarKey::Place::Beside] = new KeysLayout;
        words->addLayout(m_places[BarKey::Place::Beside]);
        words->addStretch(1);
        values->addLayout(words, 1);
        m_large->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    }
    m_values = new QStackedWidget;
    m_values->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    m_values->addWidget(page);
    m_values->addWidget(m_reason);
    column->addWidget(m_values);
}

void EntryBar::buildAsked(QVBoxLayout *column)
{
    m_askedRow = new QWidget;
    m_askedLine = new QHBoxLayout(m_askedRow);
    m_askedLine->setContentsMargins(0, 0, 0, 0);
    m_askedLine->setSpacing(4);
    m_askedLine->addWidget(m_asked, 1);
    auto *answers = new KeysLayout;
    m_places[BarKey::Place::Answer] = answers;
    m_askedLine->addLayout(answers);
    column->addWidget(m_askedRow);
}

void EntryBar::buildChoices(QVBoxLayout *column)
{
    m_choices = new QWidget;
    auto *row = new QHBoxLayout(m_choices);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(chipGap);
    row->addWidget(m_instead);
    row->addWidget(m_chips);
    row->addStretch(1);
    m_places[BarKey::Place::Choice] = row;
    m_instead->setVisible(false);
    m_choices->setVisible(hasScale());
    column->addWidget(m_choices);
}

void EntryBar::buildUnits()
{
    auto *units = new QHBoxLayout;
    units->setSpacing(0);
    static_cast<QHBoxLayout *>(m_choices->layout())->addLayout(units);
    for (const LengthUnit unit : lengthUnits) {
        auto *button = new ChoiceKey(unitText(unit));
        button->setAccessibleName(tr("Unit: %1").arg(unitText(unit)));
        m_units->addButton(button, int(unit));
        units->addWidget(button);
    }
}

void EntryBar::placeKeys()
{
    for (const BarKey &said : m_keys.described()) {
        KeyButton *button = m_keys.key(said.id);
        button->setPlain(said.plain);
        QLayout *place = m_places.value(said.place);
        place->addWidget(button);
        if (said.place == BarKey::Place::Seldom)
            place->setAlignment(button, Qt::AlignTop);
    }
}

void EntryBar::wire()
{
    connect(m_edit, &QLineEdit::textChanged, this, &EntryBar::showTyped);
    connect(m_edit, &QLineEdit::textEdited, this, [this] {
        m_message.typed();
        dropQuestion();
        Q_EMIT typing();
    });
    connect(m_edit, &LineEdit::entered, this, &EntryBar::enter);
    connect(m_edit, &ReadingEdit::arrowPressed, this, &EntryBar::arrowPressed);
    connect(m_edit, &ReadingEdit::letterPressed, &m_keys, &BarKeys::pressLetter);
    connect(m_edit, &ReadingEdit::answerPressed, this, &EntryBar::insteadTaken);
    connect(m_instead, &KeyButton::clicked, this, &EntryBar::insteadTaken);
    connect(m_chips, &ChipRow::touched, this, [this](const QString &text) {
        m_edit->setText(text);
        enter();
    });
    connect(m_units, &QButtonGroup::idClicked, this, [this](int id) { Q_EMIT unitChosen(LengthUnit(id)); });
    connect(&m_keys, &BarKeys::pressed, this, &EntryBar::keyed);
    connect(&m_keys, &BarKeys::refused, this, &EntryBar::refuse);
    connect(&m_keys, &BarKeys::arrowPressed, this, &EntryBar::arrowPressed);
    connect(m_reason, &ReasonLine::given, this, &EntryBar::reasonGiven);
    connect(m_reason, &ReasonLine::left, this, [this] {
        m_values->setCurrentIndex(0);
        quiet();
        takeFocus();
    });
}

void EntryBar::enter()
{
    const QString text = m_edit->text().trimmed();
    if (text.isEmpty())
        m_edit->clear();
    Q_EMIT entered(text);
}

ChoiceKey *EntryBar::unitKey(LengthUnit unit) const
{
    return qobject_cast<ChoiceKey *>(m_units->button(int(unit)));
}

void EntryBar::present(const EntryView &view)
{
    const QWidget *had = QApplication::focusWidget();
    const bool ours = had && isAncestorOf(had);
    m_view = view;
    m_now->setText(view.now);
    m_spec->setText(view.spec);
    m_large->setText(view.large);
    m_large->setVisible(!view.large.isEmpty());
    m_asked->setText(view.asked);
    showField();
    showKeys();
    showChips();
    showTyped();
    fitLarge();
    placeAnswers();
    // A key that went away takes the keyboard with it.
    if (ours && QApplication::focusWidget() != had)
        takeFocus();
}

void EntryBar::showField()
{
    const bool types = m_view.field == EntryView::Field::On;
    m_edit->setVisible(m_view.field != EntryView::Field::Hidden);
    m_edit->setEnabled(types || m_edit->hasFocus());
    m_edit->setReadOnly(m_view.readOnly);
    if (types && m_view.turns)
        m_scale->setTurns(*m_view.turns);
    else
        m_scale->setBand(types ? m_view.bands : std::nullopt, m_view.unit);
    m_scale->setVisible(hasScale() && types);
}

void EntryBar::showKeys()
{
    QMap<int, KeyNow> keys = m_view.keys;
    if (width() < widthForLongWords)
        for (auto words = m_view.shortWords.cbegin(); words != m_view.shortWords.cend(); ++words)
            keys[words.key()].words = words.value();
    m_keys.present(keys);
    m_askedRow->setVisible(!m_view.asked.isEmpty() || m_keys.hasAnswer());
    for (const LengthUnit unit : lengthUnits)
        unitKey(unit)->setVisible(!m_view.turns);
    unitKey(m_view.unit)->setChecked(true);
}

/// The chips have what the keys beside them and the units leave them.
void EntryBar::showChips()
{
    int taken = 0;
    for (const BarKey &said : m_keys.described())
        taken += said.place == BarKey::Place::Choice ? m_keys.key(said.id)->sizeHint().width() : 0;
    for (const LengthUnit unit : lengthUnits)
        taken += m_view.turns ? 0 : unitKey(unit)->sizeHint().width();
    m_chips->setRoom(width() - taken - 3 * chipGap);
    m_chips->setChips(m_view.chips, !m_view.readOnly);
    m_chips->setVisible(!m_asksWhich);
}

void EntryBar::showTyped()
{
    const Preview preview = m_view.preview ? m_view.preview(m_edit->text().trimmed()) : Preview{};
    m_edit->setEcho(preview.echo.isEmpty() ? m_view.echo : preview.echo);
    m_scale->setValue(preview.onScale);
    m_scale->setTurned(preview.turnsOnScale);
    m_small->setText(preview.words.isEmpty() ? m_view.small : preview.words);
    m_small->setVisible(hasScale() || !m_small->text().isEmpty());
}

void EntryBar::fitLarge()
{
    const int room = width() - (m_view.field == EntryView::Field::Hidden ? 0 : m_edit->sizeHint().width() + besideGap);
    const bool fits = QFontMetrics(textFont(TextSize::Value)).horizontalAdvance(m_view.large) <= room;
    m_large->setFont(textFont(fits ? TextSize::Value : TextSize::Title));
}

void EntryBar::placeAnswers()
{
    const int answers = m_places.value(BarKey::Place::Answer)->sizeHint().width();
    const bool narrow = width() < widthForOneLine || 2 * answers > width();
    m_askedLine->setDirection(narrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

void EntryBar::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    showKeys();
    showChips();
    fitLarge();
    placeAnswers();
}

void EntryBar::clearValue()
{
    m_edit->clear();
    m_edit->setRefused(false);
    m_values->setCurrentIndex(0);
    quiet();
}

void EntryBar::dropQuestion()
{
    m_asksWhich = false;
    m_instead->setVisible(false);
    m_edit->setAnswer({});
    m_chips->setVisible(true);
}

void EntryBar::ask(const QString &sentence)
{
    dropQuestion();
    m_message.ask(sentence);
}

void EntryBar::askWhich(const QString &sentence, const QString &instead)
{
    m_message.ask(sentence);
    m_asksWhich = true;
    m_instead->setText(tr("%1 instead (%2)").arg(instead, QString(insteadLetter).toUpper()));
    m_instead->setAccessibleName(tr("Log %1 instead").arg(instead));
    m_instead->setVisible(true);
    m_edit->setAnswer(insteadLetter);
    m_chips->setVisible(false);
}

void EntryBar::notice(const QString &sentence)
{
    dropQuestion();
    m_message.notice(sentence);
}

void EntryBar::refuse(const QString &sentence)
{
    dropQuestion();
    m_message.refuse(sentence);
}

void EntryBar::done(const QString &sentence)
{
    dropQuestion();
    m_message.done(sentence);
}

void EntryBar::quiet()
{
    dropQuestion();
    m_message.quiet();
}

void EntryBar::askReason(const QString &asked, const QString &take)
{
    quiet();
    m_values->setCurrentWidget(m_reason);
    m_reason->begin(asked, take);
}

bool EntryBar::asksReason() const
{
    return m_values->currentWidget() == m_reason;
}

void EntryBar::takeFocus()
{
    if (asksReason()) {
        m_reason->edit()->setFocus(Qt::OtherFocusReason);
        return;
    }
    // A question about the joint goes before the work, and a value before its key.
    QWidget *first = m_keys.strong(true);
    if (!first && m_view.field != EntryView::Field::Hidden) {
        m_edit->setEnabled(true);
        first = m_edit;
    }
    if (!first)
        first = m_keys.strong(false);
    if (!first)
        first = m_keys.any();
    if (first)
        first->setFocus(Qt::OtherFocusReason);
}

} // namespace asleft
