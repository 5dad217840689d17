#pragma once

#include "desk.h"

#include <QWidget>

namespace asleft {

class FeelerForm;
class GaugeForm;
class MessageLine;
class PersonForm;
class RuleForm;
class SheetHead;
class ToolsModel;

/// The feeler sets and gauges on the rack, the people who work with them, and how the shop decides.
class ToolsPage : public QWidget {
    Q_OBJECT

public:
    ToolsPage(Desk &desk, ToolsModel &tools, QWidget *parent = nullptr);

    [[nodiscard]] FeelerForm *feelers() const { return m_feelers; }
    [[nodiscard]] GaugeForm *gauges() const { return m_gauges; }
    [[nodiscard]] PersonForm *people() const { return m_people; }
    [[nodiscard]] RuleForm *rule() const { return m_rule; }

private:
    QWidget *feelerColumn();
    QWidget *gaugeColumn();
    QWidget *peopleColumn();

    ToolsModel &m_tools;
    SheetHead *m_head;
    FeelerForm *m_feelers;
    GaugeForm *m_gauges;
    PersonForm *m_people;
    RuleForm *m_rule;
    MessageLine *m_message;
};

} // namespace asleft
