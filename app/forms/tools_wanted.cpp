#include "tools_wanted.h"

#include <words/joints.h>
#include <words/torque_tools.h>

#include <QCoreApplication>

#include <algorithm>
#include <utility>

namespace asleft {

namespace {

class ToolsWantedWords {
    Q_DECLARE_TR_FUNCTIONS(ToolsWantedWords)
};

bool isTurnedOn(const Joint &joint)
{
    return std::ranges::any_of(joint.passes, [](const Pass &pass) { return std::holds_alternative<AngleOn>(pass); });
}

QString angleLine(const std::vector<Tool> &tools)
{
    const auto gauge = std::ranges::find(tools, ToolKind::AngleGauge, &Tool::kind);
    return gauge == tools.end() ? ToolsWantedWords::tr("the angle: by a mark, there is no angle gauge on the rack")
                                : ToolsWantedWords::tr("the angle: %1").arg(QString::fromStdString(gauge->name));
}

} // namespace

QList<Notes::Note> toolsWantedNotes(const std::vector<Joint> &joints, const std::vector<Tool> &tools, std::chrono::sys_days today)
{
    const Rack rack = rackOf(tools);
    QList<Notes::Note> notes;
    for (const Joint &joint : joints) {
        const QString name = QString::fromStdString(joint.text.name);
        QStringList lines;
        QList<Notes::Note> unreached;
        if (const QString drive = driveLine(joint); !drive.isEmpty())
            lines.append(drive);
        for (const ToolWanted &wanted : toolsWanted(joint, rack, today)) {
            const QString line = toolWantedLine(wanted, joint, rack);
            if (wanted.advice.reaching.empty())
                unreached.append({ToolsWantedWords::tr("%1: none reaches it").arg(name), line});
            else
                lines.append(line);
        }
        if (isTurnedOn(joint))
            lines.append(angleLine(tools));
        if (lines.isEmpty() && unreached.isEmpty())
            lines.append(ToolsWantedWords::tr("no torque is asked for"));
        for (const QString &line : std::as_const(lines))
            notes.append({&line == &lines.constFirst() ? name : QString(), line});
        notes.append(unreached);
    }
    return notes;
}

} // namespace asleft
