#include "grey.h"
#include "gui.h"
#include "samples.h"

#include <QPainter>

namespace asleft {

namespace shapes_tests {

QImage drawn(const PointLook &look, Look colours)
{
    QImage image(side, side, QImage::Format_RGB32);
    image.fill(ink(colours).casting);
    QPainter painter(&image);
    paintPoint(painter, image.rect(), look, ink(colours));
    painter.end();
    return image.convertToFormat(QImage::Format_Grayscale8);
}

std::string told(const PointLook &look)
{
    return lookWords(look).toStdString() + " " + hereWords(look.here).toStdString() + (look.inHand ? " in hand" : "");
}

void expectAllApart(const QList<PointLook> &looks, Look colours)
{
    for (qsizetype first = 0; first < looks.size(); ++first) {
        for (qsizetype second = first + 1; second < looks.size(); ++second) {
            const int apart = pixelsApart(blurred(drawn(looks[first], colours)), blurred(drawn(looks[second], colours)));
            EXPECT_GE(apart, 20) << told(looks[first]) << " / " << told(looks[second]);
        }
    }
}

class ShapesInEachLook : public ::testing::TestWithParam<Look> {};

TEST_P(ShapesInEachLook, StatesAreToldApartInBlurredGrey)
{
    expectAllApart(allStates(), GetParam());
}

TEST_P(ShapesInEachLook, StatesAreToldApartOnThePadAndInHand)
{
    QList<PointLook> looks = allStates();
    for (PointLook &look : looks) {
        look.here = Here::InPlan;
        look.inHand = true;
    }
    expectAllApart(looks, GetParam());
}

TEST_P(ShapesInEachLook, PlaceAndHandAreToldApartWhateverTheState)
{
    for (const PointLook &state : allStates()) {
        QList<PointLook> looks;
        for (const Here here : {Here::InPlan, Here::Possible, Here::NotHere}) {
            PointLook look = state;
            look.here = here;
            looks.append(look);
            look.inHand = true;
            looks.append(look);
        }
        expectAllApart({looks[0], looks[2], looks[4]}, GetParam());
        expectAllApart({looks[0], looks[1]}, GetParam());
        expectAllApart({looks[4], looks[5]}, GetParam());
    }
}

TEST_P(ShapesInEachLook, StepsAreToldApart)
{
    QList<QImage> images;
    for (const StepLook look : {StepLook::ToDo, StepLook::InHand, StepLook::Begun, StepLook::Done}) {
        QImage image(side, side, QImage::Format_RGB32);
        image.fill(ink(GetParam()).paper);
        QPainter painter(&image);
        paintStep(painter, image.rect(), look, ink(GetParam()));
        painter.end();
        images.append(blurred(image.convertToFormat(QImage::Format_Grayscale8)));
    }
    for (qsizetype first = 0; first < images.size(); ++first) {
        for (qsizetype second = first + 1; second < images.size(); ++second)
            EXPECT_GE(pixelsApart(images[first], images[second]), 20);
    }
}

INSTANTIATE_TEST_SUITE_P(Looks, ShapesInEachLook, ::testing::Values(Look::Light, Look::Dark));

TEST(Shapes, NothingIsPaintedOutsideTheSquare)
{
    for (PointLook look : allStates()) {
        look.here = Here::InPlan;
        look.inHand = true;
        QImage image(3 * side, 3 * side, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        paintPoint(painter, QRectF(side, side, side, side), look, ink(Look::Light));
        painter.end();
        EXPECT_TRUE(isWhiteAround(image)) << told(look);
    }
}

TEST(Shapes, TheLegendNamesEveryStateOnce)
{
    QList<PointLook> looks;
    QStringList words;
    for (const LegendLine &line : legend()) {
        EXPECT_FALSE(line.words.isEmpty());
        EXPECT_FALSE(words.contains(line.words)) << line.words.toStdString();
        words.append(line.words);
        looks.append(line.look);
    }
    for (const PointStage stage : {PointStage::Found, PointStage::Left}) {
        for (const Verdict verdict : allVerdicts)
            EXPECT_TRUE(looks.contains(PointLook{stage, verdict}));
    }
}

} // namespace shapes_tests

} // namespace asleft
