#include <bench/crank_line.h>

#include <parts/heading.h>
#include <parts/key_button.h>

#include <words/crank.h>
#include <words/job.h>

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

CrankLine::CrankLine(QWidget *parent)
    : QWidget(parent), m_place(Heading::wrapped({}, TextSize::BodyStrong)), m_sets(Heading::wrapped({}, TextSize::SmallStrong)),
      m_wait(Heading::wrapped({}, TextSize::SmallStrong)), m_then(Heading::wrapped({}, TextSize::Small)),
      m_known(Heading::wrapped({}, TextSize::Small, Heading::Tone::Quiet))
{
    addKey(tr("undo"), {});
    addKey(tr("plan"), tr("Choose the crank plan"));
    addKey(tr("sheet"), tr("Type in a filled-in bench sheet (Ctrl+B)"));
    addKey(tr("All set here"), tr("Every point the plan sets here: set with what the spec asks, locked, felt again"));
    addKey(tr("Turn the crank"), {});
    for (const Key seldom : {Key::Undo, Key::Plan, Key::Sheet})
        key(seldom)->setPlain(true);

    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    auto *crank = new QHBoxLayout;
    crank->setSpacing(8);
    auto *words = new QVBoxLayout;
    words->setSpacing(3);
    words->addWidget(m_place);
    words->addWidget(m_sets);
    words->addStretch(1);
    crank->addLayout(words, 1);
    for (const Key often : {Key::AllHere, Key::Turn})
        crank->addWidget(key(often), 0, Qt::AlignTop);
    column->addLayout(crank);
    column->addWidget(m_wait);
    auto *plan = new QHBoxLayout;
    plan->setSpacing(4);
    auto *then = new QVBoxLayout;
    then->setSpacing(2);
    then->addWidget(m_then);
    then->addWidget(m_known);
    then->addStretch(1);
    plan->addLayout(then, 1);
    for (const Key seldom : {Key::Undo, Key::Plan, Key::Sheet})
        plan->addWidget(key(seldom), 0, Qt::AlignTop);
    column->addLayout(plan);
}

KeyButton *CrankLine::addKey(const QString &words, const QString &meaning)
{
    auto *button = new KeyButton(words);
    if (!meaning.isEmpty()) {
        button->setToolTip(meaning);
        button->setAccessibleName(meaning);
    }
    connect(button, &KeyButton::clicked, this, [this, which = Key(m_keys.size())] { Q_EMIT keyed(which); });
    m_keys.append(button);
    return button;
}

void CrankLine::present(const JobBook &book, Moment now, std::string_view station)
{
    const JobState &state = book.state();
    showPlace(state);
    showUndo(state, station);
    showPlan(book, now);
    const auto canBeLeft = [&](const SettingPoint &point) { return canBeLeftHere(state, point); };
    key(Key::AllHere)->setEnabled(std::ranges::any_of(state.frame->engine.points, canBeLeft));
}

void CrankLine::showPlace(const JobState &state)
{
    const EngineDesign &design = state.frame->engine.design;
    const auto crank = state.crank ? state.crank->crank : std::nullopt;
    m_place->setText(crankName(design, crank));
    m_place->setToolTip({});
    if (!crank)
        return;
    const CrankReading saying = readCrank(design, *crank);
    m_place->setToolTip(strokeCheckSentence(design, strokeCheck(design, saying.place.cylinder)));
}

void CrankLine::showUndo(const JobState &state, std::string_view station)
{
    const auto last = undoable(state, station);
    key(Key::Undo)->setEnabled(last.has_value());
    const auto act = std::ranges::find(state.acts, last, [](const Act &each) { return std::optional(each.seq); });
    key(Key::Undo)->setToolTip(act == state.acts.end() ? QString() : tr("Take back: %1 (Ctrl+Z)").arg(actText(*act, state)));
}

void CrankLine::showPlan(const JobBook &book, Moment now)
{
    const JobState &state = book.state();
    const CrankPlan plan = state.plan ? *state.plan : book.proposedPlan();
    const EngineDesign &design = state.frame->engine.design;
    const auto setsAt = [&](std::size_t position) { return QString::fromStdString(describePoints(design, plan.positions[position])); };
    const auto stands = planPositionHere(state);
    m_sets->setText(stands ? setsAt(*stands) : tr("at no position of the plan"));
    const bool goesOn = plan.positions.size() > (stands ? 1U : 0U);
    m_then->setVisible(goesOn);
    if (goesOn) {
        const std::size_t next = stands ? (*stands + 1) % plan.positions.size() : 0;
        m_then->setText(tr("Then %1: %2").arg(positionInText(design, plan.positions[next]), setsAt(next)));
    }
    m_known->setText(tr("%1 · plan %2").arg(crankKnown(state, now), planSource(design, plan)));
    const auto until = bleedDownUntil(state);
    const bool waits = until && *until > now;
    m_wait->setVisible(waits);
    m_wait->setText(waits ? bleedDownText(*until, now) : QString());
}

} // namespace asleft
