#pragma once

#include "garage_fixture.h"

#include <pages/jobs_page.h>
#include <parts/jobs_model.h>
#include <parts/vehicles_model.h>

namespace asleft::testing {

/// The Jobs page on a garage of its own.
struct OpenJobs {
    OpenJobs() : vehicles(*shop.garage), jobs(*shop.garage), page(jobs, vehicles)
    {
        QObject::connect(&page, &JobsPage::benchWanted, &page, [this](JobId job) { onBench = job; });
        present(page);
    }

    /// A job on a vehicle of its own, in hand on the page.
    JobId openOne()
    {
        const NewVehicle added = addFour(*shop.garage);
        const auto job = openJob(*shop.garage, added.vehicle, added.engine, builtInSheets().front(), "Valves: all of them");
        if (!job)
            qFatal("the job could not be opened");
        page.choose(job->key());
        return *job;
    }

    Shop shop;
    VehiclesModel vehicles;
    JobsModel jobs;
    JobsPage page;
    std::optional<JobId> onBench;
};

} // namespace asleft::testing
