#include "support.h"

#include "core_application.h"
#include "engine_texts.h"

#include <algorithm>
#include <cstdlib>
#include <ctime>

namespace asleft {

namespace {

namespace fs = std::filesystem;

fs::path newFolder()
{
    std::string pattern = (fs::temp_directory_path() / "asleft-work-XXXXXX").string();
    if (::mkdtemp(pattern.data()) == nullptr)
        throw std::runtime_error("no folder");
    return fs::canonical(pattern);
}

} // namespace

std::string saidOf(const Error &error)
{
    std::string said = "refused, kind " + std::to_string(static_cast<int>(error.kind));
    for (const std::string &argument : error.arguments)
        said += ", " + argument;
    return said;
}

VehicleText tractorText()
{
    VehicleText text;
    text.name = "Tractor";
    text.mark = "T 1";
    text.meter = "3812 h";
    text.engineName = "Diesel";
    text.engine = fourText();
    text.screw.pitch = "1 mm";
    text.screw.ratio = "1";
    return text;
}

VehicleText hydraulicText()
{
    VehicleText text = tractorText();
    text.engine.layout = Layout::Single;
    text.engine.cylinders = 1;
    text.engine.firingOrder = "1";
    text.screw.kind = AdjusterKind::Hydraulic;
    text.screw.bleedDown = "15 min";
    return text;
}

/// What day it is must not depend on where a test runs.
void liveIn(const char *zone)
{
    qputenv("TZ", zone);
    ::tzset();
}

WorkTest::WorkTest() : m_folder(newFolder()), path((m_folder / "shop.asleft").string())
{
    haveApplication();
    liveIn("UTC");
    qInstallMessageHandler(failOnWarning);
    clock->set({1'000'000});
    garage = need(Garage::create(path, {clock, std::make_shared<ScriptedUids>("bench"), "bench"}));
}

WorkTest::~WorkTest()
{
    garage.reset();
    qInstallMessageHandler(nullptr);
    std::error_code ignored;
    fs::remove_all(m_folder, ignored);
}

std::unique_ptr<Garage> WorkTest::openedBy(const std::string &station) const
{
    return need(Garage::open(path, {clock, std::make_shared<ScriptedUids>(station + " again"), station}));
}

BookTest::BookTest(const VehicleText &text)
    : tractor(need(addVehicle(*garage, text))), marta(need(addPerson(*garage, "M.K.", "Marta"))),
      tom(need(addPerson(*garage, "T.B.", "Tom"))),
      job(need(openJob(*garage, tractor.vehicle, tractor.engine, builtInSheets().front(), "Set the valves")))
{
    need(reviseSpec(*garage, tractor.engine, SpecSubject::IntakeLash, lashText("0.30 ± 0.05 mm")));
    need(reviseSpec(*garage, tractor.engine, SpecSubject::ExhaustLash, lashText("0.40 ± 0.05 mm")));
    book = bookOf(*garage);
    book->setWho(marta);
}

PointId BookTest::at(std::string_view name) const
{
    const Engine &engine = book->state().frame->engine;
    const auto named = [&](const SettingPoint &known) { return shortName(engine.design, known.adjuster) == name; };
    const auto found = std::ranges::find_if(engine.points, named);
    if (found == engine.points.end())
        throw std::runtime_error("no point " + std::string(name));
    return found->id;
}

ReadingEntry BookTest::reading(std::string_view point, Phase phase, std::string_view value) const
{
    return {.point = at(point), .phase = phase, .value = length(value)};
}

void BookTest::beginValveSet()
{
    need(book->choosePlan(book->proposedPlan()));
    need(book->readTurningCautions());
    need(book->confirmCrank(degrees(0)));
}

std::unique_ptr<JobBook> BookTest::bookOf(Garage &of) const
{
    return need(JobBook::open(of, job));
}

std::size_t BookTest::actsInFile() const
{
    const auto reader = openedBy("reader");
    return bookOf(*reader)->state().acts.size();
}

} // namespace asleft
