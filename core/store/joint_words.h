#pragma once

#include "word.h"

#include <shop/joint_facts.h>

namespace asleft::store {

template <>
struct Words<PatternKind> {
    using enum PatternKind;
    static constexpr auto list = std::to_array<Word<PatternKind>>({
        {Row, "row"},
        {Rows, "rows"},
        {Circle, "circle"},
        {Rectangle, "rectangle"},
        {Cover, "cover"},
        {Free, "free"},
    });
};

template <>
struct Words<StrengthClass> {
    using enum StrengthClass;
    static constexpr auto list = std::to_array<Word<StrengthClass>>({
        {C4_6, "4.6"},
        {C4_8, "4.8"},
        {C5_6, "5.6"},
        {C5_8, "5.8"},
        {C6_8, "6.8"},
        {C8_8, "8.8"},
        {C9_8, "9.8"},
        {C10_9, "10.9"},
        {C12_9, "12.9"},
        {Sae2, "grade 2"},
        {Sae5, "grade 5"},
        {Sae8, "grade 8"},
        {A2_70, "A2-70"},
        {A4_70, "A4-70"},
    });
};

template <>
struct Words<ThreadCondition> {
    using enum ThreadCondition;
    static constexpr auto list = std::to_array<Word<ThreadCondition>>({
        {Dry, "dry"},
        {Oiled, "oiled"},
        {ThreadLock, "thread_lock"},
        {Sealant, "sealant"},
        {AntiSeize, "anti_seize"},
    });
};

template <>
struct Words<Finish> {
    using enum Finish;
    static constexpr auto list = std::to_array<Word<Finish>>({
        {Black, "black"},
        {Zinc, "zinc"},
        {Cadmium, "cadmium"},
    });
};

template <>
struct Words<FemaleMaterial> {
    using enum FemaleMaterial;
    static constexpr auto list = std::to_array<Word<FemaleMaterial>>({
        {Iron, "iron"},
        {Steel, "steel"},
        {Aluminium, "aluminium"},
        {Insert, "insert"},
    });
};

template <>
struct Words<DriveKind> {
    using enum DriveKind;
    static constexpr auto list = std::to_array<Word<DriveKind>>({
        {Unsaid, "unsaid"},
        {Socket, "socket"},
        {Spanner, "spanner"},
        {HexKey, "hex_key"},
        {SixLobe, "six_lobe"},
        {Screwdriver, "screwdriver"},
    });
};

template <>
struct Words<SingleUse> {
    using enum SingleUse;
    static constexpr auto list = std::to_array<Word<SingleUse>>({
        {No, "no"},
        {TorqueToYield, "torque_to_yield"},
        {CrushWasher, "crush_washer"},
    });
};

template <>
struct Words<SettleGround> {
    using enum SettleGround;
    static constexpr auto list = std::to_array<Word<SettleGround>>({
        {No, "no"},
        {Limiters, "limiters"},
        {ManualSaysSo, "manual_says_so"},
    });
};

template <>
struct Words<FoundHow> {
    using enum FoundHow;
    static constexpr auto list = std::to_array<Word<FoundHow>>({
        {NotNoted, "not_noted"},
        {Measured, "measured"},
        {LooseByFeel, "loose_by_feel"},
        {TightByFeel, "tight_by_feel"},
        {Missing, "missing"},
        {Broken, "broken"},
        {WrongLength, "wrong_length"},
    });
};

template <>
struct Words<TickHow> {
    using enum TickHow;
    static constexpr auto list = std::to_array<Word<TickHow>>({
        {ByHand, "by_hand"},
        {SetTool, "set_tool"},
        {ReadTool, "read_tool"},
        {ByAngle, "by_angle"},
        {ByFeel, "by_feel"},
    });
};

template <>
struct Words<Fitted> {
    using enum Fitted;
    static constexpr auto list = std::to_array<Word<Fitted>>({
        {New, "new"},
        {Reused, "reused"},
    });
};

template <>
struct Words<AcceptedWhat> {
    using enum AcceptedWhat;
    static constexpr auto list = std::to_array<Word<AcceptedWhat>>({
        {ByFeel, "by_feel"},
        {Torque, "torque"},
        {Unsettled, "unsettled"},
        {Reused, "reused"},
    });
};

} // namespace asleft::store
