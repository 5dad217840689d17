#include <forms/rule_form.h>

#include <parts/choice_keys.h>
#include <parts/heading.h>
#include <parts/message_line.h>
#include <parts/read_only.h>
#include <parts/tools_model.h>

#include <words/errors.h>

#include <QVBoxLayout>

namespace asleft {

namespace {

QString meaningOf(DecisionRule rule)
{
    switch (rule) {
    case DecisionRule::Simple: return RuleForm::tr("The value as read decides; a reading on a limit is inside.");
    case DecisionRule::WithUncertainty:
        return RuleForm::tr("A reading is inside or outside only where the tool's uncertainty cannot change that; else it is too close to "
                            "call.");
    }
    return {};
}

} // namespace

RuleForm::RuleForm(ToolsModel &tools, QWidget *parent)
    : QWidget(parent), m_tools(tools), m_rule(new ChoiceKeys(tr("A reading is judged"), {tr("as read"), tr("with uncertainty")})),
      m_meaning(new MessageLine), m_message(new MessageLine)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(8, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(new Heading(tr("How the shop decides"), TextSize::BodyStrong));
    column->addWidget(m_rule);
    column->addWidget(m_meaning);
    column->addWidget(m_message);
    keepFromWriting(tools.garage(), *m_rule);
    connect(m_rule, &ChoiceKeys::chosen, this, &RuleForm::choose);
    connect(&tools, &ToolsModel::changed, this, &RuleForm::show);
    show();
}

void RuleForm::choose(int choice)
{
    m_message->clear();
    if (const Done done = m_tools.setRule(DecisionRule(choice)); !done) {
        show();
        m_message->refuse(sentence(done.error()));
        return;
    }
    m_message->done(tr("Readings from now on are judged so; earlier verdicts stay as they are."));
}

void RuleForm::show()
{
    m_rule->setChoice(int(m_tools.rule()));
    m_meaning->quiet(meaningOf(m_tools.rule()));
}

} // namespace asleft
