#pragma once

#include <parts/ruled_rows.h>

#include <work/vehicles.h>

#include <QWidget>

namespace asleft {

class Heading;
class KeyButton;
class MessageLine;
class Notes;
class RuledList;
class VehiclesModel;

/// Where an engine goes: into another vehicle or onto the stand, what becomes of the engine that is in there, and where it has been.
class MovePane : public QWidget {
    Q_OBJECT

public:
    /// The line of the stand among the places; vehicles have their own ids.
    static constexpr qint64 onStand = 0;

    explicit MovePane(VehiclesModel &vehicles, QWidget *parent = nullptr);

    /// The sheet for this engine, with no place chosen yet.
    void begin(EngineId engine);
    void takeFocus();
    [[nodiscard]] RuledList *places() const { return m_places; }
    [[nodiscard]] KeyButton *moveKey() const { return m_move; }
    [[nodiscard]] MessageLine *whatHappens() const { return m_whatHappens; }
    [[nodiscard]] Notes *stays() const { return m_stays; }

Q_SIGNALS:
    /// It stands elsewhere now; the sentence says where, and what went out for it.
    void moved(asleft::EngineId engine, const QString &sentence);
    void left();

private:
    void buildLayout();
    void fill();
    void tell();
    void move();
    [[nodiscard]] const VehicleRow *now() const;
    [[nodiscard]] const VehicleRow *chosen() const;

    VehiclesModel &m_vehicles;
    std::optional<EngineId> m_engine;
    Heading *m_head;
    Heading *m_where;
    RuledRows m_placeRows;
    RuledList *m_places;
    MessageLine *m_whatHappens;
    KeyButton *m_move;
    KeyButton *m_leave;
    Notes *m_stays;
};

/// "since 14 Nov on the stand", newest first.
QStringList stayWords(const std::vector<EngineStay> &stays, Moment now);

} // namespace asleft
