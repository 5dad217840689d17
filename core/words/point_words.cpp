#include <words/points.h>

#include <QCoreApplication>

namespace asleft {

namespace {

class PointWords {
    Q_DECLARE_TR_FUNCTIONS(PointWords)
};

/// How many points of the same kind and side a cylinder has.
int alike(const EngineDesign &design, AdjusterRef point)
{
    const bool ofEachLash = point.kind == PointKind::Lash || point.kind == PointKind::BridgeScrew;
    return ofEachLash ? design.train.lashes(point.side) : 1;
}

/// "2", or "2a" where a cylinder has several of the kind.
QString markOf(const EngineDesign &design, AdjusterRef point)
{
    const QString label = QString::fromStdString(design.label(point.cylinder));
    return alike(design, point) > 1 ? label + QChar(u'a' + point.number) : label;
}

QString nameAtHead(AdjusterRef point)
{
    const bool intake = point.side == Side::Intake;
    switch (point.kind) {
    case PointKind::Lash: return intake ? PointWords::tr("Intake %1") : PointWords::tr("Exhaust %1");
    case PointKind::BridgeScrew: return intake ? PointWords::tr("Intake bridge %1") : PointWords::tr("Exhaust bridge %1");
    case PointKind::Decompressor: return PointWords::tr("Decompressor %1");
    case PointKind::Injector: return PointWords::tr("Injector %1");
    }
    return {};
}

QString nameInText(AdjusterRef point)
{
    const bool intake = point.side == Side::Intake;
    switch (point.kind) {
    case PointKind::Lash: return intake ? PointWords::tr("intake %1") : PointWords::tr("exhaust %1");
    case PointKind::BridgeScrew: return intake ? PointWords::tr("intake bridge %1") : PointWords::tr("exhaust bridge %1");
    case PointKind::Decompressor: return PointWords::tr("decompressor %1");
    case PointKind::Injector: return PointWords::tr("injector %1");
    }
    return {};
}

} // namespace

QString sideName(Side side)
{
    return side == Side::Intake ? PointWords::tr("intake") : PointWords::tr("exhaust");
}

QString pointName(const EngineDesign &design, AdjusterRef valve)
{
    return nameAtHead(valve).arg(markOf(design, valve));
}

QString pointInText(const EngineDesign &design, AdjusterRef valve)
{
    return nameInText(valve).arg(markOf(design, valve));
}

QString pointShort(const EngineDesign &design, AdjusterRef valve)
{
    return QString::fromStdString(shortName(design, valve));
}

QString pointName(const JobFrame &frame, PointId point)
{
    const SettingPoint *found = frame.point(point);
    return found ? pointName(frame.engine.design, found->adjuster) : QString();
}

QString pointInText(const JobFrame &frame, PointId point)
{
    const SettingPoint *found = frame.point(point);
    return found ? pointInText(frame.engine.design, found->adjuster) : QString();
}

QString pointShort(const JobFrame &frame, PointId point)
{
    const SettingPoint *found = frame.point(point);
    return found ? pointShort(frame.engine.design, found->adjuster) : QString();
}

} // namespace asleft
