#pragma once

#include <shop/tool_entry.h>

#include <QWidget>

#include <optional>

namespace asleft {

class Heading;
class KeyButton;
class MessageLine;
class ToolsModel;
class ValueField;

/// A torque wrench that hangs on the rack came back from calibration: when it is due next. Out of sight until one is chosen.
class CalibrationForm : public QWidget {
    Q_OBJECT

public:
    explicit CalibrationForm(ToolsModel &tools, QWidget *parent = nullptr);

    /// \pre it is a torque wrench
    void showWrench(const Tool &wrench);
    [[nodiscard]] std::optional<ToolId> wrench() const { return m_wrench; }
    [[nodiscard]] ValueField *due() const { return m_due; }
    [[nodiscard]] KeyButton *keepKey() const { return m_keep; }
    [[nodiscard]] MessageLine *message() const { return m_message; }
    void focusDue();
    void save();

private:
    void buildLayout();
    void wire();
    void follow();
    void tell(bool refuse);
    [[nodiscard]] Result<std::optional<std::chrono::sys_days>> typed() const;

    ToolsModel &m_tools;
    std::optional<ToolId> m_wrench;
    QString m_stored; ///< what the field was filled with
    Heading *m_name;
    ValueField *m_due;
    KeyButton *m_keep;
    MessageLine *m_message;
};

} // namespace asleft
