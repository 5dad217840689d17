#pragma once

#include <bench/joint_pane.h>
#include <bench/tick_doubts.h>
#include <bench/tighten_rig.h>
#include <bench/tighten_view.h>

#include <words/joints.h>

#include <map>

namespace asleft {

class RigPane;

/// A joint being tightened: the fastener in hand, the pass, what to set on which wrench; Enter ticks it and the next is in hand.
class TightenPane : public JointPane {
    Q_OBJECT

public:
    using Key = TightenKey;

    TightenPane(AppContext &context, JobBook &book);

    void takeFocus() override;

    [[nodiscard]] KeyButton *key(Key which) const { return bar()->key(int(which)); }
    [[nodiscard]] RigPane *rigPane() const { return m_rigPane; }

protected:
    [[nodiscard]] TighteningOrder path() const override { return joint().order; }
    [[nodiscard]] QString orderWords() const override { return orderLine(joint()); }
    [[nodiscard]] qsizetype legsDone() const override;
    [[nodiscard]] std::optional<int> next() const override;
    [[nodiscard]] EntryView barView() const override;
    void press(int key) override;
    void enter(const QString &text) override;
    void takeReason(const QString &reason) override;
    void forget() override { m_reasonFor.reset(); }

private:
    /// What the reason that is being typed is for.
    struct ReasonFor {
        enum class What { Feel, AcceptFeel, AcceptAsked };
        What what = What::Feel;
        std::vector<TickSlot> places = {}; ///< of Feel
        bool moved = false;
        int revision = 1; ///< of the joint when it was asked
    };

    [[nodiscard]] TightenNow now() const;
    [[nodiscard]] Rig rig() const;
    [[nodiscard]] RigChoice choice() const;
    void enterMoved();
    void enterReading(const QString &text, bool moved);
    void acceptAsked(const std::string &why);
    void tickInHand(bool moved, const std::optional<Typed<Torque>> &reading = {});
    void tickRest();
    void tick(const PendingTick &pending);
    [[nodiscard]] TickEntry entryOf(const PendingTick &pending, const Rig &with) const;
    void sayNew();
    void byFeel();
    void tickByFeel(const PendingTick &pending);
    [[nodiscard]] static TickEntry feelEntry(JointId joint, const ReasonFor &what, const std::string &reason);
    void moveOn();
    void tightenAgain();
    void beginAnew();
    void askReason(const ReasonFor &what);
    void askRig();
    void leaveRig();

    std::map<JointId, RigChoice> m_choices;
    std::map<JointId, std::string> m_feelReasons; ///< given once for a joint
    TickDoubts m_doubts;
    std::optional<ReasonFor> m_reasonFor;
    RigPane *m_rigPane;
};

} // namespace asleft
