#pragma once

#include <QAbstractButton>
#include <QWidget>

class QButtonGroup;

namespace asleft {

enum class Page { Vehicles, Jobs, Bench, Specs, Tools };

/// One index tab along the foot of the sheet: the open one is paper, the others lie behind it.
class PageTab : public QAbstractButton {
    Q_OBJECT

public:
    explicit PageTab(const QString &text, QWidget *parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    bool event(QEvent *event) override;
    void paintEvent(QPaintEvent *event) override;
};

/// The tabs of the garage along the bottom edge, and beside them the other look.
class PageTabs : public QWidget {
    Q_OBJECT

public:
    explicit PageTabs(QWidget *parent = nullptr);

    void setPage(Page page);
    [[nodiscard]] Page page() const;
    [[nodiscard]] PageTab *tab(Page page) const;
    /// Names the look the key changes to.
    void setOtherLook(const QString &words);
    [[nodiscard]] QAbstractButton *lookKey() const { return m_look; }

Q_SIGNALS:
    void pageWanted(asleft::Page page);
    void otherLookWanted();

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    QButtonGroup *m_tabs;
    QAbstractButton *m_look;
};

} // namespace asleft
