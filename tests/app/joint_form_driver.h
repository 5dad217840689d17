#pragma once

#include "specs_driver.h"

#include <drawn/pattern_board.h>
#include <drawn/pattern_dot.h>
#include <forms/joint_form.h>
#include <forms/pattern_editor.h>
#include <parts/choice_keys.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/value_field.h>

#include <QMouseEvent>

namespace asleft::testing {

/// The Specs page with a new joint begun.
struct OpenJoint : OpenSpecs {
    OpenJoint() { page.chooseJoint(std::nullopt); }

    JointForm &form() { return *page.jointForm(); }
    PatternEditor &pattern() { return *form().pattern(); }
    PatternDot *dot(int index) { return pattern().board()->dot(index); }

    /// As a person does: the field is emptied, and left by Enter.
    void typeInto(JointField field, const QString &text)
    {
        form().field(field)->edit()->setFocus();
        form().field(field)->edit()->selectAll();
        press(Qt::Key_Delete);
        type(text);
        press(Qt::Key_Return);
    }
    void typeCover()
    {
        typeInto(JointField::Name, QStringLiteral("Head cover"));
        typeInto(JointField::Places, QStringLiteral("12 around a cover"));
        typeInto(JointField::Thread, QStringLiteral("M8"));
        typeInto(JointField::Strength, QStringLiteral("8.8"));
        typeInto(JointField::Target, QStringLiteral("24 ± 2"));
    }
    void save()
    {
        form().focusFirst();
        press(Qt::Key_S, Qt::ControlModifier);
    }
    const Joint &stored()
    {
        if (specs.joints().empty())
            qFatal("no joint was stored");
        return specs.joints().back();
    }
    std::vector<int> numbers()
    {
        std::vector<int> numbers;
        for (const FastenerPosition &place : pattern().pattern().places)
            numbers.push_back(place.number);
        return numbers;
    }
    /// A picture of a plain cover, 400 by 200.
    QString photo()
    {
        QImage image(400, 200, QImage::Format_RGB32);
        image.fill(Qt::darkGray);
        const QString path = shop.folder.filePath(QStringLiteral("cover.png"));
        if (!image.save(path))
            qFatal("the picture could not be written");
        return path;
    }
    void clickPhoto(double across, double down)
    {
        const PatternBoard *board = pattern().board();
        const QPointF at = board->toBoard({20 * across, 10 * down});
        QTest::mouseClick(pattern().board(), Qt::LeftButton, {}, at.toPoint());
    }
};

/// Drags a dot as a mouse does.
inline void drag(PatternDot *dot, QPoint by)
{
    const QPoint from = dot->rect().center();
    QTest::mousePress(dot, Qt::LeftButton, {}, from);
    // The dot goes with the pointer, so what is said in its own coordinates is where it was taken hold of and a step on.
    const QPoint target = dot->mapToParent(from) + by;
    for (int step = 0; step < 4; ++step)
        QTest::mouseMove(dot, dot->mapFromParent(target));
    QMouseEvent move(QEvent::MouseMove, dot->mapFromParent(target), dot->mapToGlobal(dot->mapFromParent(target)), Qt::NoButton,
                     Qt::LeftButton, {});
    QApplication::sendEvent(dot, &move);
    QTest::mouseRelease(dot, Qt::LeftButton, {}, dot->mapFromParent(target));
}

} // namespace asleft::testing
