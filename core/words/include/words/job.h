#pragma once

#include <shop/outlook.h>

#include <QString>
#include <QStringList>

namespace asleft {

// A job: what is open, what is next, what was done.

QString gateName(Gate gate); ///< "before turning the crank"

/// What a line is called: as somebody titled it, else by what it does to its joint, "Loosen: Valve cover".
QString stepTitle(const Step &step, const JobFrame &frame);
/// The same of a line of a job sheet; the joints are the newest revisions.
QString lineTitle(const SheetLine &line, const std::vector<Joint> &joints);

/// An open item: a line and the small line under it, which may be empty.
struct OpenWords {
    QString title;
    QString note;
};
OpenWords openWords(const OpenItem &item, const JobState &state, Moment now);

/// What to do now: "Exhaust 3: above its band. Turn in about 1/10, lock, feel 0.40 again".
QString nextActSentence(const NextAct &act, const JobState &state, const Tool *leaves = nullptr);

/// What an act was: "left intake 1 at 0.30 mm, inside"; also for the tooltip of undo.
QString actText(const Act &act, const JobState &state);

/// Where the job was left: last act, open nuts, the crank, the next act. One line each.
QStringList resumeLines(const JobState &state, Moment now, const Tool *leaves = nullptr);

/// "The crank stands until 16:25: hydraulic tappets are bleeding down."
QString bleedDownText(Moment until, Moment now);
/// What another computer has just done to a point: "Meanwhile T.B. left intake 1 at 0.30 mm at another computer."
QString otherStationText(const Act &act, const JobState &state);

} // namespace asleft
