#include <bench/bench_sheet_pane.h>

#include <bench/doubts.h>
#include <bench/paper_line.h>
#include <bench/paper_top.h>
#include <bench/valve_pane.h>
#include <parts/choice_keys.h>
#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/pane_scroll_bar.h>
#include <parts/rule.h>
#include <parts/scroll_pane.h>
#include <parts/value_field.h>

#include <words/crank.h>
#include <words/errors.h>
#include <words/readings.h>

#include <QHBoxLayout>
#include <QShortcut>
#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

BenchSheetPane::BenchSheetPane(AppContext &context, JobBook &book, QWidget *parent) : Pane(parent), m_context(context), m_book(book)
{
    build();
    connect(m_top, &PaperTop::conditionChosen, this, &BenchSheetPane::refresh);
    connect(m_top, &PaperTop::entered, this, [this] {
        if (!m_lines.isEmpty())
            m_lines.front()->field(Phase::AsFound)->setFocus(Qt::TabFocusReason);
    });
    connect(m_log, &KeyButton::clicked, this, &BenchSheetPane::logAll);
    connect(m_back, &KeyButton::clicked, this, [this] { Q_EMIT wanted({makePane<ValvePane>}); });
    for (const Qt::Key enter : {Qt::Key_Return, Qt::Key_Enter}) {
        auto *shortcut = new QShortcut(QKeySequence(Qt::CTRL | enter), this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, &BenchSheetPane::logAll);
    }
}

void BenchSheetPane::build()
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    auto *head = new QHBoxLayout;
    head->addWidget(new Heading(tr("Type in a bench sheet"), TextSize::Now), 1);
    m_count = new Heading({}, TextSize::Small, Heading::Tone::Quiet);
    head->addWidget(m_count);
    m_back = new KeyButton(tr("Back"));
    m_back->setPlain(true);
    m_back->setAccessibleName(tr("Back to the head"));
    head->addWidget(m_back);
    column->addLayout(head);
    m_top = new PaperTop(m_context, m_book);
    column->addWidget(m_top);
    column->addWidget(Heading::wrapped(
        tr("Digits count in the step of the spec, Enter goes on. S: the spec's leaf, L: loose, T: tight, F: by feel; 25-30: this "
           "leaf goes, the next does not."),
        TextSize::Small, Heading::Tone::Quiet));
    column->addWidget(buildTitles());
    column->addWidget(new Rule(Rule::Weight::Heavy));
    m_sheet = new QWidget;
    auto *lines = new QVBoxLayout(m_sheet);
    lines->setContentsMargins(0, 0, 8, 0);
    lines->setSpacing(4);
    column->addWidget(new ScrollPane(m_sheet), 1);
    m_message = new MessageLine;
    column->addWidget(m_message);
    buildFoot(column);
}

QWidget *BenchSheetPane::buildTitles()
{
    auto *titles = new QWidget;
    auto *row = new QHBoxLayout(titles);
    // As wide as the lines, which leave room for their scroll bar.
    row->setContentsMargins(0, 0, 8 + PaneScrollBar().sizeHint().width(), 0);
    row->setSpacing(paperGap);
    auto *point = new Heading(tr("point"), TextSize::SmallStrong);
    point->setFixedWidth(paperNameWidth);
    row->addWidget(point);
    for (const Phase phase : bothPhases)
        row->addWidget(new Heading(phaseName(phase), TextSize::SmallStrong), 1);
    return titles;
}

void BenchSheetPane::buildFoot(QVBoxLayout *column)
{
    auto *keys = new QHBoxLayout;
    keys->setSpacing(8);
    m_log = new KeyButton(tr("Log the sheet"));
    m_log->setStrong(true);
    m_log->setToolTip(tr("All of it or nothing (Ctrl+Enter)"));
    keys->addWidget(m_log);
    keys->addStretch(1);
    const QStringList words{tr("spec leaf"), tr("loose"), tr("tight"), tr("by feel")};
    for (int word = 0; word < words.size(); ++word) {
        auto *key = new KeyButton(words[word]);
        key->setPlain(true);
        // The box keeps the keyboard: a touch writes into it.
        key->setFocusPolicy(Qt::NoFocus);
        connect(key, &KeyButton::clicked, this, [this, word] {
            if (m_box)
                m_box->write(PaperBox::Word(word));
        });
        keys->addWidget(key);
        m_words.append(key);
    }
    column->addLayout(keys);
}

