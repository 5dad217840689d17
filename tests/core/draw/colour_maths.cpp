#include "colour_maths.h"

#include <algorithm>
#include <cmath>

namespace asleft {

namespace {

constexpr double pi = 3.14159265358979323846;

double linear(double channel)
{
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

double companded(double channel)
{
    const double inside = std::clamp(channel, 0.0, 1.0);
    return inside <= 0.0031308 ? 12.92 * inside : 1.055 * std::pow(inside, 1 / 2.4) - 0.055;
}

std::array<double, 3> linearRgb(const QColor &colour)
{
    return {linear(colour.redF()), linear(colour.greenF()), linear(colour.blueF())};
}

double luminance(const QColor &colour)
{
    const auto rgb = linearRgb(colour);
    return 0.2126 * rgb[0] + 0.7152 * rgb[1] + 0.0722 * rgb[2];
}

using Matrix = std::array<std::array<double, 3>, 3>;

std::array<double, 3> times(const Matrix &matrix, const std::array<double, 3> &vector)
{
    std::array<double, 3> result{};
    for (std::size_t row = 0; row < 3; ++row)
        result[row] = matrix[row][0] * vector[0] + matrix[row][1] * vector[1] + matrix[row][2] * vector[2];
    return result;
}

double labCurve(double t)
{
    return t > 216.0 / 24389 ? std::cbrt(t) : (24389.0 / 27 * t + 16) / 116;
}

double degreesOf(double radians)
{
    return radians * 180 / pi;
}

double radiansOf(double degrees)
{
    return degrees * pi / 180;
}

double hue(double a, double b)
{
    if (a == 0 && b == 0)
        return 0;
    const double angle = degreesOf(std::atan2(b, a));
    return angle < 0 ? angle + 360 : angle;
}

double seventhShare(double chroma)
{
    return std::sqrt(std::pow(chroma, 7) / (std::pow(chroma, 7) + std::pow(25.0, 7)));
}

double hueDifference(double first, double second, double chromas)
{
    if (chromas == 0)
        return 0;
    const double difference = second - first;
    if (difference > 180)
        return difference - 360;
    return difference < -180 ? difference + 360 : difference;
}

double meanHue(double first, double second, double chromas)
{
    if (chromas == 0)
        return first + second;
    if (std::abs(first - second) <= 180)
        return (first + second) / 2;
    return first + second < 360 ? (first + second + 360) / 2 : (first + second - 360) / 2;
}

double hueWeight(double mean)
{
    return 1 - 0.17 * std::cos(radiansOf(mean - 30)) + 0.24 * std::cos(radiansOf(2 * mean)) + 0.32 * std::cos(radiansOf(3 * mean + 6)) -
           0.20 * std::cos(radiansOf(4 * mean - 63));
}

} // namespace

double contrast(const QColor &a, const QColor &b)
{
    const double first = luminance(a) + 0.05;
    const double second = luminance(b) + 0.05;
    return std::max(first, second) / std::min(first, second);
}

Lab labOf(const QColor &colour)
{
    const Matrix toXyz{{{0.4124564, 0.3575761, 0.1804375}, {0.2126729, 0.7151522, 0.0721750}, {0.0193339, 0.1191920, 0.9503041}}};
    const auto xyz = times(toXyz, linearRgb(colour));
    const double x = labCurve(xyz[0] / 0.95047);
    const double y = labCurve(xyz[1]);
    const double z = labCurve(xyz[2] / 1.08883);
    return {116 * y - 16, 500 * (x - y), 200 * (y - z)};
}

double deltaE2000(const Lab &first, const Lab &second)
{
    const double stretch = 1 + 0.5 * (1 - seventhShare((std::hypot(first.a, first.b) + std::hypot(second.a, second.b)) / 2));
    const double chroma1 = std::hypot(first.a * stretch, first.b);
    const double chroma2 = std::hypot(second.a * stretch, second.b);
    const double hue1 = hue(first.a * stretch, first.b);
    const double hue2 = hue(second.a * stretch, second.b);
    const double both = chroma1 * chroma2;

    const double byLightness = second.lightness - first.lightness;
    const double byChroma = chroma2 - chroma1;
    const double byHue = 2 * std::sqrt(both) * std::sin(radiansOf(hueDifference(hue1, hue2, both) / 2));

    const double lightness = (first.lightness + second.lightness) / 2;
    const double chroma = (chroma1 + chroma2) / 2;
    const double mean = meanHue(hue1, hue2, both);
    const double fromMiddle = (lightness - 50) * (lightness - 50);
    const double scaleL = 1 + 0.015 * fromMiddle / std::sqrt(20 + fromMiddle);
    const double scaleC = 1 + 0.045 * chroma;
    const double scaleH = 1 + 0.015 * chroma * hueWeight(mean);
    const double turn = -std::sin(radiansOf(60 * std::exp(-std::pow((mean - 275) / 25, 2)))) * 2 * seventhShare(chroma);
    const double l = byLightness / scaleL;
    const double c = byChroma / scaleC;
    const double h = byHue / scaleH;
    return std::sqrt(l * l + c * c + h * h + turn * c * h);
}

QColor seenBy(Sight sight, const QColor &colour)
{
    static const Matrix protan{{{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}}};
    static const Matrix deutan{{{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}}};
    static const Matrix tritan{{{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}}};
    if (sight == Sight::Usual)
        return colour;
    const Matrix &matrix = sight == Sight::Protan ? protan : sight == Sight::Deutan ? deutan : tritan;
    const auto seen = times(matrix, linearRgb(colour));
    const auto channel = [&seen](std::size_t index) { return static_cast<float>(companded(seen[index])); };
    return QColor::fromRgbF(channel(0), channel(1), channel(2));
}

} // namespace asleft
