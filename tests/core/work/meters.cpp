// Meters: read, read again, replaced.
#include "support.h"

namespace asleft {
namespace meters_tests {

class Meters : public WorkTest {
protected:
    NewVehicle tractor = need(addVehicle(*garage, tractorText()));
    std::optional<MeterReading> latest() { return need(vehicles(*garage)).at(0).meter; }
    std::vector<MeterReading> all() { return need(meterReadings(*garage, tractor.vehicle)); }
    Result<MeterReadingId> read(std::string_view text, bool replaced = false)
    {
        clock->forward(std::chrono::hours(24));
        return readMeter(*garage, tractor.vehicle, text, MeterUnit::Hour, replaced);
    }
    Done save(std::string meter, bool replaced = false)
    {
        clock->forward(std::chrono::hours(24));
        VehicleText text = tractorText();
        text.meter = std::move(meter);
        text.meterReplaced = replaced;
        return changeVehicle(*garage, tractor.vehicle, tractor.engine, text);
    }
};

TEST_F(Meters, StandWhereTheyWereLastRead)
{
    need(save("3812 h"));
    EXPECT_EQ(latest()->at, Moment{1'000'000}) << "saving the form again reads no meter";
    const MeterReadingId id = need(read("3820"));
    EXPECT_EQ(latest()->id, id);
    EXPECT_EQ(latest()->text, "3820");
    EXPECT_EQ(latest()->at, clock->now());
    need(read("3820"));
    EXPECT_EQ(all().size(), 3U) << "read again, it still stood there";
    need(save("3825 h"));
    EXPECT_EQ(latest()->thousandths, 3'825'000);
    EXPECT_EQ(refusal(read("lots")), ErrorKind::MeterUnread);
}

TEST_F(Meters, DoNotRunBack)
{
    const auto back = read("3811.9 h");
    ASSERT_FALSE(back.has_value());
    EXPECT_EQ(back.error(), (Error{ErrorKind::MeterRunsBack, {"3811.9 h", "3812 h"}}));
    const Done saved = save("12 h");
    ASSERT_FALSE(saved.has_value());
    EXPECT_EQ(saved.error(), (Error{ErrorKind::MeterRunsBack, {"12 h", "3812 h"}}));
    EXPECT_EQ(all().size(), 1U);
    EXPECT_TRUE(read("3812 h").has_value()) << "the same is not less";
}

TEST_F(Meters, MayBeReplaced)
{
    need(read("3900 h"));
    need(read("3 h", true));
    need(read("60 h"));
    EXPECT_EQ(refusal(read("59 h")), ErrorKind::MeterRunsBack);
    const auto readings = all();
    ASSERT_EQ(readings.size(), 4U);
    EXPECT_EQ(readings[0].text, "3812 h");
    EXPECT_FALSE(readings[1].replaced);
    EXPECT_TRUE(readings[2].replaced);
    EXPECT_FALSE(readings[3].replaced);
    // 88 h on the old meter after the first reading, 57 h on the new one, onto what the old one showed at first.
    EXPECT_EQ(meterTotal(readings), 3'812'000 + 88'000 + 57'000);
}

TEST_F(Meters, MayBeReplacedInTheForm)
{
    need(save("3 h", true));
    ASSERT_EQ(all().size(), 2U);
    EXPECT_TRUE(all().back().replaced);
    need(save("3 h", true));
    EXPECT_EQ(all().size(), 2U) << "saving the form again replaces nothing";
    need(save("3 h"));
    EXPECT_EQ(all().size(), 2U);
    EXPECT_EQ(refusal(save("2 h")), ErrorKind::MeterRunsBack);
}

TEST_F(Meters, OfAnotherUnitCountForThemselves)
{
    need(read("200 km"));
    need(read("3900 h"));
    EXPECT_EQ(refusal(read("199 km")), ErrorKind::MeterRunsBack);
    EXPECT_EQ(refusal(read("3899 h")), ErrorKind::MeterRunsBack);
    need(read("201 km"));
    EXPECT_EQ(all().size(), 4U);
}

TEST_F(Meters, WhatIsRefusedChangesNothingElse)
{
    VehicleText text = tractorText();
    text.name = "Renamed";
    text.engineName = "Renamed too";
    text.meter = "1 h";
    EXPECT_EQ(refusal(changeVehicle(*garage, tractor.vehicle, tractor.engine, text)), ErrorKind::MeterRunsBack);
    const VehicleRow row = need(vehicles(*garage)).at(0);
    EXPECT_EQ(row.vehicle.name, "Tractor");
    EXPECT_EQ(row.engine->name, "Diesel");
}

TEST_F(Meters, OfAVehicleThatIsNotThere)
{
    EXPECT_FALSE(readMeter(*garage, VehicleId(99), "1 h", MeterUnit::Hour).has_value());
    EXPECT_TRUE(need(meterReadings(*garage, VehicleId(99))).empty());
}

} // namespace meters_tests
} // namespace asleft
