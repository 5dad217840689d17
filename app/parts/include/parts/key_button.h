#pragma once

#include <QPushButton>

namespace asleft {

/// A sentence as a tooltip that wraps; plain words stand on one line however long it gets.
QString wrappedTip(const QString &sentence);

/// A flat key, at least 44 px high. Enter and Space press it, held keys do not repeat; it is never a default button.
class KeyButton : public QPushButton {
    Q_OBJECT

public:
    explicit KeyButton(const QString &text, QWidget *parent = nullptr);

    /// A strong key has a heavier outline and bold words: the one that carries the work on.
    void setStrong(bool strong);
    /// A plain key is words alone, for what is seldom wanted; it is still 44 px high.
    void setPlain(bool plain);
    /// From now on it is off, whatever else turns it on, and its tooltip says why.
    void forbid(const QString &why);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void changeEvent(QEvent *event) override;

private:
    [[nodiscard]] QFont wordsFont() const;

    bool m_strong = false;
    bool m_plain = false;
    bool m_forbidden = false;
};

} // namespace asleft
