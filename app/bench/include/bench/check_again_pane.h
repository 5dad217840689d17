#pragma once

#include <bench/pane.h>
#include <parts/app_context.h>

#include <work/job_book.h>

namespace asleft {

class ChoiceKeys;
class Heading;
class KeyButton;
class MessageLine;
class RuledList;
class ValueField;

/// Work done later may have moved what is left: what was done, at which points, and in whose words. Those points then want checking again.
class CheckAgainPane : public Pane {
    Q_OBJECT

public:
    /// Which points, seen from the one in hand.
    enum class Reach { ThisPoint, Cylinder, Bank, AllLeft };

    CheckAgainPane(AppContext &context, JobBook &book, QWidget *parent = nullptr);

    /// Begins anew, with no point in hand.
    void open() override;
    /// With this point in hand.
    void takeUp(const Subject &about) override;
    void refresh() override;
    void takeFocus() override;
    [[nodiscard]] RuledList *causes() const { return m_causes; }
    [[nodiscard]] ChoiceKeys *reach() const { return m_reach; }
    [[nodiscard]] ValueField *words() const { return m_words; }
    [[nodiscard]] KeyButton *logKey() const { return m_log; }
    [[nodiscard]] KeyButton *backKey() const { return m_back; }
    [[nodiscard]] Heading *names() const { return m_names; }
    [[nodiscard]] MessageLine *message() const { return m_message; }

private:
    void build();
    void choose(Disturbance cause);
    void showNames();
    void log();
    [[nodiscard]] bool isWithin(const SettingPoint &point, Reach reach) const;
    /// Those that are left of a reach.
    [[nodiscard]] std::vector<PointId> leftWithin(Reach reach) const;
    [[nodiscard]] Disturbance cause() const;

    JobBook &m_book;
    std::optional<PointId> m_point;
    Heading *m_title = nullptr;
    RuledList *m_causes = nullptr;
    ChoiceKeys *m_reach = nullptr;
    Heading *m_names = nullptr;
    ValueField *m_words = nullptr;
    MessageLine *m_message = nullptr;
    KeyButton *m_log = nullptr;
    KeyButton *m_back = nullptr;
    bool m_reachChosen = false; ///< by the person; else it follows the cause
};

} // namespace asleft
