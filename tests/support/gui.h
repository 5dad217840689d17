#pragma once

#include <words/translation.h>

#include <QGuiApplication>
#include <QLocale>

#include <gtest/gtest.h>

#include <memory>

namespace asleft {

/// Fonts and painters need an application; it never needs a screen.
class GuiEnvironment : public ::testing::Environment {
public:
    void SetUp() override
    {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        m_application = std::make_unique<QGuiApplication>(m_count, m_arguments);
        installTranslation(*m_application);
    }
    void TearDown() override { m_application.reset(); }

private:
    int m_count = 1;
    char m_name[5] = "test";
    char *m_arguments[2] = {m_name, nullptr};
    std::unique_ptr<QGuiApplication> m_application;
};

inline const auto *const guiEnvironment = ::testing::AddGlobalTestEnvironment(new GuiEnvironment);

} // namespace asleft
