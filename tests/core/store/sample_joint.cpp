#include "sample.h"

#include <cassert>

namespace asleft {

Typed<Torque> newtonMetres(int count)
{
    return {Torque::ofSmallest(count * std::int64_t{1'000'000'000}), TorqueUnit::NewtonMetre, std::to_string(count)};
}

Tool newWrench(const std::string &name, int least, int most)
{
    Tool tool{ToolId(0), name, "", {}, ToolKind::TorqueSet};
    tool.torque = TorqueTool{false, newtonMetres(least), newtonMetres(most)};
    return tool;
}

SampleJoint storeSampleJoint(Transaction &transaction, EngineId engine)
{
    JointText text;
    text.name = "Rocker cover";
    text.pattern = rowPattern(8).value();
    text.target = "32 ± 4";
    text.passes = "finger, 50 %, target, settle 3";
    text.settle = SettleGround::Limiters;
    Joint joint = readJoint(text).value();
    joint.engine = engine;
    joint.id = insertJoint(transaction, joint).value();
    (void)insertJointRevision(transaction, joint).value();
    Tool adapter{ToolId(0), "Crow-foot", "", {}, ToolKind::Adapter};
    adapter.length = Typed<Length>{micrometres(40'000), LengthUnit::Millimetre, "40"};
    const ToolId wrench = insertTool(transaction, newWrench("Wrench", 20, 200)).value();
    const Done due = insertCalibration(transaction, wrench, std::chrono::sys_days(std::chrono::year(2027) / 3 / 31), {1'700'000'000'000});
    assert(due);
    (void)due;
    return {joint.id, wrench, insertTool(transaction, adapter).value()};
}

namespace {

std::vector<Fact> everyWayFound(const SampleJoint &sample)
{
    LoosenedFact measured{sample.joint, 2, {4}, FoundHow::Measured};
    measured.torque = Typed<Torque>{Torque::ofSmallest(24'516'625'000), TorqueUnit::KilogramForceMetre, "2,5"};
    measured.tool = sample.wrench;
    measured.note = "rusty";
    return {LoosenedFact{sample.joint, 1, {3, 1, 2}},
            measured,
            LoosenedFact{sample.joint, 1, {5}, FoundHow::LooseByFeel},
            LoosenedFact{sample.joint, 1, {6}, FoundHow::TightByFeel},
            LoosenedFact{sample.joint, 1, {7}, FoundHow::Missing},
            LoosenedFact{sample.joint, 1, {8}, FoundHow::Broken, {}, {}, "head gone"},
            LoosenedFact{sample.joint, 1, {1}, FoundHow::WrongLength}};
}

std::vector<Fact> everyWayTicked(const SampleJoint &sample)
{
    TicksFact set{sample.joint, 1, {{{4, 2, 1}}}};
    set.tool = sample.wrench;
    set.setting = newtonMetres(29);
    set.fit = FitUsed{sample.adapter, {micrometres(40'000), degrees(45)}};
    set.lever = micrometres(400'000);
    set.outOfRange = true;
    TicksFact read{sample.joint, 2, {{{5, 2, 1}}}, TickHow::ReadTool};
    read.tool = sample.wrench;
    read.reading = Typed<Torque>{Torque::ofSmallest(32'539'770'000), TorqueUnit::PoundFoot, "24"};
    read.fit = FitUsed{{}, {Length{}, degrees(180)}};
    read.uncertainty = Torque::ofSmallest(1);
    read.calibrationOverdue = true;
    TicksFact turned{sample.joint, 2, {{{5, 4, 1}}}, TickHow::ByAngle};
    turned.tool = sample.adapter;
    TicksFact byFeel{sample.joint, 2, {{{1, 3, 3}, true}, {{2, 3, 3}, false}}, TickHow::ByFeel};
    byFeel.reason = "no wrench reaches it";
    return {TicksFact{sample.joint, 1, {{{2, 0, 1}}, {{1, 0, 1}}}, TickHow::ByHand}, set, read, turned, byFeel};
}

} // namespace

std::vector<Fact> everyKindOfJointFact(const SampleJoint &sample)
{
    std::vector<Fact> facts = everyWayFound(sample);
    for (Fact &ticks : everyWayTicked(sample))
        facts.push_back(std::move(ticks));
    for (const Fact &fact : std::initializer_list<Fact>{
             UntickedFact{sample.joint, {{2, 0, 1}, {1, 3, 2}, {1, 3, 1}}},
             JointBegunFact{sample.joint, 2},
             JointBegunFact{sample.joint, 1},
             FittedFact{sample.joint, {2, 1}},
             FittedFact{sample.joint, {3}, Fitted::Reused},
             AcceptedFact{sample.joint, AcceptedWhat::ByFeel, {2, 1}, "soft plastic"},
             AcceptedFact{sample.joint, AcceptedWhat::Torque, {4}, "thread pulled"},
             AcceptedFact{sample.joint, AcceptedWhat::Unsettled, {}, "gasket creeps"},
             AcceptedFact{sample.joint, AcceptedWhat::Reused, {3}, "none to be had"},
             FindingFact{FastenerSubject{sample.joint, {}}, "oil under the cover"},
             FindingFact{FastenerSubject{sample.joint, {5, 2}}, "both were loose"},
         })
        facts.push_back(fact);
    return facts;
}

} // namespace asleft
