#pragma once

#include <QLayout>

namespace asleft {

/// Keys one beside the other, and on further lines where the sheet is too narrow for all of them.
class KeysLayout : public QLayout {
public:
    explicit KeysLayout(QWidget *parent = nullptr);
    ~KeysLayout() override;

    void addItem(QLayoutItem *item) override { m_items.append(item); }
    [[nodiscard]] int count() const override { return int(m_items.size()); }
    [[nodiscard]] QLayoutItem *itemAt(int index) const override { return m_items.value(index); }
    QLayoutItem *takeAt(int index) override;
    [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    /// All of them on one line.
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSize() const override;
    void setGeometry(const QRect &area) override;

private:
    /// Puts them into the area where `moves`; gives the height they take.
    int arrange(const QRect &area, bool moves) const;

    QList<QLayoutItem *> m_items;
};

} // namespace asleft
