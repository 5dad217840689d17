// A tractor on the bench: the first position half set when its mechanic was called away, a lock nut open, its cover off, and the flange of
// its water outlet half tightened.
#include "telling.h"

namespace asleft {

namespace {

constexpr std::string_view manual = "Hollin 40 workshop manual";

SpecSource onPage(std::string_view page)
{
    return {std::string(manual), std::string(page)};
}

NewVehicle theTractor(Telling &telling)
{
    VehicleText text;
    text.name = "Hollin 40 tractor";
    text.mark = "H40 / 11874";
    text.number = "411874 R";
    text.meter = "3 812 h";
    text.meterUnit = MeterUnit::Hour;
    text.engineName = "Hollin four-cylinder diesel";
    text.engine.firingOrder = "1-3-4-2";
    text.screw.pitch = "1 mm";
    text.screw.ratio = "1";
    return telling.vehicle(text);
}

void whatTheTractorManualSays(Telling &telling, EngineId engine)
{
    telling.spec(engine, SpecSubject::IntakeLash, {.band = "0.30 ± 0.05 mm", .otherBand = {}, .source = onPage("41")});
    telling.spec(engine, SpecSubject::ExhaustLash, {.band = "0.40 ± 0.05 mm", .otherBand = {}, .source = onPage("41")});
    telling.spec(engine, SpecSubject::LockNut, {.band = "22 ± 2 N·m", .otherBand = {}, .source = onPage("42")});
}

struct TractorJoints {
    JointId cover;
    JointId outlet;
    JointId sender;
};

/// A cover with limiters under its screws, a flange with three passes, and a screw that is too small for any wrench here.
TractorJoints whatIsScrewedOn(Telling &telling, EngineId engine)
{
    JointText cover;
    cover.name = "Rocker cover";
    cover.thread = "M8";
    cover.strength = "8.8";
    cover.pattern = told(parsePattern("cover of 12"));
    cover.target = "20 ± 2 N·m";
    cover.passes = "50 %, target, settle 3";
    cover.settle = SettleGround::Limiters;
    cover.condition = ThreadCondition::Dry;
    cover.drive = DriveKind::Socket;
    cover.driveSize = "13 mm";
    cover.female = FemaleMaterial::Aluminium;
    cover.source = onPage("44");

    JointText outlet;
    outlet.name = "Water outlet flange";
    outlet.thread = "M10";
    outlet.strength = "8.8";
    outlet.pattern = told(parsePattern("8 around a circle"));
    outlet.order = "1-5-3-7-2-6-4-8";
    outlet.target = "44 ± 4 N·m";
    outlet.passes = "finger, 50 %, target";
    outlet.condition = ThreadCondition::Oiled;
    outlet.drive = DriveKind::Socket;
    outlet.driveSize = "17 mm";
    outlet.female = FemaleMaterial::Iron;
    outlet.source = onPage("58");

    JointText sender;
    sender.name = "Oil pressure sender clamp";
    sender.thread = "M5";
    sender.strength = "8.8";
    sender.pattern = told(parsePattern("1"));
    sender.target = "3 ± 0.5 N·m";
    sender.condition = ThreadCondition::Dry;
    sender.drive = DriveKind::HexKey;
    sender.driveSize = "4 mm";
    sender.female = FemaleMaterial::Aluminium;
    sender.source = onPage("63");

    return {telling.joint(engine, cover), telling.joint(engine, outlet), telling.joint(engine, sender)};
}

void takeTheCoverOff(Sitter &marta, JointId cover, ToolId wrench)
{
    for (const auto &[fastener, torque] : {std::pair{8, "19 N·m"}, {1, "18 N·m"}, {6, "21 N·m"}, {7, "17 N·m"}})
        marta.foundAt(cover, fastener, torque, wrench);
    marta.foundLooseByFeel(cover, {12, 5});
    for (const auto &[fastener, torque] : {std::pair{11, "20 N·m"}, {2, "16 N·m"}, {4, "18 N·m"}, {10, "20 N·m"}, {9, "19 N·m"}})
        marta.foundAt(cover, fastener, torque, wrench);
    marta.foundLooseByFeel(cover, {3});
}

} // namespace

void tellHollin(Telling &telling, const Workshop &workshop)
{
    using namespace std::chrono;
    telling.at(2026y / May / 15, 13h + 40min);
    const NewVehicle tractor = theTractor(telling);
    whatTheTractorManualSays(telling, tractor.engine);
    const TractorJoints joints = whatIsScrewedOn(telling, tractor.engine);
    const auto book = telling.valveJob(tractor);

    Sitter marta(telling, *book, workshop.marta, workshop.metricLeaves);
    marta.step();
    takeTheCoverOff(marta, joints.cover, workshop.smallWrench);
    telling.later(2);
    told(book->noteFinding(FastenerSubject{joints.cover, {3, 5, 12}}, "Several were loose: 3, 5 and 12 of 12."));
    telling.later(9);
    told(book->loosen({.joint = joints.outlet, .fasteners = {8, 4, 6, 2, 7, 3, 5, 1}}));
    telling.later(1);
    told(book->loosen({.joint = joints.sender, .fasteners = {1}}));
    marta.step();
    telling.later(12);
    told(book->tick(
        {.joint = joints.outlet,
         .places = restOfPass(book->state().frame->jointNow(joints.outlet)->tightening(), book->state().joints.at(joints.outlet).progress),
         .how = TickHow::ByHand}));
    marta.tighten(joints.outlet, 8 + 3, workshop.largeWrench);
    marta.beginValveSet();
    marta.found("I1", "0.35 mm");
    marta.found("E1", "0.45 mm");
    marta.found("I2", "0.20 mm");
    marta.found("E3", "0.55 mm");
    marta.nutOpen("I1");
    marta.leftAsTheSpecAsks("I1");
    marta.left("E1", "0.40 mm");
    marta.nutOpen("I2");
}

} // namespace asleft