std::vector<BenchSheetPane::Part> BenchSheetPane::parts() const
{
    const JobState &state = m_book.state();
    const EngineDesign &design = state.frame->engine.design;
    std::vector<Part> parts;
    std::vector<PointId> rest;
    for (const SettingPoint &point : state.frame->engine.points)
        rest.push_back(point.id);
    const CrankPlan plan = state.plan ? *state.plan : m_book.proposedPlan();
    for (const PlanPosition &position : plan.positions) {
        Part part{positionName(design, position), findingSentence(design, position), {}};
        for (const PlanPoint &planned : position.points) {
            const SettingPoint *point = state.frame->pointAt(planned.adjuster);
            if (point && std::erase(rest, point->id) > 0)
                part.points.push_back(point->id);
        }
        parts.push_back(std::move(part));
    }
    if (!rest.empty())
        parts.push_back({tr("Set at no position of the plan"), {}, std::move(rest)});
    return parts;
}

PaperLine *BenchSheetPane::addLine(PointId point)
{
    auto *line = new PaperLine(m_book, point, m_context.mark());
    connect(line, &PaperLine::edited, this, [this] {
        m_askedFar.reset();
        m_askedLeaving.reset();
        m_askedLosing.reset();
        m_message->clear();
        showCount();
    });
    connect(line, &PaperLine::entered, this, [this, line](Phase phase) { moveOn(line, phase); });
    connect(line, &PaperLine::arrowPressed, this, [this, line](Phase phase, Qt::Key arrow) { moveUpOrDown(line, phase, arrow); });
    connect(line, &PaperLine::focused, this, [this](PaperBox *box) {
        m_box = box;
        Q_EMIT keypadTargetChanged();
    });
    return line;
}

/// Another plan has another order: the lines are laid anew, and what stands in them goes with them.
void BenchSheetPane::buildLines()
{
    auto *column = static_cast<QVBoxLayout *>(m_sheet->layout());
    while (QLayoutItem *item = column->takeAt(0)) {
        // Lines are kept; what stood between them is not.
        if (auto *heading = qobject_cast<Heading *>(item->widget()))
            delete heading;
        delete item;
    }
    QList<PaperLine *> lines;
    for (const Part &part : m_parts) {
        if (part.points.empty())
            continue;
        column->addSpacing(6);
        column->addWidget(Heading::wrapped(part.title, TextSize::BodyStrong));
        if (!part.finding.isEmpty())
            column->addWidget(Heading::wrapped(part.finding, TextSize::Small, Heading::Tone::Quiet));
        for (const PointId point : part.points) {
            const auto known = std::ranges::find(m_lines, point, &PaperLine::point);
            lines.append(known == m_lines.end() ? addLine(point) : *known);
            column->addWidget(lines.back());
        }
    }
    column->addStretch(1);
    for (PaperLine *line : m_lines)
        if (!lines.contains(line))
            line->deleteLater();
    m_lines = lines;
    for (qsizetype i = 0; i < m_lines.size(); ++i) {
        QWidget::setTabOrder(m_lines[i]->field(Phase::AsFound), m_lines[i]->field(Phase::AsLeft));
        if (i + 1 < m_lines.size())
            QWidget::setTabOrder(m_lines[i]->field(Phase::AsLeft), m_lines[i + 1]->field(Phase::AsFound));
    }
}

void BenchSheetPane::refresh()
{
    m_top->refresh();
    if (std::vector<Part> now = parts(); now != m_parts) {
        m_parts = std::move(now);
        buildLines();
    }
    for (PaperLine *line : m_lines)
        line->refresh(m_top->condition());
    showCount();
}

QLineEdit *BenchSheetPane::keypadTarget() const
{
    return m_box;
}

int BenchSheetPane::draft() const
{
    return int(std::ranges::count_if(texts(), [](const QString &text) { return !text.trimmed().isEmpty(); }));
}

QStringList BenchSheetPane::texts() const
{
    QStringList texts;
    for (const PaperLine *line : m_lines)
        for (const Phase phase : bothPhases)
            texts.append(line->field(phase)->text());
    return texts;
}

void BenchSheetPane::showCount()
{
    m_count->setText(tr("%1 of %n box(es) filled in", nullptr, int(2 * m_lines.size())).arg(draft()));
}

void BenchSheetPane::moveOn(PaperLine *line, Phase phase)
{
    const auto index = m_lines.indexOf(line);
    if (phase == Phase::AsFound)
        line->field(Phase::AsLeft)->setFocus(Qt::TabFocusReason);
    else if (index + 1 < m_lines.size())
        m_lines[index + 1]->field(Phase::AsFound)->setFocus(Qt::TabFocusReason);
    else
        m_log->setFocus(Qt::TabFocusReason);
}

void BenchSheetPane::moveUpOrDown(PaperLine *line, Phase phase, Qt::Key arrow)
{
    const auto index = m_lines.indexOf(line) + (arrow == Qt::Key_Down ? 1 : -1);
    if (index >= 0 && index < m_lines.size())
        m_lines[index]->field(phase)->setFocus(Qt::TabFocusReason);
}

