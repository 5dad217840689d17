#pragma once

#include "garage_fixture.h"

#include <pages/specs_page.h>
#include <parts/specs_model.h>
#include <parts/vehicles_model.h>

#include <functional>

namespace asleft::testing {

/// The page on a garage with one engine: an even four, or what is made of it.
struct OpenSpecs {
    explicit OpenSpecs(const std::function<void(VehicleText &)> &make = [](VehicleText &) {})
        : added(addOne(*shop.garage, make)), vehicles(*shop.garage), specs(*shop.garage, vehicles), page(*shop.context, specs, vehicles)
    {
        present(page);
    }

    static NewVehicle addOne(Garage &garage, const std::function<void(VehicleText &)> &make)
    {
        VehicleText text;
        text.name = "Hollin 40 tractor";
        text.engine.firingOrder = "1-3-4-2";
        make(text);
        const auto added = addVehicle(garage, text);
        if (!added)
            qFatal("the vehicle could not be added");
        return *added;
    }

    SpecForm &form(SpecsPage::Section section)
    {
        page.chooseSection(section);
        return *page.form(section);
    }

    Shop shop;
    NewVehicle added;
    VehiclesModel vehicles;
    SpecsModel specs;
    SpecsPage page;
};

} // namespace asleft::testing
