#pragma once

#include <bench/joint_pane.h>

#include <words/joints.h>

namespace asleft {

/// A joint coming loose: how each fastener is found is noted, never judged.
class LoosenPane : public JointPane {
    Q_OBJECT

public:
    enum class Key { Loose, Tight, Missing, Broken, WrongLength, Out, RestOut, Done, With, Finding };

    LoosenPane(AppContext &context, JobBook &book);

    [[nodiscard]] KeyButton *key(Key which) const { return bar()->key(int(which)); }

protected:
    [[nodiscard]] TighteningOrder path() const override { return looseningOrder(joint().order); }
    [[nodiscard]] QString orderWords() const override { return looseningLine(joint()); }
    [[nodiscard]] qsizetype legsDone() const override;
    [[nodiscard]] std::optional<int> next() const override;
    [[nodiscard]] EntryView barView() const override;
    void press(int key) override;
    void enter(const QString &text) override;
    void takeReason(const QString &note) override;
    void forget() override { m_noteFor.reset(); }

private:
    [[nodiscard]] bool isFound(int fastener) const;
    [[nodiscard]] std::vector<int> rest() const;
    [[nodiscard]] bool isDone() const;
    [[nodiscard]] const Tool *wrench() const;
    [[nodiscard]] TorqueUnit unit() const;
    /// The sentence of the finding that several were loose, where it is not noted yet; empty else.
    [[nodiscard]] QString findingToNote() const;
    /// "loose by feel: 2, 5 · broken: 4".
    [[nodiscard]] QString summary() const;

    void found(FoundHow how);
    void note(LoosenEntry entry);
    void restOut();
    void noteFinding();
    void markDone();
    void nextWrench();

    std::optional<ToolId> m_wrench;       ///< what loosening torques are read with; empty: not said
    std::optional<LoosenEntry> m_noteFor; ///< waits for what is typed about it
};

} // namespace asleft
