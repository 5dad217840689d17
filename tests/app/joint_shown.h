#pragma once

#include "garage_fixture.h"

#include <drawn/fastener_button.h>
#include <drawn/joint_part.h>
#include <drawn/joint_view.h>

namespace asleft::testing {

inline Pattern patternOf(const char *text)
{
    const auto pattern = parsePattern(text);
    if (!pattern)
        qFatal("no pattern %s", text);
    return *pattern;
}

/// A joint by itself, in a window of this size.
struct Shown {
    explicit Shown(const Pattern &pattern, QSize size = {634, 280})
    {
        view.setJoint(pattern, generateOrder(pattern));
        present(view, size);
        for (const FastenerPosition &place : pattern.places) {
            names.append(QStringLiteral("fastener %1").arg(place.number));
            looks.append(FastenerLook{});
        }
        take(0);
    }

    void take(std::optional<qsizetype> index, qsizetype done = 0)
    {
        for (qsizetype i = 0; i < looks.size(); ++i)
            looks[i].inHand = i == index;
        view.setFasteners(names, looks, index, done);
    }

    /// As the Bench does it: whatever is chosen is in hand.
    void takeWhatIsChosen()
    {
        QObject::connect(&view, &JointView::fastenerChosen, &view, [this](qsizetype index) { take(index); });
    }

    /// Where a fastener is shown, in the view.
    [[nodiscard]] QRect rectOf(qsizetype index) const
    {
        const FastenerButton *button = view.button(index);
        return {button->mapTo(&view, QPoint(0, 0)), button->size()};
    }

    /// What is free of the keys beside it.
    [[nodiscard]] QRect ground() const { return view.ground()->geometry(); }
    [[nodiscard]] bool isInSight(qsizetype index) const { return ground().contains(rectOf(index)); }

    JointView view;
    QStringList names;
    QList<FastenerLook> looks;
};

} // namespace asleft::testing
