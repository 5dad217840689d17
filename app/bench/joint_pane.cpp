#include <bench/joint_pane.h>

#include <bench/joint_pane_top.h>
#include <drawn/fastener_button.h>
#include <drawn/joint_view.h>
#include <parts/key_button.h>
#include <parts/read_only.h>
#include <parts/reading_edit.h>
#include <parts/rule.h>

#include <words/errors.h>
#include <words/fasteners.h>
#include <words/job.h>
#include <work/workshop.h>

#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

namespace {

constexpr int heightForAll = 640; ///< a lower sheet leaves the room to the drawing

} // namespace

JointPane::JointPane(AppContext &context, JobBook &book, const QString &fieldName, const QList<BarKey> &keys)
    : m_context(context), m_book(book), m_others(book.state(), context.garage().station()),
      m_bar(new EntryBar(fieldName, keys, BesideField::Words))
{
    build();
    wire();
    m_view->addShortcuts(this);
    keepFromWriting(context.garage(), {undoKey()});
}

KeyButton *JointPane::undoKey() const
{
    return m_top->undoKey();
}

std::chrono::sys_days JointPane::today() const
{
    return localDay(m_context.garage().now());
}

void JointPane::build()
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    m_top = new JointPaneTop;
    column->addWidget(m_top);
    auto *page = new QWidget;
    auto *work = new QVBoxLayout(page);
    work->setContentsMargins(0, 0, 0, 0);
    work->setSpacing(4);
    m_view = new JointView;
    work->addWidget(m_view, 1);
    work->addWidget(new Rule(Rule::Weight::Heavy));
    work->addWidget(m_bar);
    m_stack = new QStackedWidget;
    m_stack->addWidget(page);
    column->addWidget(m_stack, 1);
}

void JointPane::wire()
{
    connect(m_view, &JointView::fastenerChosen, this, [this](qsizetype index) {
        if (const auto number = numberAt(index))
            takeInHand(*number);
    });
    connect(m_bar, &EntryBar::keyed, this, [this](int key) {
        if (m_joint)
            press(key);
    });
    connect(m_bar, &EntryBar::entered, this, [this](const QString &text) {
        if (m_joint)
            enter(text);
    });
    connect(m_bar, &EntryBar::reasonGiven, this, [this](const QString &reason) {
        if (m_joint)
            takeReason(reason);
    });
    connect(m_bar, &EntryBar::typing, this, [this] { m_asked.reset(); });
    connect(m_bar, &EntryBar::arrowPressed, this, &JointPane::goAside);
    connect(m_stack, &QStackedWidget::currentChanged, this, &JointPane::makeRoom);
    connect(undoKey(), &KeyButton::clicked, this, [this] { takeBack(false); });
}

void JointPane::resizeEvent(QResizeEvent *event)
{
    Pane::resizeEvent(event);
    makeRoom();
}

void JointPane::makeRoom()
{
    m_top->setBrief(height() < heightForAll || m_stack->currentIndex() != 0);
}

void JointPane::showStep(StepId id)
{
    const Step *step = state().frame->step(id);
    if (!step || !step->joint || !state().joints.contains(*step->joint))
        return;
    const bool other = m_joint != step->joint;
    m_step = id;
    m_joint = step->joint;
    m_stack->setCurrentIndex(0);
    if (other || !m_inHand)
        goTo(next());
    else
        m_bar->quiet();
    // What others did before this was in sight is no news.
    m_others.hearAll(state());
    refresh();
}

void JointPane::refresh()
{
    if (!m_joint)
        return;
    m_top->present(state(), *m_step, joint(), orderWords());
    m_top->showUndo(state(), m_context.garage().station());
    showView();
    EntryView shown = barView();
    shown.readOnly = readOnly();
    m_bar->present(shown);
    hearOthers();
}

void JointPane::showView()
{
    const Joint &now = joint();
    // A newer revision may have other fasteners.
    if (m_inHand && !now.text.pattern.place(*m_inHand))
        m_inHand = next();
    m_view->setJoint(now.text.pattern, path());
    QStringList names;
    QList<FastenerLook> looks;
    std::optional<qsizetype> inHand;
    for (const FastenerPosition &place : now.text.pattern.places) {
        const bool held = m_inHand == place.number;
        if (held)
            inHand = looks.size();
        names.append(tr("Fastener %1").arg(place.number));
        looks.append(lookOf(state(), *m_joint, place.number, held));
    }
    m_view->setFasteners(names, looks, inHand, legsDone());
    for (qsizetype i = 0; i < names.size(); ++i)
        m_view->button(i)->setTip([this, i] { return tipOf(i); });
}

