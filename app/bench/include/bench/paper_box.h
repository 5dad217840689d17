#pragma once

#include <bench/typed_reading.h>
#include <parts/line_edit.h>

namespace asleft {

/// One box of a bench sheet, as it was filled in with a pencil: a value as the reading bar takes it, or a word. On an empty box S, L, T and
/// F write the word for the spec's leaf, loose, tight and by feel; up and down go to the line above and below.
class PaperBox : public LineEdit {
    Q_OBJECT

public:
    enum class Word { Leaf, Loose, Tight, ByFeel };

    explicit PaperBox(QWidget *parent = nullptr);

    void setTypedAs(const TypedAs &as) { m_as = as; }
    /// What S writes: the spec's leaf as a value, where it was only found so; empty: that it was set with it.
    void setLeafFound(const QString &leaf) { m_leafFound = leaf; }
    /// Writes a word in place of what stands there.
    void write(Word word);
    /// What stands in it; nothing where it is empty.
    [[nodiscard]] Result<std::optional<TypedReading>> read() const;

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

Q_SIGNALS:
    void arrowPressed(Qt::Key arrow);
    void focused();

protected:
    void keyPressEvent(QKeyEvent *event) override;
    void focusInEvent(QFocusEvent *event) override;

private:
    [[nodiscard]] QString wordText(Word word) const;

    TypedAs m_as;
    QString m_leafFound;
};

} // namespace asleft
