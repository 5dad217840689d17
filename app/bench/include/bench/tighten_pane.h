#pragma once

#include <bench/joint_pane.h>
#include <bench/tighten_rig.h>

#include <words/joints.h>

#include <QSet>

#include <map>

namespace asleft {

class RigPane;

/// A joint being tightened: the fastener in hand, the pass, what to set on which wrench; Enter ticks it and the next is in hand.
class TightenPane : public JointPane {
    Q_OBJECT

public:
    enum class Key {
        Done,
        Moved,
        ByFeel,
        WholePass,
        TakeBack,
        Wrench,
        Accept,
        AllNew,
        AllReused,
        ThisReused,
        AcceptAsked,
        Again,
        BeginAnew
    };

    TightenPane(AppContext &context, JobBook &book);

    void takeFocus() override;

    [[nodiscard]] KeyButton *key(Key which) const { return bar()->key(int(which)); }
    [[nodiscard]] RigPane *rigPane() const { return m_rigPane; }

protected:
    [[nodiscard]] TighteningOrder path() const override { return joint().order; }
    [[nodiscard]] QString orderWords() const override { return orderLine(joint()); }
    [[nodiscard]] qsizetype legsDone() const override;
    [[nodiscard]] std::optional<int> next() const override;
    [[nodiscard]] JointBarView barView() const override;
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
    /// What is about to be ticked.
    struct PendingTick {
        std::vector<TickSlot> places;
        bool moved = false;
        bool whole = false; ///< of a whole pass, which is asked about
        std::optional<Typed<Torque>> reading = {};
    };

    [[nodiscard]] const TighteningProgress &progress() const { return worked().progress; }
    [[nodiscard]] std::size_t pass() const { return std::size_t(progress().pass); }
    [[nodiscard]] JointWants wants() const { return jointWants(joint(), worked()); }
    [[nodiscard]] bool settles() const;
    /// Than the one that is worked by; nullptr where there is none.
    [[nodiscard]] const Joint *newerRevision() const;
    [[nodiscard]] QString beginAnewWords() const;
    [[nodiscard]] Rig rig() const;
    [[nodiscard]] RigChoice choice() const;
    /// The fastener in hand in the pass in hand, where it is still to be ticked.
    [[nodiscard]] std::optional<TickSlot> placeInHand() const;
    [[nodiscard]] std::vector<TickSlot> rest() const;
    [[nodiscard]] const FastenerState *fastenerInHand() const;

    void showWork(JointBarView &view) const;
    void showAsked(JointBarView &view) const;
    [[nodiscard]] QString nowWords() const;
    [[nodiscard]] QString judgementOf(const QString &text, const Rig &rig) const;

    void enterMoved();
    void enterReading(const QString &text, bool moved);
    void acceptAsked(const std::string &why);
    [[nodiscard]] QString aboutOf(const PendingTick &pending) const;
    void tickInHand(bool moved, const std::optional<Typed<Torque>> &reading = {});
    void tickRest();
    void tick(const PendingTick &pending);
    [[nodiscard]] TickEntry entryOf(const PendingTick &pending, const Rig &with) const;
    void sayNew();
    void byFeel();
    void tickByFeel(const PendingTick &pending);
    [[nodiscard]] static TickEntry feelEntry(JointId joint, const ReasonFor &what, const std::string &reason);
    [[nodiscard]] QStringList doubts(const PendingTick &pending, const Rig &rig) const;
    [[nodiscard]] QString settingDoubt(const Rig &rig) const;
    void agree(const PendingTick &pending, const Rig &rig);
    [[nodiscard]] QString roundKey() const;
    void moveOn();
    void tightenAgain();
    void beginAnew();
    void askReason(const ReasonFor &what);
    void askRig();
    void leaveRig();

    std::map<JointId, RigChoice> m_choices;
    std::map<JointId, std::string> m_feelReasons; ///< given once for a joint
    QSet<QString> m_agreed;                       ///< what was asked once and done all the same
    std::optional<ReasonFor> m_reasonFor;
    RigPane *m_rigPane;
};

} // namespace asleft
