#pragma once

#include "desk.h"

#include <QWidget>

namespace asleft {

class FeelerForm;
class MessageLine;
class PersonForm;
class SheetHead;
class ToolsModel;

/// The feeler sets on the rack, and the people who work with them.
class ToolsPage : public QWidget {
    Q_OBJECT

public:
    ToolsPage(Desk &desk, ToolsModel &tools, QWidget *parent = nullptr);

    [[nodiscard]] FeelerForm *feelers() const { return m_feelers; }
    [[nodiscard]] PersonForm *people() const { return m_people; }

private:
    QWidget *rackColumn();
    QWidget *peopleColumn();

    ToolsModel &m_tools;
    SheetHead *m_head;
    FeelerForm *m_feelers;
    PersonForm *m_people;
    MessageLine *m_message;
};

} // namespace asleft
