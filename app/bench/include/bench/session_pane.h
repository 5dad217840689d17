#pragma once

#include <bench/pane.h>
#include <parts/app_context.h>

#include <work/job_book.h>

class QHBoxLayout;
class QVBoxLayout;

namespace asleft {

class ChoiceKeys;
class KeyButton;
class MessageLine;
class RuledList;
class ValueField;

/// Opens a session: says where the job was left, and asks who is at the bench, what is measured with, and what the engine is like: cold or
/// hot, and where somebody knows it its temperature and how long ago it ran. Asked once. Where nothing may be written it asks nothing.
class SessionPane : public Pane {
    Q_OBJECT

public:
    SessionPane(AppContext &context, JobBook &book, QWidget *parent = nullptr);

    void takeFocus() override;
    [[nodiscard]] ValueField *initials() const { return m_initials; }
    [[nodiscard]] ChoiceKeys *who() const { return m_who; }
    [[nodiscard]] RuledList *tools() const { return m_tools; }
    [[nodiscard]] ChoiceKeys *condition() const { return m_condition; }
    [[nodiscard]] ValueField *temperature() const { return m_temperature; }
    [[nodiscard]] ValueField *sinceRun() const { return m_sinceRun; }
    [[nodiscard]] MessageLine *message() const { return m_message; }
    [[nodiscard]] KeyButton *beginKey() const { return m_begin; }

private:
    /// What the engine is like, as it is said.
    struct Said {
        EngineCondition condition = EngineCondition::Cold;
        std::optional<TypedTemperature> temperature = {};
        std::optional<std::int64_t> minutes = {};
        bool operator==(const Said &) const = default;
    };

    void sayWhereItWasLeft(QVBoxLayout *column);
    void askWho(QVBoxLayout *column);
    void askTools(QVBoxLayout *column);
    void askEngine(QVBoxLayout *column);
    void begin();
    [[nodiscard]] std::optional<Said> readEngine();
    [[nodiscard]] bool mayBeSo(const Said &said);
    [[nodiscard]] std::optional<PersonId> readWho();

    AppContext &m_context;
    JobBook &m_book;
    ChoiceKeys *m_who = nullptr; ///< nullptr while nobody is known
    ValueField *m_initials = nullptr;
    RuledList *m_tools = nullptr; ///< nullptr while there is no tool
    ChoiceKeys *m_condition = nullptr;
    ValueField *m_temperature = nullptr;
    ValueField *m_sinceRun = nullptr;
    MessageLine *m_message = nullptr;
    KeyButton *m_begin = nullptr;
    std::optional<Said> m_asked; ///< what was doubted
};

} // namespace asleft
