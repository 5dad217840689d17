#pragma once

#include <forms/table_reader.h>

#include <QWidget>

namespace asleft {

class ChoiceKeys;
class KeyButton;
class MessageLine;
class ValueField;

/// One line of the manual's table: a cylinder, its stroke, and the points set there.
class TableRow : public QWidget {
    Q_OBJECT

public:
    explicit TableRow(QWidget *parent = nullptr);

    [[nodiscard]] TableLine line() const;
    void setLine(const TableLine &line);
    /// Numbers the labels, so that each field has a name of its own.
    void setPlace(int place);
    /// Tells what was understood at once; a refusal only when `refuse` says so, or where one stands already.
    void tell(const TableRowTold &reading, bool refuse);
    /// Whether the line was left after something was typed in it.
    [[nodiscard]] bool wasLeft() const { return m_left; }

    /// Puts its fields after `before` in the order of Tab: rows come and go.
    void linkAfter(QWidget *before);
    [[nodiscard]] QWidget *last() const;

    [[nodiscard]] ValueField *cylinder() const { return m_cylinder; }
    [[nodiscard]] ValueField *points() const { return m_points; }
    [[nodiscard]] MessageLine *understood() const { return m_understood; }
    [[nodiscard]] ChoiceKeys *stroke() const { return m_stroke; }

Q_SIGNALS:
    void edited();
    void left();
    /// Enter on its last field.
    void finished();
    void removeWanted();

private:
    ValueField *m_cylinder;
    ChoiceKeys *m_stroke;
    ValueField *m_points;
    KeyButton *m_remove;
    MessageLine *m_understood;
    MessageLine *m_doubts;
    CrankEvent m_other = CrankEvent::ExhaustOpens; ///< of a stored line that is neither on compression nor at overlap
    bool m_left = false;
};

} // namespace asleft
