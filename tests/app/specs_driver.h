#pragma once

#include "garage_fixture.h"

#include <pages/specs_page.h>
#include <parts/specs_model.h>
#include <parts/vehicles_model.h>

namespace asleft::testing {

/// The page on a garage with one engine: an even four, or what is made of it.
struct OpenSpecs {
    explicit OpenSpecs(const std::function<void(VehicleText &)> &make = [](VehicleText &) {})
        : added(addFour(*shop.garage, make)), vehicles(*shop.garage), specs(*shop.garage, vehicles), page(*shop.context, specs, vehicles)
    {
        present(page);
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
