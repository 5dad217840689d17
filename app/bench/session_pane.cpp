#include <bench/session_pane.h>

#include <parts/choice_keys.h>
#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/rule.h>
#include <parts/ruled_list.h>
#include <parts/scroll_pane.h>
#include <parts/value_field.h>

#include <words/errors.h>
#include <words/job.h>
#include <words/numbers.h>
#include <words/specs.h>
#include <words/tools.h>
#include <work/workshop.h>

#include <QHBoxLayout>
#include <QLocale>
#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

namespace {

constexpr qint64 noTool = 0; ///< no row of a tool has this id
constexpr int initialsWidth = 240;
constexpr int toolsInSight = 3;

TemperatureUnit temperatureHere()
{
    return QLocale().measurementSystem() == QLocale::ImperialUSSystem ? TemperatureUnit::Fahrenheit : TemperatureUnit::Celsius;
}

/// Wrenches and what goes on them are chosen where a joint is tightened.
bool measuresLash(ToolKind kind)
{
    return kind == ToolKind::FeelerSet || kind == ToolKind::DialGauge || kind == ToolKind::Micrometer;
}

} // namespace

SessionPane::SessionPane(AppContext &context, JobBook &book, QWidget *parent) : Pane(parent), m_context(context), m_book(book)
{
    auto *outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    auto *form = new QWidget;
    auto *column = new QVBoxLayout(form);
    column->setContentsMargins(0, 0, 8, 0);
    column->setSpacing(10);
    sayWhereItWasLeft(column);
    const bool asks = !context.garage().readOnly();
    if (asks) {
        askWho(column);
        askTools(column);
        askEngine(column);
    }
    m_message = new MessageLine;
    column->addWidget(m_message);
    m_begin = new KeyButton(asks ? tr("Begin") : tr("Look at the job"));
    m_begin->setStrong(true);
    column->addWidget(m_begin, 0, Qt::AlignLeft);
    column->addStretch(1);
    outer->addWidget(new ScrollPane(form));
    connect(m_begin, &KeyButton::clicked, this, &SessionPane::begin);
}

void SessionPane::sayWhereItWasLeft(QVBoxLayout *column)
{
    const JobState &state = m_book.state();
    column->addWidget(new Heading(lastAct(state) ? tr("Where this job was left") : tr("A new job"), TextSize::Now));
    for (const QString &line : resumeLines(state, m_context.garage().now(), m_book.tool())) {
        column->addWidget(Heading::wrapped(line, TextSize::Body));
        column->addWidget(new Rule);
    }
}

void SessionPane::askWho(QVBoxLayout *column)
{
    const JobState &state = m_book.state();
    QStringList initials;
    for (const Person &person : state.frame->people)
        initials.append(QString::fromStdString(person.initials));
    auto *row = new QHBoxLayout;
    row->setSpacing(24);
    if (!initials.isEmpty()) {
        m_who = new ChoiceKeys(tr("Who is at the bench?"), initials);
        row->addWidget(m_who);
        const auto &session = m_book.session().who;
        const Act *last = lastAct(state);
        const PersonId likely = session ? *session : last ? last->what.who : state.frame->people.front().id;
        const auto known = std::ranges::find(state.frame->people, likely, &Person::id);
        if (known != state.frame->people.end())
            m_who->setChoice(int(known - state.frame->people.begin()));
    }
    m_initials = new ValueField(initials.isEmpty() ? tr("Who is at the bench? Initials") : tr("Somebody else: initials"));
    m_initials->setMaximumWidth(initialsWidth);
    row->addWidget(m_initials, 1);
    row->addStretch(1);
    column->addLayout(row);
    connect(m_initials, &ValueField::entered, this, &SessionPane::begin);
    connect(m_initials, &ValueField::edited, m_initials, &ValueField::accept);
}

void SessionPane::askTools(QVBoxLayout *column)
{
    std::vector<Tool> tools;
    std::ranges::copy_if(m_book.state().frame->tools, std::back_inserter(tools), [](const Tool &tool) { return measuresLash(tool.kind); });
    if (tools.empty())
        return;
    column->addWidget(new Heading(tr("Measured with"), TextSize::Small, Heading::Tone::Quiet));
    QList<RuledRow> rows;
    for (const Tool &tool : tools)
        rows.append({.id = tool.id.key(), .title = QString::fromStdString(tool.name), .note = {}, .right = toolKindName(tool.kind)});
    rows.append({.id = noTool, .title = tr("something else"), .note = {}, .right = {}});
    auto *list = new RuledRows(this);
    list->setRows(rows);
    m_tools = new RuledList(tr("Measured with"), list);
    const auto &session = m_book.session();
    const qint64 likely = session.tool ? session.tool->key() : session.who ? noTool : rows.front().id;
    m_tools->setMaximumHeight(toolsInSight * (m_tools->sizeHintForRow(0) + 1) + 4);
    m_tools->setCurrentId(likely);
    column->addWidget(m_tools);
    connect(m_tools, &RuledList::opened, this, [this] { m_condition->takeFocus(); });
}

