#pragma once

#include <bench/tighten_rig.h>

#include <work/job_book.h>

#include <QStringList>

#include <variant>

namespace asleft {

struct TightenNow;

/// What is about to be ticked.
struct PendingTick {
    std::vector<TickSlot> places;
    bool moved = false;
    bool whole = false; ///< of a whole pass, which is asked about
    std::optional<Typed<Torque>> reading = {};
};

/// What speaks against a tick. What was done all the same, though it was asked about, is not asked about again.
class TickDoubts {
public:
    [[nodiscard]] QStringList about(const TightenNow &now, const PendingTick &pending, const Rig &rig) const;
    /// It is done all the same.
    void agree(const TightenNow &now, const PendingTick &pending, const Rig &rig);

private:
    /// In this round of a joint the order is not kept.
    struct OutOfOrder {
        JointId joint;
        int pass = 0;
        int round = 0;
        bool operator==(const OutOfOrder &) const = default;
    };
    /// A wrench at this setting does for a joint, though it does not reach; another setting is another question.
    struct OutOfReach {
        JointId joint;
        std::optional<ToolId> wrench;
        std::optional<Torque> setting;
        bool operator==(const OutOfReach &) const = default;
    };
    using Doubt = std::variant<OutOfOrder, OutOfReach>;

    [[nodiscard]] static Doubt outOfOrder(const TightenNow &now);
    [[nodiscard]] static Doubt outOfReach(const TightenNow &now, const Rig &rig);
    [[nodiscard]] bool isAgreed(const Doubt &doubt) const;
    void agree(const Doubt &doubt);

    std::vector<Doubt> m_agreed;
};

} // namespace asleft
