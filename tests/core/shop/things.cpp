// What a tool is worth, what a meter has counted, and which spec a point is set to.
#include "story.h"

#include <shop/entry.h>

#include <measure/instrument.h>

namespace asleft {
namespace things_tests {

Tool feelers(std::string_view leaves)
{
    return {ToolId(1), "set", std::string(leaves), parseLeaves(leaves, LengthUnit::Millimetre).value()};
}

Tool gauge(ToolKind kind, std::string_view error, std::string_view resolution)
{
    Tool tool{ToolId(2), "gauge", "", {}, kind};
    if (!error.empty())
        tool.permissibleError = length(error);
    if (!resolution.empty())
        tool.resolution = length(resolution);
    return tool;
}

struct StepCase {
    const char *leaves;
    const char *value;
    const char *step; ///< empty: not known
};

class UncertaintyOfALeaf : public testing::TestWithParam<StepCase> {};

TEST_P(UncertaintyOfALeaf, IsOneStepOfTheSetThere)
{
    const auto &[leaves, value, step] = GetParam();
    const auto uncertainty = uncertaintyOf(feelers(leaves), length(value).value);
    if (step[0] == '\0') {
        EXPECT_FALSE(uncertainty);
    } else {
        EXPECT_EQ(uncertainty, feelerUncertainty(length(step).value));
    }
}

INSTANTIATE_TEST_SUITE_P(All, UncertaintyOfALeaf,
                         testing::Values(StepCase{"0.20 0.25 0.30 mm", "0.25 mm", "0.05 mm"},
                                         StepCase{"0.20 0.25 0.35 mm", "0.25 mm", "0.10 mm"}, // the larger of both sides
                                         StepCase{"0.20 0.30 0.35 mm", "0.30 mm", "0.10 mm"}, // and on the other one
                                         StepCase{"0.20 0.25 0.35 mm", "0.20 mm", "0.05 mm"}, // at the ends there is one side
                                         StepCase{"0.20 0.25 0.35 mm", "0.35 mm", "0.10 mm"},
                                         StepCase{"0.20 0.25 0.30 mm", "0.27 mm", "0.05 mm"}, // between leaves: the nearest
                                         StepCase{"0.10 0.20 0.50 mm", "0.15 mm", "0.30 mm"}, // two as near: the larger step
                                         StepCase{"0.20 0.25 0.30 mm", "0.35 mm", "0.05 mm"}, // one step past the last
                                         StepCase{"0.20 0.25 0.30 mm", "0.351 mm", ""},       // further
                                         StepCase{"0.20 0.25 0.30 mm", "0.149 mm", ""},
                                         StepCase{".010 .012 .015 in", "0.012 in", "0.003 in"},
                                         StepCase{"0.25 mm", "0.25 mm", ""})); // one leaf has no step

TEST(UncertaintyOfAGauge, ByItsErrorAndItsResolution)
{
    for (const ToolKind kind : {ToolKind::DialGauge, ToolKind::Micrometer}) {
        EXPECT_EQ(uncertaintyOf(gauge(kind, "0.008 mm", "0.01 mm"), length("0.3 mm").value),
                  gaugeUncertainty(micrometres(8), micrometres(10)));
        EXPECT_FALSE(uncertaintyOf(gauge(kind, "", "0.01 mm"), length("0.3 mm").value)) << "nobody said how far it may be off";
        EXPECT_FALSE(uncertaintyOf(gauge(kind, "0.008 mm", ""), length("0.3 mm").value));
    }
}

MeterReading shows(std::int64_t thousandths, MeterUnit unit = MeterUnit::Kilometre, bool replaced = false)
{
    return {MeterReadingId(1), VehicleId(1), unit, thousandths, "", {}, replaced};
}

TEST(MeterTotal, OfOneMeterIsWhatItShows)
{
    EXPECT_EQ(meterTotal({}), std::nullopt);
    EXPECT_EQ(meterTotal({shows(48'210'000)}), 48'210'000);
    EXPECT_EQ(meterTotal({shows(48'210'000), shows(50'000'000), shows(50'000'000)}), 50'000'000);
}

TEST(MeterTotal, AReplacedMeterCountsOnFromTheOldOne)
{
    const auto another = [](std::int64_t thousandths) { return shows(thousandths, MeterUnit::Kilometre, true); };
    EXPECT_EQ(meterTotal({shows(48'000'000), shows(50'000'000), another(0)}), 50'000'000);
    EXPECT_EQ(meterTotal({shows(50'000'000), another(0), shows(700'000)}), 50'700'000);
    EXPECT_EQ(meterTotal({shows(50'000'000), another(12'000'000), shows(12'500'000)}), 50'500'000) << "a used one";
    EXPECT_EQ(meterTotal({shows(1'000'000), another(0), shows(2'000'000), another(9'000'000), shows(9'100'000)}), 3'100'000);
}

TEST(MeterTotal, AMeterInAnotherUnitHasACountOfItsOwn)
{
    constexpr auto mile = MeterUnit::Mile;
    constexpr auto hour = MeterUnit::Hour;
    EXPECT_EQ(meterTotal({shows(100'000'000), shows(0, mile, true), shows(250'000, mile)}), 250'000);
    EXPECT_EQ(meterTotal({shows(100'000'000), shows(30'000'000, mile, true), shows(30'250'000, mile)}), 250'000)
        << "what a used meter showed before it came is not this vehicle's";
    EXPECT_EQ(meterTotal({shows(100'000'000), shows(3'812'000, hour)}), 3'812'000) << "both came with the vehicle";
    EXPECT_EQ(meterTotal({shows(100'000'000), shows(10'000, hour), shows(200'000'000), shows(15'000, hour), shows(201'000'000)}),
              201'000'000)
        << "two meters read in turn";
    EXPECT_EQ(meterTotal({shows(100'000'000), shows(0, mile, true), shows(5'000'000, mile), shows(0, MeterUnit::Kilometre, true),
                          shows(3'000'000)}),
              103'000'000)
        << "back to the first unit";
}

TEST(SubjectOf, EveryKindOfPoint)
{
    const auto of = [](PointKind kind, Side side) { return subjectOf({Cylinder{2}, side, kind, 1}); };
    EXPECT_EQ(of(PointKind::Lash, Side::Intake), SpecSubject::IntakeLash);
    EXPECT_EQ(of(PointKind::Lash, Side::Exhaust), SpecSubject::ExhaustLash);
    for (const Side side : {Side::Intake, Side::Exhaust}) {
        EXPECT_EQ(of(PointKind::BridgeScrew, side), SpecSubject::BridgeScrew);
        EXPECT_EQ(of(PointKind::Decompressor, side), SpecSubject::Decompressor);
        EXPECT_EQ(of(PointKind::Injector, side), SpecSubject::Injector);
    }
}

TEST(Frame, TheNewestSpecOfWhatAPointIsSetTo)
{
    JobFrame frame = bridgedFrame();
    const AdjusterRef intake{Cylinder{0}, Side::Intake};
    const AdjusterRef bridge{Cylinder{0}, Side::Exhaust, PointKind::BridgeScrew};
    const AdjusterRef injector{Cylinder{0}, Side::Intake, PointKind::Injector};
    EXPECT_EQ(frame.specNow(intake)->id, intakeSpec);
    EXPECT_EQ(frame.specNow(bridge)->id, SpecId(7));
    EXPECT_EQ(frame.specNow(injector), nullptr);
    EXPECT_EQ(frame.lashBandsNow(injector), nullptr);
    EXPECT_EQ(*frame.lashBandsNow(intake), bands("0.30 ± 0.05 mm"));
    EXPECT_EQ(frame.turnsNow(intake), nullptr);

    frame.specs.push_back(specOf(SpecId(9), SpecSubject::IntakeLash, bands("0.28 mm")));
    frame.specs.back().revision = 2;
    frame.specs.back().asked = turnBands("3/4 turn");
    EXPECT_EQ(frame.specNow(intake)->id, SpecId(9));
    EXPECT_EQ(frame.lashBandsNow(intake), nullptr) << "turns now";
    EXPECT_EQ(*frame.turnsNow(intake), turnBands("3/4 turn"));
}

TEST(Frame, AToolById)
{
    JobFrame frame = usualFrame();
    EXPECT_EQ(frame.tool(ToolId(1)), nullptr);
    frame.tools = {feelers("0.25 mm"), gauge(ToolKind::DialGauge, "", "")};
    EXPECT_EQ(frame.tool(ToolId(2)), &frame.tools[1]);
    EXPECT_EQ(frame.tool(ToolId(3)), nullptr);
}

} // namespace things_tests
} // namespace asleft
