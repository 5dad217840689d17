#include "gui.h"
#include "samples.h"

#include <QImage>
#include <QPainter>

#include <algorithm>
#include <cstdlib>

namespace asleft {

namespace {

constexpr int side = 44; // the smallest a point is drawn on the bench

QImage drawn(const PointLook &look, Look colours)
{
    QImage image(side, side, QImage::Format_RGB32);
    image.fill(ink(colours).casting);
    QPainter painter(&image);
    paintPoint(painter, image.rect(), look, ink(colours));
    painter.end();
    return image.convertToFormat(QImage::Format_Grayscale8);
}

int greyAt(const QImage &image, int x, int y)
{
    return image.constScanLine(std::clamp(y, 0, side - 1))[std::clamp(x, 0, side - 1)];
}

/// Each pixel the mean of itself and its neighbours, one pixel around.
QImage blurred(const QImage &image)
{
    QImage result(image.size(), QImage::Format_Grayscale8);
    for (int y = 0; y < side; ++y) {
        for (int x = 0; x < side; ++x) {
            int sum = 0;
            for (int near = 0; near < 9; ++near)
                sum += greyAt(image, x + near % 3 - 1, y + near / 3 - 1);
            result.scanLine(y)[x] = static_cast<uchar>(sum / 9);
        }
    }
    return result;
}

/// How many pixels differ by more than a tenth of the range.
int pixelsApart(const QImage &first, const QImage &second)
{
    int count = 0;
    for (int y = 0; y < side; ++y) {
        for (int x = 0; x < side; ++x)
            count += std::abs(greyAt(first, x, y) - greyAt(second, x, y)) > 25 ? 1 : 0;
    }
    return count;
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

class EachLook : public ::testing::TestWithParam<Look> {};

TEST_P(EachLook, StatesAreToldApartInBlurredGrey)
{
    expectAllApart(allStates(), GetParam());
}

TEST_P(EachLook, StatesAreToldApartOnThePadAndInHand)
{
    QList<PointLook> looks = allStates();
    for (PointLook &look : looks) {
        look.here = Here::InPlan;
        look.inHand = true;
    }
    expectAllApart(looks, GetParam());
}

TEST_P(EachLook, PlaceAndHandAreToldApartWhateverTheState)
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

TEST_P(EachLook, StepsAreToldApart)
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

INSTANTIATE_TEST_SUITE_P(Looks, EachLook, ::testing::Values(Look::Light, Look::Dark));

/// White wherever a square in the middle third of `image` has not been painted to.
bool isWhiteAround(const QImage &image)
{
    const QRect square(side - 1, side - 1, side + 2, side + 2);
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            if (!square.contains(x, y) && image.pixelColor(x, y) != QColor(Qt::white))
                return false;
        }
    }
    return true;
}

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

} // namespace

} // namespace asleft
