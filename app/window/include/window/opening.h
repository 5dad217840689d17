#pragma once

#include <parts/app_context.h>
#include <window/arguments.h>

#include <QObject>

#include <memory>

namespace asleft {

class StartPane;
class Window;

/// From the arguments to an open garage, and what is remembered from one start to the next: the computer, the garage opened last, the look.
class Opening : public QObject {
    Q_OBJECT

public:
    explicit Opening(QObject *parent = nullptr);
    ~Opening() override;

    /// Does what was asked; the exit code, or nothing while a window is open.
    std::optional<int> begin(const Arguments &arguments);

    [[nodiscard]] Window *window() const { return m_window.get(); }
    [[nodiscard]] StartPane *startPane() const { return m_start.get(); }

private:
    std::optional<int> openWindow(const QString &path, bool make);
    int draw(const Arguments &arguments);
    void show(std::unique_ptr<Garage> garage);
    void offerStart(const QString &refusal);
    void follow(const QString &path, bool make);
    [[nodiscard]] Look rememberedLook() const;

    std::unique_ptr<Garage> m_garage;
    std::unique_ptr<AppContext> m_context;
    std::unique_ptr<Window> m_window;
    std::unique_ptr<StartPane> m_start;
    std::optional<Look> m_look; ///< asked for on the command line
};

/// A name for this installation, made once and kept; a second copy of the program open at the same time has one of its own.
std::string stationOfThisInstallation();

} // namespace asleft