bool BenchSheetPane::checkAll()
{
    bool whole = true;
    for (PaperLine *line : m_lines) {
        const auto refused = line->firstRefused();
        if (refused && whole)
            line->field(*refused)->setFocus(Qt::OtherFocusReason);
        whole = whole && !refused;
    }
    if (!whole)
        m_message->refuse(tr("A box cannot be read: its line says why. Nothing was logged; all that is typed is kept."));
    const bool dated = m_top->check();
    if (whole && !dated)
        m_top->date()->edit()->setFocus(Qt::OtherFocusReason);
    return whole && dated;
}

bool BenchSheetPane::mayBeSo(const std::vector<SheetEntry> &entries)
{
    if (m_askedFar == texts())
        return true;
    int doubts = 0;
    for (qsizetype i = 0; i < m_lines.size(); ++i) {
        const SheetEntry &entry = entries[std::size_t(i)];
        for (const Phase phase : bothPhases) {
            const auto &said = phase == Phase::AsFound ? entry.found : entry.left;
            if (!said)
                continue;
            const TypedReading reading{.form = said->form, .value = said->value, .next = said->next};
            const QString question = valueDoubt(*m_book.state().frame, entry.point, reading, m_context.mark()).question;
            if (question.isEmpty())
                continue;
            m_lines[i]->ask(question);
            if (doubts++ == 0)
                m_lines[i]->field(phase)->setFocus(Qt::OtherFocusReason);
        }
    }
    if (doubts == 0)
        return true;
    m_askedFar = texts();
    const QString far = tr("%n value(s) are far from what the manual asks.", nullptr, doubts);
    m_message->refuse(tr("%1 Nothing is logged yet; “Log the sheet” once more logs it as typed.").arg(far));
    return false;
}

/// Whoever filled the sheet in did the work, at their time, on the engine as it was then; whoever sits here stays at the bench.
Result<ActSeq> BenchSheetPane::logAs(const std::vector<SheetEntry> &entries)
{
    const Session session = m_book.session();
    const bool today = !m_top->day() && session.condition == m_top->condition();
    m_book.setWho(m_top->who());
    m_book.setCondition(m_top->condition(), today ? session.temperature : std::nullopt, today ? session.minutesSinceRun : std::nullopt);
    auto logged = m_book.logSheet(entries, m_top->day());
    if (session.who)
        m_book.setWho(*session.who);
    m_book.setCondition(session.condition, session.temperature, session.minutesSinceRun);
    return logged;
}

void BenchSheetPane::logAll()
{
    m_message->clear();
    if (!checkAll())
        return;
    std::vector<SheetEntry> entries;
    for (const PaperLine *line : m_lines)
        entries.push_back(line->entry());
    if (!mayBeSo(entries))
        return;
    const auto done = logAs(entries);
    if (!done) {
        m_message->refuse(sentence(done.error()));
        return;
    }
    clear();
    Q_EMIT finished(tr("The sheet is logged."));
}

void BenchSheetPane::clear()
{
    m_askedFar.reset();
    m_askedLeaving.reset();
    m_askedLosing.reset();
    for (PaperLine *line : m_lines) {
        line->quiet();
        for (const Phase phase : bothPhases)
            line->field(phase)->clear();
    }
    m_top->date()->setText({});
    showCount();
}

bool BenchSheetPane::mayLeave()
{
    return mayBe(m_askedLeaving, tr("Leaving keeps what is typed here while the job is open: once more leaves."));
}

bool BenchSheetPane::mayLose()
{
    return mayBe(m_askedLosing, tr("Another job was to be opened, and what is typed would be lost: log it, or open that job once more."));
}

bool BenchSheetPane::mayBe(std::optional<QStringList> &asked, const QString &whatThen)
{
    const int boxes = draft();
    if (boxes == 0 || asked == texts())
        return true;
    asked = texts();
    const QString filled = tr("%n box(es) are filled in and not logged.", nullptr, boxes);
    m_message->refuse(filled + QChar::Space + whatThen);
    return false;
}

void BenchSheetPane::takeFocus()
{
    // Behind the last box that is filled in.
    QList<PaperBox *> boxes;
    for (const PaperLine *line : m_lines)
        for (const Phase phase : bothPhases)
            boxes.append(line->field(phase));
    const auto filled = std::find_if(boxes.rbegin(), boxes.rend(), [](const PaperBox *box) { return !box->text().isEmpty(); });
    const auto next = filled.base();
    (next == boxes.end() ? static_cast<QWidget *>(m_log) : *next)->setFocus(Qt::OtherFocusReason);
}

} // namespace asleft
