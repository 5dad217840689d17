#pragma once

#include <parts/app_context.h>
#include <parts/ruled_rows.h>

#include <QWidget>

class QStackedLayout;

namespace asleft {

class CalibrationForm;
class FeelerForm;
class FittingForm;
class GaugeForm;
class MessageLine;
class PersonForm;
class RuleForm;
class RuledList;
class PageHead;
class ToolsModel;
class TorqueForm;

/// The rack, the people who work with what hangs on it, and how the shop decides: an index at the left, and at its right what there is of
/// the kind in hand, with a form for one more.
class ToolsPage : public QWidget {
    Q_OBJECT

public:
    enum class Section { FeelerSets, Gauges, TorqueWrenches, AngleGauges, Adapters, Sockets, People, Rule };

    ToolsPage(AppContext &context, ToolsModel &tools, QWidget *parent = nullptr);

    void chooseSection(Section section);
    [[nodiscard]] Section section() const { return m_section; }
    [[nodiscard]] RuledList *index() const { return m_index; }
    /// What there is of a section. \pre not Rule, which has none
    [[nodiscard]] RuledList *list(Section section) const { return m_lists.at(std::size_t(section)); }
    [[nodiscard]] FeelerForm *feelers() const { return m_feelers; }
    [[nodiscard]] GaugeForm *gauges() const { return m_gauges; }
    [[nodiscard]] TorqueForm *wrenches() const { return m_wrenches; }
    /// Of the wrench chosen in the list.
    [[nodiscard]] CalibrationForm *calibration() const { return m_calibration; }
    [[nodiscard]] FittingForm *angleGauges() const { return m_angleGauges; }
    [[nodiscard]] FittingForm *adapters() const { return m_adapters; }
    [[nodiscard]] FittingForm *sockets() const { return m_sockets; }
    [[nodiscard]] PersonForm *people() const { return m_people; }
    [[nodiscard]] RuleForm *rule() const { return m_rule; }

private:
    /// What is typed on the sheet in sight.
    void save();
    void buildLayout();
    void wireLists();
    QWidget *indexColumn();
    QWidget *sheet(Section section, RuledRows *rows, QWidget *form);
    [[nodiscard]] RuledRows *rowsOf(Section section) const;
    [[nodiscard]] QWidget *formOf(Section section) const;
    [[nodiscard]] QString noteOf(Section section) const;
    void showIndex();
    void focusForm();

    ToolsModel &m_tools;
    PageHead *m_head;
    RuledRows m_indexRows;
    RuledList *m_index;
    FeelerForm *m_feelers;
    GaugeForm *m_gauges;
    TorqueForm *m_wrenches;
    CalibrationForm *m_calibration;
    FittingForm *m_angleGauges;
    FittingForm *m_adapters;
    FittingForm *m_sockets;
    PersonForm *m_people;
    RuleForm *m_rule;
    MessageLine *m_message;
    QStackedLayout *m_stack;
    std::vector<RuledList *> m_lists;
    Section m_section = Section::FeelerSets;
};

} // namespace asleft