void SessionPane::askEngine(QVBoxLayout *column)
{
    const Session &session = m_book.session();
    auto *row = new QHBoxLayout;
    row->setSpacing(16);
    m_condition = new ChoiceKeys(tr("The engine is"), {conditionName(EngineCondition::Cold), conditionName(EngineCondition::Hot)});
    m_condition->setChoice(session.condition == EngineCondition::Cold ? 0 : 1);
    const TemperatureUnit unit = temperatureHere();
    m_temperature = new ValueField(tr("Its temperature, if known: %1").arg(QString::fromStdString(std::string(symbol(unit)))));
    m_sinceRun = new ValueField(tr("It ran, if known: hours ago"));
    if (session.temperature)
        m_temperature->setText(QString::fromStdString(session.temperature->text));
    row->addWidget(m_condition);
    row->addWidget(m_temperature, 1);
    row->addWidget(m_sinceRun, 1);
    column->addLayout(row);
    chainByEnter({m_temperature, m_sinceRun});
    connect(m_sinceRun, &ValueField::entered, this, &SessionPane::begin);
    for (ValueField *field : {m_temperature, m_sinceRun})
        connect(field, &ValueField::edited, field, &ValueField::accept);
}

void SessionPane::takeFocus()
{
    // Whoever worked last is chosen already: Enter alone begins.
    if (m_who || !m_initials)
        m_begin->setFocus(Qt::OtherFocusReason);
    else
        m_initials->edit()->setFocus(Qt::OtherFocusReason);
}

std::optional<SessionPane::Said> SessionPane::readEngine()
{
    Said said;
    said.condition = m_condition->choice() == 0 ? EngineCondition::Cold : EngineCondition::Hot;
    const auto refuse = [](ValueField *field, const Error &error) {
        field->refuse(sentence(error));
        field->edit()->setFocus(Qt::OtherFocusReason);
    };
    if (const std::string text = m_temperature->text().trimmed().toStdString(); !text.empty()) {
        auto read = parseTemperature(text, temperatureHere(), m_context.mark());
        if (!read) {
            refuse(m_temperature, read.error());
            return std::nullopt;
        }
        said.temperature = std::move(*read);
    }
    if (const std::string text = m_sinceRun->text().trimmed().toStdString(); !text.empty()) {
        const auto read = parseSinceRun(text, m_context.mark());
        if (!read) {
            refuse(m_sinceRun, read.error());
            return std::nullopt;
        }
        said.minutes = *read;
    }
    return said;
}

bool SessionPane::mayBeSo(const Said &said)
{
    const auto temperature = said.temperature ? std::optional(said.temperature->value) : std::nullopt;
    if (m_asked == said || !doubtedCondition(said.condition, temperature, said.minutes))
        return true;
    m_asked = said;
    QStringList known;
    if (said.temperature)
        known.append(temperatureText(*said.temperature));
    if (said.minutes)
        known.append(sinceRunText(*said.minutes));
    m_message->refuse(tr("%1, and yet %2? Nothing is begun yet; “Begin” once more if it is so.")
                          .arg(known.join(QStringLiteral(", ")), conditionName(said.condition)));
    m_begin->setFocus(Qt::OtherFocusReason);
    return false;
}

std::optional<PersonId> SessionPane::readWho()
{
    if (m_who && m_initials->text().trimmed().isEmpty())
        return m_book.state().frame->people.at(std::size_t(m_who->choice())).id;
    const auto added = addPerson(m_context.garage(), m_initials->text().toStdString(), {});
    if (added)
        return *added;
    m_initials->refuse(sentence(added.error()));
    m_initials->edit()->setFocus(Qt::OtherFocusReason);
    return std::nullopt;
}

void SessionPane::begin()
{
    m_message->clear();
    if (m_context.garage().readOnly()) {
        Q_EMIT finished();
        return;
    }
    const auto said = readEngine();
    if (!said || !mayBeSo(*said))
        return;
    const auto who = readWho();
    if (!who)
        return;
    const qint64 tool = m_tools ? m_tools->currentId().value_or(noTool) : noTool;
    m_book.setTool(tool == noTool ? std::nullopt : std::optional(ToolId(tool)));
    m_book.setCondition(said->condition, said->temperature, said->minutes);
    m_book.setWho(*who);
    Q_EMIT finished();
}

} // namespace asleft
