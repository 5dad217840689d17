#pragma once

#include <QAbstractButton>
#include <QWidget>

class QButtonGroup;

namespace asleft {

enum class Place { Vehicles, Jobs, Bench, Specs, Tools };

/// One index tab along the foot of the sheet: the open one is paper, the others lie behind it.
class PlaceTab : public QAbstractButton {
    Q_OBJECT

public:
    explicit PlaceTab(const QString &text, QWidget *parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    bool event(QEvent *event) override;
    void paintEvent(QPaintEvent *event) override;
};

/// The places of the garage along the bottom edge, and beside them the other look.
class PlacesBar : public QWidget {
    Q_OBJECT

public:
    explicit PlacesBar(QWidget *parent = nullptr);

    void setPlace(Place place);
    [[nodiscard]] Place place() const;
    [[nodiscard]] PlaceTab *tab(Place place) const;
    /// Names the look the key changes to.
    void setOtherLook(const QString &words);
    [[nodiscard]] QAbstractButton *lookKey() const { return m_look; }

Q_SIGNALS:
    void placeWanted(asleft::Place place);
    void otherLookWanted();

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    QButtonGroup *m_tabs;
    QAbstractButton *m_look;
};

} // namespace asleft
