#include <forms/calibration_form.h>

#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/read_only.h>
#include <parts/tool_words.h>
#include <parts/tools_model.h>
#include <parts/value_field.h>

#include <words/errors.h>

#include <QVBoxLayout>

namespace asleft {

namespace {

/// As it is typed: 2027-03-31.
QString typedDay(const std::optional<std::chrono::sys_days> &day)
{
    if (!day)
        return {};
    const std::chrono::year_month_day date(*day);
    return QStringLiteral("%1-%2-%3")
        .arg(int(date.year()), 4, 10, QLatin1Char('0'))
        .arg(unsigned(date.month()), 2, 10, QLatin1Char('0'))
        .arg(unsigned(date.day()), 2, 10, QLatin1Char('0'));
}

} // namespace

CalibrationForm::CalibrationForm(ToolsModel &tools, QWidget *parent)
    : QWidget(parent), m_tools(tools), m_name(Heading::wrapped({}, TextSize::BodyStrong)), m_due(new ValueField(tr("Calibration due"))),
      m_keep(new KeyButton(tr("Calibrated: keep the new date"))), m_message(new MessageLine)
{
    buildLayout();
    wire();
    keepFromWriting(tools.garage(), {m_keep});
    hide();
}

void CalibrationForm::buildLayout()
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(8, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(m_name);
    column->addWidget(m_due);
    column->addWidget(m_message);
    column->addWidget(m_keep, 0, Qt::AlignLeft);
    m_due->setPlaceholder(tr("2027-03-31"));
}

void CalibrationForm::wire()
{
    connect(m_due, &ValueField::edited, m_message, &MessageLine::clear);
    connect(m_due, &ValueField::edited, this, [this] { tell(false); });
    connect(m_due, &ValueField::left, this, [this] { tell(true); });
    connect(m_due, &ValueField::entered, this, &CalibrationForm::save);
    connect(m_keep, &KeyButton::clicked, this, &CalibrationForm::save);
    connect(&m_tools, &ToolsModel::changed, this, &CalibrationForm::follow);
}

void CalibrationForm::showWrench(const Tool &wrench)
{
    // Chosen once more, what is typed of it stays.
    if (m_wrench == wrench.id)
        return;
    m_wrench = wrench.id;
    m_stored = typedDay(wrench.torque->calibrationDue);
    m_name->setText(QString::fromStdString(wrench.name));
    m_due->setText(m_stored);
    m_message->clear();
    tell(true);
    show();
}

/// Another computer may have had it calibrated; what is being typed here stays all the same.
void CalibrationForm::follow()
{
    const Tool *wrench = m_wrench ? m_tools.tool(m_wrench->key()) : nullptr;
    if (!wrench || !wrench->torque)
        return;
    const bool untouched = m_due->text() == m_stored;
    m_stored = typedDay(wrench->torque->calibrationDue);
    if (untouched)
        m_due->setText(m_stored);
    tell(false);
}

void CalibrationForm::focusDue()
{
    m_due->edit()->setFocus(Qt::TabFocusReason);
    m_due->edit()->selectAll();
}

Result<std::optional<std::chrono::sys_days>> CalibrationForm::typed() const
{
    return readCalibrationDue(m_due->text().toStdString());
}

/// Refuses what is no date where `refuse` says so, or where it is refused already.
void CalibrationForm::tell(bool refuse)
{
    const auto due = typed();
    m_due->setNote(due ? calibrationWords(*due, todayIn(m_tools.garage())) : QString());
    if (due)
        m_due->accept();
    else if (refuse || m_due->isRefused())
        m_due->refuse(sentence(due.error()));
}

void CalibrationForm::save()
{
    if (!m_wrench)
        return;
    m_message->clear();
    tell(true);
    const auto due = typed();
    if (!due) {
        m_due->edit()->setFocus(Qt::OtherFocusReason);
        return;
    }
    if (const Done kept = m_tools.setCalibrationDue(*m_wrench, m_due->text()); !kept) {
        m_message->refuse(sentence(kept.error()));
        return;
    }
    m_stored = typedDay(*due);
    m_due->setText(m_stored);
    m_message->done(tr("%1: %2.", "a wrench, its calibration").arg(m_name->text(), calibrationWords(*due, todayIn(m_tools.garage()))));
}

} // namespace asleft
