#pragma once

#include <QLineEdit>

namespace asleft {

/// The most characters a field takes: a page pasted by mistake is cut here and then refused with a sentence, and nothing freezes.
constexpr int longestPaste = 2000;

/// A field of one line in the look of the sheet: at least 44 px high, a strong outline while the keyboard speaks to it, a heavy left
/// edge while what stands in it is refused.
class LineEdit : public QLineEdit {
    Q_OBJECT

public:
    explicit LineEdit(QWidget *parent = nullptr);

    void setRefused(bool refused);
    [[nodiscard]] bool isRefused() const { return m_refused; }

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

Q_SIGNALS:
    /// Enter was pressed; a held key says it once.
    void entered();
    /// The keyboard went elsewhere.
    void left();

protected:
    void paintEvent(QPaintEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void focusOutEvent(QFocusEvent *event) override;

private:
    bool m_refused = false;
};

} // namespace asleft
