#include <bench/paper_line.h>

#include <bench/bar_view.h>
#include <parts/heading.h>
#include <parts/ink_of.h>
#include <parts/message_line.h>
#include <parts/rule.h>

#include <draw/point_shape.h>
#include <words/errors.h>
#include <words/numbers.h>
#include <words/points.h>
#include <words/readings.h>

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace asleft {

namespace {

/// As it is printed in the system that digits alone count in.
QString bandOf(const JobFrame &frame, PointId point, LengthUnit unit)
{
    if (const auto *turns = turnsOf(frame, point))
        return bandText(*turns);
    const auto *bands = lashBandsOf(frame, point);
    return bands ? bandText(bands->printedFor(unit)) : PaperLine::tr("no spec yet");
}

} // namespace

PaperLine::PaperLine(const JobBook &book, PointId point, DecimalMark mark, QWidget *parent)
    : QWidget(parent), m_book(book), m_point(point), m_mark(mark)
{
    build();
    for (const Phase phase : bothPhases)
        wire(phase);
}

void PaperLine::build()
{
    m_name = new Heading({}, TextSize::BodyStrong);
    m_asked = Heading::wrapped({}, TextSize::Small, Heading::Tone::Quiet);
    m_found = new PaperBox;
    m_left = new PaperBox;
    m_foundJudgement = Heading::wrapped({}, TextSize::Small);
    m_leftJudgement = Heading::wrapped({}, TextSize::Small);
    m_message = new MessageLine;

    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(3);
    auto *row = new QHBoxLayout;
    row->setSpacing(paperGap);
    auto *names = new QWidget;
    names->setFixedWidth(paperNameWidth);
    auto *words = new QVBoxLayout(names);
    words->setContentsMargins(0, 0, 0, 0);
    words->setSpacing(1);
    words->addWidget(m_name);
    words->addWidget(m_asked);
    words->addStretch(1);
    row->addWidget(names);
    for (const Phase phase : bothPhases) {
        row->addWidget(field(phase), 0, Qt::AlignTop);
        judgement(phase)->setAlignment(Qt::AlignLeft | Qt::AlignVCenter);
        judgement(phase)->setMinimumSize(1, touchHeight);
        row->addWidget(judgement(phase), 1, Qt::AlignTop);
    }
    column->addLayout(row);
    column->addWidget(m_message);
    column->addWidget(new Rule);
}

void PaperLine::wire(Phase phase)
{
    PaperBox *box = field(phase);
    connect(box, &QLineEdit::textChanged, this, [this, phase] { showJudgement(phase); });
    connect(box, &QLineEdit::textEdited, this, [this, box] {
        box->setRefused(false);
        quiet();
        Q_EMIT edited();
    });
    connect(box, &LineEdit::entered, this, [this, phase] {
        if (check(phase))
            Q_EMIT entered(phase);
    });
    connect(box, &PaperBox::arrowPressed, this, [this, phase](Qt::Key arrow) { Q_EMIT arrowPressed(phase, arrow); });
    connect(box, &PaperBox::focused, this, [this, box] { Q_EMIT focused(box); });
}

TypedAs PaperLine::typedAs() const
{
    return {usualUnit(m_book, m_point), turnsOf(*m_book.state().frame, m_point) != nullptr, m_mark};
}

QString PaperLine::asked() const
{
    const JobState &state = m_book.state();
    QStringList words{bandOf(*state.frame, m_point, usualUnit(m_book, m_point))};
    // What the job knows already stays: this comes after it.
    if (state.point(m_point).stage != PointStage::Untouched)
        words.append(lookWords(lookOf(state, m_point, false)));
    return words.join(QChar::LineFeed);
}

void PaperLine::refresh(EngineCondition condition)
{
    const JobFrame &frame = *m_book.state().frame;
    m_condition = condition;
    const QString name = pointName(frame, m_point);
    m_name->setText(name);
    m_asked->setText(asked());
    const auto *bands = lashBandsOf(frame, m_point);
    const auto leaf = bands ? specLeaf(*bands, m_book.tool()) : std::nullopt;
    m_found->setLeafFound(leaf ? typedText(*leaf) : QString());
    for (const Phase phase : bothPhases) {
        field(phase)->setTypedAs(typedAs());
        field(phase)->setAccessibleName(tr("%1, %2", "point, as found or as left").arg(name, phaseName(phase)));
        showJudgement(phase);
    }
}

void PaperLine::showJudgement(Phase phase)
{
    const auto read = field(phase)->read();
    QString words;
    if (read && *read) {
        const Judgement judged = judgementOf(m_book, entryOf(**read, m_point, phase), m_condition);
        // A bracket stands in its box in full.
        const QString value = (*read)->next ? QString() : typedText(**read);
        const QString verdict = judged.likelihood.isEmpty() ? verdictName(judged.verdict) : judged.likelihood;
        words = value.isEmpty() ? verdict : tr("%1\n%2", "value, what it is worth").arg(value, verdict);
    }
    judgement(phase)->setText(words);
    field(phase)->setAccessibleDescription(words);
}

bool PaperLine::check(Phase phase)
{
    const auto read = field(phase)->read();
    if (!read) {
        refuse(phase, sentence(read.error()));
        return false;
    }
    const bool hasSpec = m_book.state().frame->specNow(m_book.state().frame->point(m_point)->adjuster) != nullptr;
    if (*read && (*read)->specLeaf && !hasSpec) {
        refuse(
            phase,
            tr("There is no spec yet whose leaf could be meant. What was typed is kept; write the value instead, or type the spec first."));
        return false;
    }
    return true;
}

std::optional<Phase> PaperLine::firstRefused()
{
    for (const Phase phase : bothPhases)
        if (!check(phase))
            return phase;
    return std::nullopt;
}

SheetEntry PaperLine::entry() const
{
    const auto entryIn = [this](Phase phase) -> std::optional<ReadingEntry> {
        const auto read = field(phase)->read();
        return read && *read ? std::optional(entryOf(**read, m_point, phase)) : std::nullopt;
    };
    return {.point = m_point, .found = entryIn(Phase::AsFound), .left = entryIn(Phase::AsLeft)};
}

void PaperLine::refuse(Phase phase, const QString &sentence)
{
    field(phase)->setRefused(true);
    m_message->refuse(sentence);
}

void PaperLine::ask(const QString &sentence)
{
    m_message->refuse(sentence);
}

void PaperLine::quiet()
{
    m_message->clear();
}

} // namespace asleft
