#pragma once

#include <work/garage.h>

#include <QElapsedTimer>
#include <QObject>
#include <QPointF>

#include <chrono>
#include <map>
#include <optional>
#include <set>

class QKeyEvent;
class QMouseEvent;

namespace asleft {

/// One press writes one act, wherever it is pressed. Looks at keys and clicks before any widget does:
/// - a key that repeats itself moves and types, and does nothing else;
/// - the key that wrote something does nothing more until it was up;
/// - the same key, or a click at the same place, that comes again shortly after is swallowed, and said to be: by then another point,
/// fastener
///   or line is in hand.
class OnePress : public QObject {
    Q_OBJECT

public:
    /// Whoever means to press twice takes longer than a nervous finger.
    static constexpr std::chrono::milliseconds usualPause{400};

    explicit OnePress(Garage &garage, QObject *parent = nullptr);

    /// How long the same press is swallowed after it wrote something; 0: not at all.
    void setPause(std::chrono::milliseconds pause) { m_pause = pause; }
    [[nodiscard]] std::chrono::milliseconds pause() const { return m_pause; }

Q_SIGNALS:
    void swallowed();

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    /// What was pressed: a key, or a mouse button somewhere.
    struct Press {
        int key = 0;
        std::optional<QPointF> at = {};
        [[nodiscard]] bool isAgain(const Press &other) const;
    };

    void heed(const Change &change);
    [[nodiscard]] bool takesKey(QKeyEvent &event);
    [[nodiscard]] bool takesShortcut(QKeyEvent &event);
    void letGo(const QKeyEvent &event);
    [[nodiscard]] bool takesClick(const QMouseEvent &event);
    [[nodiscard]] bool isRepeat(const QKeyEvent &event) const;
    [[nodiscard]] bool comesTooSoon(const Press &press) const;

    std::chrono::milliseconds m_pause = usualPause;
    std::optional<Press> m_pressed; ///< last of all, and still at work
    std::optional<Press> m_wrote;   ///< what wrote something last
    QElapsedTimer m_sinceWritten;
    std::set<int> m_spent;             ///< keys that wrote something and were not up since
    std::map<int, quint64> m_released; ///< when a key came up last, by the clock of its events
    bool m_clickSwallowed = false;     ///< its release goes the same way
};

} // namespace asleft
