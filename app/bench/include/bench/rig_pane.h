#pragma once

#include <bench/tighten_rig.h>

#include <QWidget>

#include <memory>

namespace asleft {

class ChoiceKeys;
class Heading;
class KeyButton;
class RuledList;
class RuledRows;
class ValueField;

/// What a joint is tightened with: the wrenches of the rack, each with how it stands to the torque asked for, and the adapter on it.
class RigPane : public QWidget {
    Q_OBJECT

public:
    enum class Way { StraightOut, Across, Back, Other };

    explicit RigPane(DecimalMark mark, QWidget *parent = nullptr);

    void ask(std::shared_ptr<const JobFrame> frame, const Joint &joint, std::size_t pass, const RigChoice &choice,
             std::chrono::sys_days today);
    void takeFocus();

    [[nodiscard]] RuledList *tools() const { return m_tools; }
    [[nodiscard]] RuledList *adapters() const { return m_adapters; }
    [[nodiscard]] ValueField *length() const { return m_length; }
    [[nodiscard]] ChoiceKeys *way() const { return m_way; }
    [[nodiscard]] ValueField *angle() const { return m_angle; }
    [[nodiscard]] Heading *result() const { return m_result; }
    /// What is worth knowing of the result.
    [[nodiscard]] Heading *judgement() const { return m_judgement; }
    [[nodiscard]] KeyButton *useKey() const { return m_use; }
    [[nodiscard]] KeyButton *notNowKey() const { return m_notNow; }

Q_SIGNALS:
    void chosen(const asleft::RigChoice &choice);
    void left();

protected:
    void keyPressEvent(QKeyEvent *event) override;

private:
    void build();
    void wire();
    void fillTools(const RigChoice &choice);
    void fillAdapters(const RigChoice &choice);
    void fillFit(const RigChoice &choice);
    void showParts();
    void showResult();
    void use();
    [[nodiscard]] bool isAngle() const;
    [[nodiscard]] LengthUnit lengthUnit() const;
    /// The fit as it stands here; refuses what cannot be read, in its field where `says`.
    [[nodiscard]] Result<std::optional<FitUsed>> fit(bool says);
    [[nodiscard]] Result<Angle> typedAngle(bool says);
    [[nodiscard]] Result<RigChoice> read(bool says);

    DecimalMark m_mark;
    std::shared_ptr<const JobFrame> m_frame; ///< as it was asked about
    Joint m_joint{JointId(0), 1, EngineId(0), {}};
    std::size_t m_pass = 0;
    std::chrono::sys_days m_today;
    RuledRows *m_toolRows;
    RuledList *m_tools;
    QWidget *m_adapterPart;
    RuledRows *m_adapterRows;
    RuledList *m_adapters;
    ValueField *m_length;
    ChoiceKeys *m_way;
    ValueField *m_angle;
    Heading *m_head;
    Heading *m_result;
    Heading *m_judgement;
    KeyButton *m_use;
    KeyButton *m_notNow;
};

} // namespace asleft
