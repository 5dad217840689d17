#include <draw/fonts.h>

#include <QString>

namespace asleft {

namespace {

struct Setting {
    int pixels;
    QFont::Weight weight;
};

Setting settingOf(TextSize size)
{
    switch (size) {
    case TextSize::Title: return {24, QFont::Bold};
    case TextSize::Now: return {19, QFont::Bold};
    case TextSize::Body: return {15, QFont::Normal};
    case TextSize::BodyStrong: return {15, QFont::Bold};
    case TextSize::Small: return {13, QFont::Normal};
    case TextSize::SmallStrong: return {13, QFont::Bold};
    case TextSize::Fine: return {11, QFont::Normal};
    case TextSize::FineStrong: return {11, QFont::Bold};
    case TextSize::Number: return {24, QFont::Bold};
    case TextSize::Value: return {40, QFont::Bold};
    }
    return {15, QFont::Normal};
}

} // namespace

QString textFamily()
{
    return QStringLiteral("DejaVu Sans");
}

QFont textFont(TextSize size)
{
    const Setting setting = settingOf(size);
    QFont font(textFamily());
    font.setPixelSize(setting.pixels);
    font.setWeight(setting.weight);
    return font;
}

} // namespace asleft
