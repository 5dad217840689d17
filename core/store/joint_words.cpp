#include "words.h"

namespace asleft::store {

template <>
std::span<const Word<PatternKind>> wordsFor()
{
    using enum PatternKind;
    static constexpr auto words = std::to_array<Word<PatternKind>>({
        {Row, "row"},
        {Rows, "rows"},
        {Circle, "circle"},
        {Rectangle, "rectangle"},
        {Cover, "cover"},
        {Free, "free"},
    });
    return words;
}

template <>
std::span<const Word<StrengthClass>> wordsFor()
{
    using enum StrengthClass;
    static constexpr auto words = std::to_array<Word<StrengthClass>>({
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
    return words;
}

template <>
std::span<const Word<ThreadCondition>> wordsFor()
{
    using enum ThreadCondition;
    static constexpr auto words = std::to_array<Word<ThreadCondition>>({
        {Dry, "dry"},
        {Oiled, "oiled"},
        {ThreadLock, "thread_lock"},
        {Sealant, "sealant"},
        {AntiSeize, "anti_seize"},
    });
    return words;
}

template <>
std::span<const Word<Finish>> wordsFor()
{
    using enum Finish;
    static constexpr auto words = std::to_array<Word<Finish>>({
        {Black, "black"},
        {Zinc, "zinc"},
        {Cadmium, "cadmium"},
    });
    return words;
}

template <>
std::span<const Word<FemaleMaterial>> wordsFor()
{
    using enum FemaleMaterial;
    static constexpr auto words = std::to_array<Word<FemaleMaterial>>({
        {Iron, "iron"},
        {Steel, "steel"},
        {Aluminium, "aluminium"},
        {Insert, "insert"},
    });
    return words;
}

template <>
std::span<const Word<DriveKind>> wordsFor()
{
    using enum DriveKind;
    static constexpr auto words = std::to_array<Word<DriveKind>>({
        {Unsaid, "unsaid"},
        {Socket, "socket"},
        {Spanner, "spanner"},
        {HexKey, "hex_key"},
        {SixLobe, "six_lobe"},
        {Screwdriver, "screwdriver"},
    });
    return words;
}

template <>
std::span<const Word<SingleUse>> wordsFor()
{
    using enum SingleUse;
    static constexpr auto words = std::to_array<Word<SingleUse>>({
        {No, "no"},
        {TorqueToYield, "torque_to_yield"},
        {CrushWasher, "crush_washer"},
    });
    return words;
}

template <>
std::span<const Word<SettleGround>> wordsFor()
{
    using enum SettleGround;
    static constexpr auto words = std::to_array<Word<SettleGround>>({
        {No, "no"},
        {Limiters, "limiters"},
        {ManualSaysSo, "manual_says_so"},
    });
    return words;
}

template <>
std::span<const Word<FoundHow>> wordsFor()
{
    using enum FoundHow;
    static constexpr auto words = std::to_array<Word<FoundHow>>({
        {NotNoted, "not_noted"},
        {Measured, "measured"},
        {LooseByFeel, "loose_by_feel"},
        {TightByFeel, "tight_by_feel"},
        {Missing, "missing"},
        {Broken, "broken"},
        {WrongLength, "wrong_length"},
    });
    return words;
}

template <>
std::span<const Word<TickHow>> wordsFor()
{
    using enum TickHow;
    static constexpr auto words = std::to_array<Word<TickHow>>({
        {ByHand, "by_hand"},
        {SetTool, "set_tool"},
        {ReadTool, "read_tool"},
        {ByAngle, "by_angle"},
        {ByFeel, "by_feel"},
    });
    return words;
}

template <>
std::span<const Word<Fitted>> wordsFor()
{
    using enum Fitted;
    static constexpr auto words = std::to_array<Word<Fitted>>({
        {New, "new"},
        {Reused, "reused"},
    });
    return words;
}

template <>
std::span<const Word<AcceptedWhat>> wordsFor()
{
    using enum AcceptedWhat;
    static constexpr auto words = std::to_array<Word<AcceptedWhat>>({
        {ByFeel, "by_feel"},
        {Torque, "torque"},
        {Unsettled, "unsettled"},
        {Reused, "reused"},
    });
    return words;
}

} // namespace asleft::store
