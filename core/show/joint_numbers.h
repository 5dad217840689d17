#pragma once

#include "joint_legs.h"
#include "joint_part.h"

#include <show/head.h>

#include <QFontMetricsF>

namespace asleft {

/// Finds places for texts beside the fasteners of a joint, on the part, clear of the other fasteners and of each other.
class JointTexts {
public:
    /// \pre part and places outlive it
    JointTexts(const JointPart &part, const QList<QPointF> &places, double diameter, double rim, TextSize size);

    void take(const QRectF &box) { m_taken.append(box); }
    void avoid(const QList<JointLeg> &legs) { m_legs = legs; }
    /// Only those that are not empty have to find a place; nothing where one of them does not.
    [[nodiscard]] std::optional<QList<PlacedText>> place(const QStringList &texts);

private:
    [[nodiscard]] QRectF boxAt(qsizetype index, const QString &text, QPointF direction, double off) const;
    [[nodiscard]] bool isFree(qsizetype index, const QRectF &box) const;
    [[nodiscard]] bool isOnLeg(const QRectF &box) const;
    [[nodiscard]] std::optional<QRectF> boxFor(qsizetype index, const QString &text) const;
    [[nodiscard]] std::optional<QRectF> boxFor(qsizetype index, const QString &text, double off) const;
    [[nodiscard]] PlacedText placed(const QString &text, const QRectF &box) const { return {text, box, m_size, Qt::AlignCenter}; }

    const JointPart &m_part;
    const QList<QPointF> &m_places;
    double m_diameter;
    double m_rim;
    TextSize m_size;
    QFontMetricsF m_metrics;
    QList<JointLeg> m_legs;
    QList<QRectF> m_taken;
};

} // namespace asleft
