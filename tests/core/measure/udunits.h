#pragma once

#include <udunits2.h>

#include <memory>

namespace asleft {

/// Conversions by an independent library.
class Udunits {
public:
    Udunits()
    {
        ut_set_error_message_handler(ut_ignore);
        m_system.reset(ut_read_xml(nullptr));
    }
    /// False where the unit database of libudunits2 is missing.
    [[nodiscard]] bool isThere() const { return m_system != nullptr; }

    /// 0 for units it does not know.
    [[nodiscard]] double convert(double value, const char *from, const char *to) const
    {
        const std::unique_ptr<ut_unit, FreeUnit> source(ut_parse(m_system.get(), from, UT_ASCII));
        const std::unique_ptr<ut_unit, FreeUnit> target(ut_parse(m_system.get(), to, UT_ASCII));
        if (!source || !target)
            return 0;
        const std::unique_ptr<cv_converter, FreeConverter> converter(ut_get_converter(source.get(), target.get()));
        return converter ? cv_convert_double(converter.get(), value) : 0;
    }

private:
    struct FreeSystem {
        void operator()(ut_system *system) const { ut_free_system(system); }
    };
    struct FreeUnit {
        void operator()(ut_unit *unit) const { ut_free(unit); }
    };
    struct FreeConverter {
        void operator()(cv_converter *converter) const { cv_free(converter); }
    };

    std::unique_ptr<ut_system, FreeSystem> m_system;
};

} // namespace asleft
