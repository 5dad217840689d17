#include <bench/rig_pane.h>

#include <parts/choice_keys.h>
#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/ruled_list.h>
#include <parts/scroll_pane.h>
#include <parts/value_field.h>

#include <words/errors.h>
#include <words/numbers.h>
#include <words/tools.h>
#include <words/torque_tools.h>

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QVBoxLayout>

namespace asleft {

namespace {

// No row of a tool has these ids.
constexpr qint64 bestTool = 0;
constexpr qint64 noAdapter = 0;
constexpr qint64 typedLength = -1;
constexpr qint64 byMarkRow = -1;
constexpr int fieldWidth = 220;

} // namespace

RigPane::RigPane(DecimalMark mark, QWidget *parent)
    : QWidget(parent), m_mark(mark), m_toolRows(new RuledRows(this)), m_tools(new RuledList(tr("Tightened with"), m_toolRows)),
      m_adapterPart(new QWidget), m_adapterRows(new RuledRows(this)), m_adapters(new RuledList(tr("Adapter on the wrench"), m_adapterRows)),
      m_length(new ValueField(tr("From the middle of the drive to that of the fastener"))),
      m_way(new ChoiceKeys(tr("How it sits on the wrench"), {tr("straight out"), tr("across 90°"), tr("back 180°"), tr("another")})),
      m_angle(new ValueField(tr("Angle to the wrench, degrees"))), m_head(Heading::wrapped({}, TextSize::Now)),
      m_result(Heading::wrapped({}, TextSize::Now)), m_judgement(Heading::wrapped({}, TextSize::Small)), m_use(new KeyButton(tr("Use it"))),
      m_notNow(new KeyButton(tr("not now")))
{
    build();
    wire();
}

void RigPane::build()
{
    auto *outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    auto *form = new QWidget;
    auto *column = new QVBoxLayout(form);
    column->setContentsMargins(0, 0, 8, 0);
    column->setSpacing(8);
    column->addWidget(m_head);
    for (RuledList *list : {m_tools, m_adapters}) {
        list->setWholeNotes(true);
        list->setWhole(true);
    }
    column->addWidget(m_tools);
    auto *adapter = new QVBoxLayout(m_adapterPart);
    adapter->setContentsMargins(0, 0, 0, 0);
    adapter->setSpacing(6);
    adapter->addWidget(new Heading(tr("Adapter on the wrench"), TextSize::Small, Heading::Tone::Quiet));
    adapter->addWidget(m_adapters);
    adapter->addWidget(m_length);
    m_angle->setMaximumWidth(fieldWidth);
    adapter->addWidget(m_way);
    adapter->addWidget(m_angle);
    column->addWidget(m_adapterPart);
    column->addStretch(1);
    outer->addWidget(new ScrollPane(form), 1);
    outer->addWidget(m_result);
    outer->addWidget(m_judgement);
    auto *keys = new QHBoxLayout;
    keys->setSpacing(8);
    m_use->setStrong(true);
    m_notNow->setPlain(true);
    keys->addWidget(m_use);
    keys->addWidget(m_notNow);
    keys->addStretch(1);
    outer->addLayout(keys);
}

void RigPane::wire()
{
    for (RuledList *list : {m_tools, m_adapters}) {
        connect(list, &RuledList::chosen, this, [this, list](qint64 id) {
            list->setCurrentId(id);
            showParts();
            showResult();
        });
        connect(list, &RuledList::opened, this, &RigPane::use);
    }
    connect(m_way, &ChoiceKeys::chosen, this, [this] {
        showParts();
        showResult();
    });
    for (ValueField *field : {m_length, m_angle}) {
        connect(field, &ValueField::edited, this, [this, field] {
            field->accept();
            showResult();
        });
        connect(field, &ValueField::entered, this, &RigPane::use);
    }
    connect(m_use, &KeyButton::clicked, this, &RigPane::use);
    connect(m_notNow, &KeyButton::clicked, this, &RigPane::left);
}

bool RigPane::isAngle() const
{
    return std::holds_alternative<AngleOn>(m_joint.passes.at(m_pass));
}

LengthUnit RigPane::lengthUnit() const
{
    return systemOf(m_joint.text.unit) == UnitSystem::Metric ? LengthUnit::Millimetre : LengthUnit::Inch;
}

void RigPane::ask(std::shared_ptr<const JobFrame> frame, const Joint &joint, std::size_t pass, const RigChoice &choice,
                  std::chrono::sys_days today)
{
    m_frame = std::move(frame);
    m_joint = joint;
    m_pass = pass;
    m_today = today;
    m_head->setText(isAngle() ? tr("Turned on with") : tr("Tightened with"));
    fillFit(choice);
    fillAdapters(choice);
    fillTools(choice);
    showParts();
    showResult();
}

void RigPane::fillTools(const RigChoice &choice)
{
    QList<RuledRow> rows;
    if (isAngle()) {
        for (const Tool &tool : m_frame->tools)
            if (tool.kind == ToolKind::AngleGauge)
                rows.append({.id = tool.id.key(), .title = toolLabel(tool), .note = {}, .right = toolKindName(tool.kind)});
        rows.append({.id = byMarkRow, .title = tr("by a mark"), .note = tr("a stroke of paint on the fastener"), .right = {}});
        const Rig rig = rigOf(*m_frame, m_joint, m_pass, choice, m_today);
        m_toolRows->setRows(rows);
        m_tools->setCurrentId(rig.tool ? rig.tool->id.key() : byMarkRow);
        return;
    }
    const Rig rig = rigOf(*m_frame, m_joint, m_pass, {.wrench = {}, .fit = choice.fit}, m_today);
    const QString best = rig.tool ? toolLabel(*rig.tool) : tr("none reaches");
    rows.append({.id = bestTool, .title = tr("the best there is for each pass"), .note = best, .right = {}});
    for (const auto *some : {&rig.advice.reaching, &rig.advice.misses})
        for (const ToolReach &reach : *some) {
            const Tool &tool = *rig.rack.wrenches.at(reach.tool);
            rows.append({.id = tool.id.key(),
                         .title = toolLabel(tool),
                         .note = reachSentence(reach, tool),
                         .right = tool.kind == ToolKind::TorqueRead ? tr("read") : tr("set"),
                         .quiet = !reach.reaches});
        }
    m_toolRows->setRows(rows);
    m_tools->setCurrentId(choice.wrench ? choice.wrench->key() : bestTool);
}

void RigPane::fillAdapters(const RigChoice &choice)
{
    QList<RuledRow> rows;
    rows.append({.id = noAdapter, .title = tr("none, or a straight extension"), .note = {}, .right = {}});
    for (const Tool &tool : m_frame->tools)
        if (tool.kind == ToolKind::Adapter && tool.length)
            rows.append({.id = tool.id.key(), .title = toolLabel(tool), .note = {}, .right = typedText(*tool.length)});
    rows.append({.id = typedLength, .title = tr("another, by its length"), .note = {}, .right = {}});
    m_adapterRows->setRows(rows);
    m_adapters->setCurrentId(!choice.fit ? noAdapter : choice.fit->adapter ? choice.fit->adapter->key() : typedLength);
}

void RigPane::fillFit(const RigChoice &choice)
{
    const bool hasOwn = choice.fit && !choice.fit->adapter;
    m_length->setText(hasOwn ? shortLengthText(choice.fit->fit.length, lengthUnit()) : QString());
    m_length->accept();
    m_length->setNote(unitText(lengthUnit()));
    const Angle angle = choice.fit ? choice.fit->fit.angle : Angle();
    const Way way = angle == Angle()        ? Way::StraightOut
                    : angle == degrees(90)  ? Way::Across
                    : angle == degrees(180) ? Way::Back
                                            : Way::Other;
    m_way->setChoice(int(way));
    m_angle->setText(way == Way::Other ? turnedText(angle, AngleUnit::Degree) : QString());
    m_angle->accept();
}

void RigPane::showParts()
{
    const qint64 adapter = m_adapters->currentId().value_or(noAdapter);
    m_adapterPart->setVisible(!isAngle());
    m_length->setVisible(adapter == typedLength);
    m_way->setVisible(adapter != noAdapter);
    m_angle->setVisible(adapter != noAdapter && Way(m_way->choice()) == Way::Other);
}

Result<Angle> RigPane::typedAngle(bool says)
{
    switch (Way(m_way->choice())) {
    case Way::StraightOut: return Angle();
    case Way::Across: return degrees(90);
    case Way::Back: return degrees(180);
    case Way::Other: break;
    }
    const auto angle = parse<Angle>(m_angle->text().toStdString(), AngleUnit::Degree, m_mark);
    if (!angle && says)
        m_angle->refuse(sentence(angle.error()));
    if (!angle)
        return tl::unexpected(angle.error());
    return angle->value;
}

Result<std::optional<FitUsed>> RigPane::fit(bool says)
{
    const qint64 id = m_adapters->currentId().value_or(noAdapter);
    if (id == noAdapter || isAngle())
        return std::optional<FitUsed>{};
    FitUsed used;
    if (id == typedLength) {
        const auto length = parse<Length>(m_length->text().toStdString(), lengthUnit(), m_mark);
        if (!length && says)
            m_length->refuse(sentence(length.error()));
        if (!length)
            return tl::unexpected(length.error());
        used.fit.length = length->value;
    } else {
        used.adapter = ToolId(id);
        const Tool *adapter = m_frame->tool(*used.adapter);
        used.fit.length = adapter && adapter->length ? adapter->length->value : Length();
    }
    const auto angle = typedAngle(says);
    if (!angle)
        return tl::unexpected(angle.error());
    used.fit.angle = *angle;
    return std::optional(used);
}

Result<RigChoice> RigPane::read(bool says)
{
    RigChoice choice;
    const qint64 tool = m_tools->currentId().value_or(bestTool);
    if (isAngle()) {
        choice.byMark = tool == byMarkRow;
        if (!choice.byMark)
            choice.gauge = ToolId(tool);
        return choice;
    }
    const auto used = fit(says);
    if (!used)
        return tl::unexpected(used.error());
    choice.fit = *used;
    if (tool != bestTool)
        choice.wrench = ToolId(tool);
    return choice;
}

void RigPane::showResult()
{
    const auto choice = read(false);
    if (!choice) {
        m_result->setText({});
        m_judgement->setText({});
        return;
    }
    const Rig rig = rigOf(*m_frame, m_joint, m_pass, *choice, m_today);
    m_result->setText(rigLarge(rig, m_joint, m_pass));
    m_judgement->setText(rigSmall(rig, m_joint, m_pass));
}

void RigPane::use()
{
    const auto choice = read(true);
    if (choice) {
        Q_EMIT chosen(*choice);
        return;
    }
    (m_length->isRefused() ? m_length : m_angle)->edit()->setFocus(Qt::OtherFocusReason);
}

void RigPane::takeFocus()
{
    m_tools->setFocus(Qt::OtherFocusReason);
}

void RigPane::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT left();
    else
        QWidget::keyPressEvent(event);
}

} // namespace asleft
