#pragma once

#include "joint_grid.h"
#include "joint_legs.h"
#include "joint_part.h"

#include <draw/head.h>

#include <QLineF>
#include <QStringList>

#include <optional>
#include <vector>

namespace asleft {

/// Texts and how wide they are when set in one size: to measure them takes long, and a plan is tried many times.
struct MeasuredTexts {
    MeasuredTexts(const QStringList &texts, TextSize size);

    QStringList texts;
    TextSize size;
    QList<double> widths;
    double widest = 0;
    double height; ///< of capitals and digits
};

/// Where a text may stand beside its fastener.
enum class TextWay {
    Around,  ///< wherever there is room, outside first
    Outside, ///< of a fastener on the rim only outside: between two in a row it could be either's
};

/// Finds places for texts beside the fasteners of a joint, on the part, clear of the other fasteners and of each other.
class JointTexts {
public:
    /// \pre part and places outlive it
    JointTexts(const JointPart &part, const QList<QPointF> &places, double diameter, double rim);

    void take(const QRectF &box);
    void avoid(const QList<JointLeg> &legs);
    /// Only those that are written and not empty have to find a place; nothing where one of them does not. What found one keeps it.
    template <class IsWritten>
    [[nodiscard]] std::optional<QList<PlacedText>> place(const MeasuredTexts &measured, TextWay way, IsWritten isWritten)
    {
        QList<PlacedText> placed;
        for (qsizetype index = 0; index < measured.texts.size(); ++index) {
            const bool written = !measured.texts[index].isEmpty() && isWritten(index);
            const auto box = written ? boxFor(index, {measured.widths[index], measured.height}, way) : QRectF();
            if (!box)
                return std::nullopt;
            if (written)
                take(*box);
            placed.append({written ? measured.texts[index] : QString(), *box, measured.size, Qt::AlignCenter});
        }
        return placed;
    }

private:
    [[nodiscard]] QRectF boxAt(qsizetype index, QSizeF text, QPointF direction, double off) const;
    [[nodiscard]] bool isOnPart(qsizetype index, const QRectF &box) const;
    [[nodiscard]] bool isFree(qsizetype index, const QRectF &box) const;
    [[nodiscard]] bool isOnLeg(const QRectF &box) const;
    [[nodiscard]] std::optional<QRectF> boxFor(qsizetype index, QSizeF text, TextWay way) const;
    [[nodiscard]] std::optional<QRectF> boxAway(qsizetype index, QSizeF text, int ways, double off) const;

    const JointPart &m_part;
    const QList<QPointF> &m_places;
    double m_diameter;
    double m_rim;
    QRectF m_area;
    JointGrid m_placesNear;
    std::vector<QRectF> m_taken;
    JointGrid m_takenNear;
    std::vector<QLineF> m_lines; ///< of the legs
    JointGrid m_linesNear;
};

} // namespace asleft
