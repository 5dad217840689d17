#pragma once

#include <QWidget>

class QHBoxLayout;

namespace asleft {

class KeyButton;

/// A value that can be touched instead of typed.
struct BarChip {
    QString label;
    QString text; ///< what it types
    QString name;
};

/// Values to touch, side by side, as many as there is room for.
class ChipRow : public QWidget {
    Q_OBJECT

public:
    explicit ChipRow(QWidget *parent = nullptr);

    void setChips(const QList<BarChip> &chips, bool enabled);
    /// So wide the row may be.
    void setRoom(int width);

Q_SIGNALS:
    void touched(const QString &text);

private:
    void fill();
    [[nodiscard]] qsizetype most() const;

    QHBoxLayout *m_row;
    QList<BarChip> m_chips;
    bool m_enabled = true;
    int m_room = 0;
    QList<KeyButton *> m_keys;
};

/// Between chips, and between them and what stands beside them.
constexpr int chipGap = 6;

} // namespace asleft