QString JointPane::tipOf(qsizetype index) const
{
    const auto number = m_joint ? numberAt(index) : std::nullopt;
    return number ? fastenerLines(state(), *m_joint, *number).join(QChar::LineFeed) : QString();
}

std::optional<int> JointPane::numberAt(qsizetype index) const
{
    const auto &places = joint().text.pattern.places;
    return index >= 0 && std::size_t(index) < places.size() ? std::optional(places[std::size_t(index)].number) : std::nullopt;
}

void JointPane::goTo(std::optional<int> fastener)
{
    m_inHand = fastener;
    m_asked.reset();
    m_news.clear();
    m_bar->clearValue();
    forget();
}

void JointPane::takeInHand(int fastener)
{
    if (!m_joint || !joint().text.pattern.place(fastener))
        return;
    m_stack->setCurrentIndex(0);
    goTo(fastener);
    refresh();
    takeFocus();
}

void JointPane::takeUp(const Subject &about)
{
    const auto *subject = std::get_if<FastenerSubject>(&about);
    if (subject && !subject->fasteners.empty())
        takeInHand(subject->fasteners.front());
}

QLineEdit *JointPane::keypadTarget() const
{
    return m_bar->edit();
}

void JointPane::goAside(Qt::Key arrow)
{
    const auto &places = joint().text.pattern.places;
    const auto now = std::ranges::find(places, m_inHand, [](const FastenerPosition &place) { return std::optional(place.number); });
    const auto aside = now == places.end() ? std::nullopt : m_view->neighbour(now - places.begin(), arrow);
    if (const auto number = aside ? numberAt(*aside) : std::nullopt)
        takeInHand(*number);
}

bool JointPane::isAbout(const Act &act) const
{
    const Act &spoken = spokenOf(state(), act);
    if (jointOf(spoken.what.fact) != m_joint)
        return false;
    const auto fasteners = fastenersOf(spoken.what.fact);
    return fasteners.empty() || !m_inHand || std::ranges::count(fasteners, *m_inHand) > 0;
}

void JointPane::hearOthers()
{
    const Act *news = m_others.heardOf(state(), [this](const Act &act) { return isAbout(act); });
    if (!news)
        return;
    // A question asked before was about another state of the fastener.
    m_asked.reset();
    const QString said = otherStationText(*news, state());
    m_bar->notice(said);
    if (!m_bar->edit()->text().isEmpty())
        m_news = said;
}

bool JointPane::mayGoOn(const JointAsked &asked, QStringList why)
{
    const Question question{*m_joint, m_inHand, asked};
    if (m_asked == question)
        return true;
    if (!m_news.isEmpty())
        why.prepend(tr("%1 The same again logs yours on top.").arg(m_news));
    why.removeAll(QString());
    if (why.isEmpty())
        return true;
    m_asked = question;
    m_bar->ask(tr("%1 Nothing is logged yet.").arg(why.join(QChar::Space)));
    return false;
}

bool JointPane::takeBack(bool again)
{
    if (readOnly())
        return true;
    m_stack->setCurrentIndex(0);
    log([&] { return again ? m_book.redo() : m_book.undo(); });
    return true;
}

void JointPane::after(const Result<ActSeq> &logged)
{
    m_asked.reset();
    if (!logged) {
        // Another computer has changed what is asked: that is in sight before it is done.
        if (hasMissed() || logged.error().kind == ErrorKind::JointChanged)
            refresh();
        m_bar->refuse(sentence(logged.error()));
        return;
    }
    const Act *act = actOf(state(), *logged);
    goTo(act ? inHandAfter(*act) : next());
    refresh();
    if (act)
        m_bar->done(actText(*act, state()));
    takeFocus();
}

std::optional<int> JointPane::inHandAfter(const Act &act) const
{
    // What was taken back, and what was only said something of, stays in hand; what was done makes room for the next.
    const Act &spoken = spokenOf(state(), act);
    const auto fasteners = jointOf(spoken.what.fact) == m_joint ? fastenersOf(spoken.what.fact) : std::vector<int>{};
    const bool back = act.what.withdraws || std::holds_alternative<UntickedFact>(act.what.fact);
    if (back && !fasteners.empty())
        return fasteners.front();
    const bool worked = std::holds_alternative<TicksFact>(act.what.fact) || std::holds_alternative<LoosenedFact>(act.what.fact) ||
                        std::holds_alternative<JointBegunFact>(act.what.fact);
    const auto following = next();
    return worked && following ? following : m_inHand ? m_inHand : following;
}

} // namespace asleft
