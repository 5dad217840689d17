#include <draw/engine_drawing.h>

#include <QRegularExpression>
#include <QStringList>

#include <algorithm>

namespace asleft {

namespace {

QString labelOf(const EngineDesign &design, Cylinder cylinder)
{
    return QString::fromStdString(design.label(cylinder));
}

QStringList wordsOf(const QString &text)
{
    static const QRegularExpression separators(QStringLiteral("[\\s,\\-–]+"));
    return text.split(separators, Qt::SkipEmptyParts);
}

QString numberingOf(const EngineText &text)
{
    if (!text.numbering.empty())
        return QString::fromStdString(text.numbering);
    const CylinderRange range = cylinderRange(text.layout);
    return QString::fromStdString(usualNumbering(text.layout, std::clamp(text.cylinders, range.fewest, range.most)));
}

/// A label that stands twice is drawn once.
QList<QList<QString>> banksOf(const EngineText &text)
{
    QList<QList<QString>> banks;
    QStringList seen;
    for (const QString &part : numberingOf(text).split(u'/')) {
        QList<QString> bank;
        for (const QString &label : wordsOf(part)) {
            if (!seen.contains(label))
                bank.append(label);
            seen.append(label);
        }
        banks.append(bank);
    }
    return banks;
}

QList<QString> readableOrder(const EngineText &text, const QList<QList<QString>> &banks)
{
    QList<QString> order;
    for (const QString &label : wordsOf(QString::fromStdString(text.firingOrder))) {
        const bool known = std::any_of(banks.begin(), banks.end(), [&label](const auto &bank) { return bank.contains(label); });
        if (known && !order.contains(label))
            order.append(label);
    }
    return order;
}

} // namespace

EngineSketch sketchOf(const EngineDesign &design)
{
    EngineSketch sketch;
    sketch.layout = design.layout;
    sketch.rotation = design.rotation;
    sketch.complete = true;
    for (const auto &bank : design.banks) {
        QList<QString> labels;
        for (const Cylinder cylinder : bank)
            labels.append(labelOf(design, cylinder));
        sketch.banks.append(labels);
    }
    for (const Cylinder cylinder : design.firingOrder)
        sketch.firingOrder.append(labelOf(design, cylinder));
    return sketch;
}

EngineSketch sketchOf(const EngineText &text, DecimalMark mark)
{
    if (const auto design = designEngine(text, mark))
        return sketchOf(*design);
    EngineSketch sketch;
    sketch.layout = text.layout;
    sketch.rotation = text.rotation;
    sketch.banks = banksOf(text);
    sketch.firingOrder = readableOrder(text, sketch.banks);
    return sketch;
}

} // namespace asleft
