#include <draw/palette.h>

namespace asleft {

namespace {

// Blue, yellow and vermillion are those of Wong, Nature Methods 8 (2011) 441, which colour-blind readers tell apart; each look
// darkens or lightens them only as far as its grounds ask for.

Ink lightInk()
{
    Ink ink;
    ink.paper = QColor(0xFAF8F2);
    ink.casting = QColor(0xE8E3D8);
    ink.pad = QColor(0xFFFFFF);
    ink.field = QColor(0xFFFFFF);
    ink.key = QColor(0xF1EDE3);
    ink.chosen = QColor(0x0072B2);
    ink.band = QColor(0xC9DFF0);
    ink.track = QColor(0xE8E3D8);
    ink.line = QColor(0xCFCABD);
    ink.edge = QColor(0x7C776B);
    ink.strongLine = QColor(0x1B1F23);
    ink.text = QColor(0x1B1F23);
    ink.quietText = QColor(0x555B60);
    ink.accentText = QColor(0x005F99);
    ink.wedgeText = QColor(0xA33F00);
    ink.onChosen = QColor(0xFFFFFF);
    ink.shape = QColor(0x1B1F23);
    ink.fill = QColor(0x555B60);
    ink.accent = QColor(0x0072B2);
    ink.paint = QColor(0xF0E442);
    ink.paintEdge = QColor(0x1B1F23);
    ink.wedge = QColor(0xC94F00);
    ink.faint = QColor(0x7C776B);
    return ink;
}

Ink darkInk()
{
    Ink ink;
    ink.paper = QColor(0x14181C);
    ink.casting = QColor(0x252B31);
    ink.pad = QColor(0x343D45);
    ink.field = QColor(0x2A3239);
    ink.key = QColor(0x1C2126);
    ink.chosen = QColor(0x7CC3F2);
    ink.band = QColor(0x1A4059);
    ink.track = QColor(0x2D343A);
    ink.line = QColor(0x3A4147);
    ink.edge = QColor(0x8D959B);
    ink.strongLine = QColor(0xF1EDE3);
    ink.text = QColor(0xF1EDE3);
    ink.quietText = QColor(0xB9BFC4);
    ink.accentText = QColor(0x7CC3F2);
    ink.wedgeText = QColor(0xFF9C66);
    ink.onChosen = QColor(0x0E1216);
    ink.shape = QColor(0xF1EDE3);
    ink.fill = QColor(0xB9BFC4);
    ink.accent = QColor(0x56AEE6);
    ink.paint = QColor(0xF0E442);
    ink.paintEdge = QColor(0x0E1216);
    ink.wedge = QColor(0xE8602E);
    ink.faint = QColor(0x9AA2A8);
    return ink;
}

void setGrounds(QPalette &palette, const Ink &ink)
{
    palette.setColor(QPalette::Window, ink.paper);
    palette.setColor(QPalette::Base, ink.field);
    palette.setColor(QPalette::AlternateBase, ink.casting);
    palette.setColor(QPalette::Button, ink.key);
    palette.setColor(QPalette::ToolTipBase, ink.casting);
    palette.setColor(QPalette::Highlight, ink.chosen);
}

void setTexts(QPalette &palette, const Ink &ink)
{
    palette.setColor(QPalette::WindowText, ink.text);
    palette.setColor(QPalette::Text, ink.text);
    palette.setColor(QPalette::ButtonText, ink.text);
    palette.setColor(QPalette::BrightText, ink.wedgeText);
    palette.setColor(QPalette::ToolTipText, ink.text);
    palette.setColor(QPalette::PlaceholderText, ink.quietText);
    palette.setColor(QPalette::HighlightedText, ink.onChosen);
    palette.setColor(QPalette::Link, ink.accentText);
    palette.setColor(QPalette::LinkVisited, ink.accentText);
}

void setBevels(QPalette &palette, const Ink &ink)
{
    palette.setColor(QPalette::Light, ink.paper);
    palette.setColor(QPalette::Midlight, ink.casting);
    palette.setColor(QPalette::Mid, ink.line);
    palette.setColor(QPalette::Dark, ink.edge);
    palette.setColor(QPalette::Shadow, ink.strongLine);
}

// Disabled text stays readable: it is quiet, its ground is the paper's, and a control that is off says so in its name as well.
void setDisabled(QPalette &palette, const Ink &ink)
{
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::PlaceholderText, QPalette::Link,
                            QPalette::LinkVisited, QPalette::BrightText, QPalette::ToolTipText, QPalette::HighlightedText})
        palette.setColor(QPalette::Disabled, role, ink.quietText);
    for (const auto role : {QPalette::Base, QPalette::Button})
        palette.setColor(QPalette::Disabled, role, ink.paper);
    palette.setColor(QPalette::Disabled, QPalette::Highlight, ink.casting);
}

QPalette paletteOf(const Ink &ink)
{
    QPalette palette;
    setGrounds(palette, ink);
    setTexts(palette, ink);
    setBevels(palette, ink);
    setDisabled(palette, ink);
    return palette;
}

} // namespace

const Ink &ink(Look look)
{
    static const Ink light = lightInk();
    static const Ink dark = darkInk();
    return look == Look::Light ? light : dark;
}

QPalette palette(Look look)
{
    return paletteOf(ink(look));
}

} // namespace asleft
