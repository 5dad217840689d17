#include <words/errors.h>
#include <words/numbers.h>
#include <words/times.h>

#include <QCoreApplication>
#include <QRegularExpression>

namespace asleft {

namespace {

/// The sentence of a kind, with %1, %2, %3 for its arguments. Each says what is wrong, what was kept, and what to do.
const char *patternOf(ErrorKind kind)
{
#define SAY(text) QT_TRANSLATE_NOOP("ErrorWords", text)
    switch (kind) {
    case ErrorKind::EmptyText: return SAY("Nothing was typed. Nothing was stored; type a value, such as 0.25 mm or 24 N·m.");
    case ErrorKind::NotANumber: return SAY("“%1” is not a number. Nothing was stored; type digits, such as 0.25 mm or 24 N·m.");
    case ErrorKind::AmbiguousNumber: return SAY("“%1” can be read two ways. Nothing was stored; type %2 or %3.");
    case ErrorKind::TooManyDigits: return SAY("“%1” has more than twelve digits. Nothing was stored; type it with fewer.");
    case ErrorKind::NegativeValue: return SAY("“%1” is below zero. Nothing was stored; type the value without the minus sign.");
    case ErrorKind::UnknownUnit: return SAY("“%1” is not a unit for this value. Nothing was stored; use one of: %2.");
    case ErrorKind::TextLeftOver: return SAY("“%1” has no place behind the value. Nothing was stored; take it away and try again.");
    case ErrorKind::ValueTooLarge: return SAY("“%1” is more than can be kept here. Nothing was stored; the most is %2.");
    case ErrorKind::ValueTooSmall: return SAY("“%1” is less than can be kept here. Nothing was stored; the least is %2.");
    case ErrorKind::TextTooLong: return SAY("The text has %1 characters. Nothing was stored; type at most %2.");
    case ErrorKind::DivisionByZero: return SAY("“%1” divides by zero. Nothing was stored; type a fraction such as 5/8 in.");
    case ErrorKind::BandUpsideDown: return SAY("The low end %1 is above the high end %2. The spec is as it was; type the low end first.");
    case ErrorKind::BandWithoutValue: return SAY("“%1” names no value. The spec is as it was; type a band such as 0.20 to 0.30 mm.");
    case ErrorKind::BandSystemsDiffer:
        return SAY("%1 and %2 do not overlap, so one of them is misread. The spec is as it was; compare both with the manual.");
    case ErrorKind::BandSameSystem:
        return SAY(
            "The second band, %1, is in the same system as the first. The spec is as it was; type it as printed in the other system.");
    case ErrorKind::CylinderCount:
        return SAY(
            "An engine of this layout cannot have %1 cylinders here. Nothing was changed; type a number from %2 to %3 that it can have.");
    case ErrorKind::BanksForLayout:
        return SAY("The numbering has %1 banks, the layout has %2. Nothing was changed; part the banks with a slash, front first.");
    case ErrorKind::CylinderLabelTwice:
        return SAY("Cylinder “%1” is named twice in the numbering. Nothing was changed; name each one once.");
    case ErrorKind::CylinderLabelCount:
        return SAY("The numbering names %1 cylinders, the engine has %2. Nothing was changed; name every one once.");
    case ErrorKind::CylindersInUse:
        return SAY("Jobs of %1 have been worked on, and they hang on its cylinders, firing order and gaps. Nothing was changed; type "
                   "another engine as a new vehicle.");
    case ErrorKind::FiringOrderMissing:
        return SAY("Cylinder %1 is missing from the firing order. Nothing was changed; name every cylinder once.");
    case ErrorKind::FiringOrderTwice: return SAY("Cylinder %1 fires twice in the order. Nothing was changed; name every cylinder once.");
    case ErrorKind::FiringOrderUnknown:
        return SAY("The engine has no cylinder “%1” to fire. Nothing was changed; use the names of the numbering.");
    case ErrorKind::GapNotAnAngle: return SAY("“%1” is not a firing gap. Nothing was changed; type degrees, such as 90-270.");
    case ErrorKind::GapsCount:
        return SAY(
            "There are %1 firing gaps where %2 are wanted. Nothing was changed; type one a cylinder, or a pattern that repeats evenly.");
    case ErrorKind::GapsSum:
        return SAY("The firing gaps add up to %1°. Nothing was changed; they must make two turns, 720°, of a two-stroke one, 360°.");
    case ErrorKind::GapNotPositive: return SAY("“%1” is no gap between two firings. Nothing was changed; type degrees above zero.");
    case ErrorKind::ValveOrderLength:
        return SAY("The valve order has %1 letters, the bank has %2 valves. Nothing was changed; type one letter a valve, front first.");
    case ErrorKind::ValveOrderLetter: return SAY("“%1” is no valve. Nothing was changed; type I for an intake and E for an exhaust.");
    case ErrorKind::ValveOrderCount:
        return SAY(
            "The valve order has %1 intakes and %2 exhausts, there must be %3 of each. Nothing was changed; look along the head again.");
    case ErrorKind::CamArcTooLong:
        return SAY("By these events the %1 arc lasts %2°. Nothing was changed; check the events with the manual.");
    case ErrorKind::ValvesACylinder:
        return SAY("“%1” are no valves of a cylinder. Nothing was changed; type 2 to 5, or intakes and exhausts as 2+1.");
    case ErrorKind::BridgeWithoutPair:
        return SAY("A bridge opens two valves at once, and neither side has an even number. Nothing was changed; check the valves, or say "
                   "that they are not bridged.");
    case ErrorKind::RowsUneven:
        return SAY("%1 cylinders do not stand evenly in %2 rows. Nothing was changed; check the count or the rows.");
    case ErrorKind::BarringUnread: return SAY("“%1” is no ring gear and pinion. Nothing was changed; type the teeth of both, as 132/11.");
    case ErrorKind::PlanNeedsCam:
        return SAY("The fewest positions cannot be found with an assumed cam. The plan is as it was; type the cam's events, or choose "
                   "another way.");
    case ErrorKind::PlanNotReached:
        return SAY("No mark reaches %1 with this margin. The plan is as it was; ask for less margin, or turn by more marks.");
    case ErrorKind::PlanNotForEngine:
        return SAY("This way of turning is for another kind of engine. The plan is as it was; choose another way.");
    case ErrorKind::TableEmpty: return SAY("The table has no positions. Nothing was changed; type it as the manual prints it.");
    case ErrorKind::TablePositionUnread: return SAY("“%1” is no crank position. Nothing was changed; name a cylinder and what it is at.");
    case ErrorKind::TablePointUnread: return SAY("“%1” names no point. Nothing was changed; type them as IN 1 2 4 EX 1 3 INJ 2.");
    case ErrorKind::TableCylinder:
        return SAY("The engine has no cylinder “%1”. Nothing was changed; check the table against the numbering.");
    case ErrorKind::TablePointTwice: return SAY("%1 stands at two positions of the table. Nothing was changed; each point is set once.");
    case ErrorKind::LeavesUnread:
        return SAY("“%1” is no leaf. The set is as it was; type its leaves with spaces between, such as 0.05 0.10 0.15 mm.");
    case ErrorKind::NameMissing: return SAY("There is no text for: %1. Nothing was stored; type it first.");
    case ErrorKind::PitchOutOfRange: return SAY("“%1” is no pitch of an adjusting screw. Nothing was stored; type it as 1 mm or 1/24 in.");
    case ErrorKind::MeterUnread: return SAY("“%1” is no meter reading. Nothing was stored; type the figures on the meter.");
    case ErrorKind::MeterRunsBack:
        return SAY("The meter read %2 before and %1 is less. Nothing was stored; read it again, or say that it is another meter.");
    case ErrorKind::BleedDownUnread: return SAY("“%1” is no time to bleed down. Nothing was stored; type minutes or hours, as 15 min.");
    case ErrorKind::VehicleTaken: return SAY("There is an engine in %1 already. Nothing was moved; put that one onto the stand first.");
    case ErrorKind::NotFound: return SAY("Not found: %1. Nothing was changed; open the page once more to see what there is now.");
    case ErrorKind::WrongJob: return SAY("%1 does not belong to this job. Nothing was logged; open the job it belongs to.");
    case ErrorKind::NothingToUndo: return SAY("There is nothing of yours to undo in this job. Everything is as it was.");
    case ErrorKind::RestedOn: return SAY("A later act rests on this one: %1. Nothing was undone; undo the later one first.");
    case ErrorKind::NutStillOpen: return SAY("Lock nut open: %1. The crank was not moved; set, lock and feel again first.");
    case ErrorKind::CrankNotConfirmed:
        return SAY("Nobody has said in this sitting where the crank stands. Nothing was logged; look at mark and stroke and confirm, or "
                   "say unknown.");
    case ErrorKind::CautionsNotRead: return SAY("The cautions have not been read in this sitting. Nothing was logged; read them first.");
    case ErrorKind::NothingToKeep: return SAY("%1 has no reading outside its band to keep. Nothing was logged; log what was left first.");
    case ErrorKind::StillBleedingDown:
        return SAY("Hydraulic tappets are bleeding down until %1, and a valve could be bent. The crank was not moved; wait till then.");
    case ErrorKind::NothingToLog: return SAY("The sheet is empty. Nothing was logged; type what was written on it first.");
    case ErrorKind::PersonMissing:
        return SAY("Nobody has been chosen as who does the work. Nothing was logged; choose your initials first.");
    case ErrorKind::ThreadUnread: return SAY("“%1” is no thread. Nothing was stored; type it as M8, M8x1, 3/8-24 or 1/4-20 UNC.");
    case ErrorKind::ThreadUnknown: // with nothing to offer, see threadUnknown()
        return SAY("There is no thread “%1”. Nothing was stored; measure it again. Of this diameter there are: %2.");
    case ErrorKind::ClassUnknown: return SAY("“%1” is no strength class. Nothing was stored; type it as 8.8, grade 5 or A2-70.");
    case ErrorKind::PatternUnread:
        return SAY("“%1” is no pattern. Nothing was changed; type it as 12 around a circle, 2 rows of 7, or 4 by 6 rectangle.");
    case ErrorKind::PatternCount: return SAY("A pattern of %1 cannot be made. Nothing was changed; it takes %2 to %3 here.");
    case ErrorKind::PatternNumber: return SAY("Number %1 cannot stand there. Nothing was changed; give each fastener a number of its own.");
    case ErrorKind::PlacesTooClose:
        return SAY("Fasteners %1 and %2 sit in one place. Nothing was changed; drag one of them to where it belongs.");
    case ErrorKind::OrderUnread: return SAY("“%1” is no fastener number. The order is as it was; type it as 7-3-1-5.");
    case ErrorKind::OrderUnknown: return SAY("No fastener has number %1. The order is as it was; compare it with the drawing.");
    case ErrorKind::OrderTwice: return SAY("Fastener %1 stands twice in the order. The order is as it was; name each one once.");
    case ErrorKind::OrderMissing: return SAY("Fastener %1 is missing from the order. The order is as it was; name each one once.");
    case ErrorKind::PassUnread:
        return SAY("“%1” is no pass. The passes are as they were; type them as finger, 50 %, target, +90°, settle 3. Settle "
                   "takes 1 to 10 rounds.");
    case ErrorKind::PassOverTarget:
        return SAY("The pass “%1” goes past the target. The passes are as they were; type at most 100 %, or correct the target.");
    case ErrorKind::PassesTooMany: return SAY("There are %1 passes. The passes are as they were; %2 is the most.");
    case ErrorKind::PassesEmpty: return SAY("There are no passes. Nothing was stored; type at least one, such as target.");
    case ErrorKind::PassesFall:
        return SAY("The pass “%1” asks for no more than the one before. The passes are as they were; type them as they rise.");
    case ErrorKind::FingerNotFirst: return SAY("Finger-tight comes first. The passes are as they were; put it in front of the others.");
    case ErrorKind::TargetMissing: return SAY("The pass “%1” needs a target. Nothing was stored; type the torque the manual asks for.");
    case ErrorKind::AngleWithoutSnug:
        return SAY("The pass “%1” has no torque before it to turn on from. The passes are as they were; put a snug torque first.");
    case ErrorKind::AngleTooLarge:
        return SAY("The angles add up to %1°, more than two turns. The passes are as they were; compare them with the manual.");
    case ErrorKind::SettleNotAllowed:
        return SAY("Settling is only for joints with limiters, or where the manual says so. The passes are as they were; say which, or "
                   "take it out.");
    case ErrorKind::SettleAfterAngle:
        return SAY("A joint turned by an angle is never settled by torque again. The passes are as they were; take one of them out.");
    case ErrorKind::SettleMisplaced: return SAY("Settling comes once, after the target. The passes are as they were; put it last.");
    case ErrorKind::TorqueAfterAngle:
        return SAY("The pass “%1” stands after an angle. The passes are as they were; put all torques before the angles.");
    case ErrorKind::PassesStopShort:
        return SAY("The passes end at “%1”, below the target. The passes are as they were; put target last, or correct the target.");
    case ErrorKind::AdapterOutOfRange:
        return SAY(
            "This lever or adapter cannot be. Nothing was changed; measure from the middle of the drive to the grip mark, and to the "
            "fastener.");
    case ErrorKind::AdapterReversed:
        return SAY("The adapter reaches back to the hand, so the wrench shows nothing. Nothing was changed; turn the adapter or take a "
                   "longer wrench.");
    case ErrorKind::TorqueRange: return SAY("A wrench cannot reach from %1 to %2. Nothing was stored; type the range marked on it.");
    case ErrorKind::DeviationOutOfRange: return SAY("A deviation of “%1” is none. Nothing was stored; type percent of the reading, as 4.");
    case ErrorKind::LeverOutOfRange:
        return SAY("This lever cannot be. Nothing was stored; measure from the middle of the drive to the grip mark.");
    case ErrorKind::LeverMissing:
        return SAY("The lever of %1 is not known, so its setting with an adapter cannot be told. Nothing was changed; measure from the "
                   "drive to the grip mark and type it under Tools.");
    case ErrorKind::DateUnread: return SAY("“%1” is no date. Nothing was stored; type it as 2027-03-31.");
    case ErrorKind::LoosenedUnread:
        return SAY("“%1” is no loosening torque. Nothing was logged; type it as 28 N·m, or choose what was found.");
    case ErrorKind::JointInUse:
        return SAY(
            "Jobs have worked on the fasteners of %1, so their places and numbers stay. Nothing was stored; describe another joint.");
    case ErrorKind::JointTaken:
        return SAY("This engine has a joint named %1 already. Nothing was stored; open that one, or choose another name.");
    case ErrorKind::FastenerUnknown: return SAY("The joint has no fastener %1. Nothing was logged; look at the drawing.");
    case ErrorKind::TickOutOfTurn:
        return SAY("Fastener %1 is not to be ticked in this pass. Nothing was logged; take the one the bench names.");
    case ErrorKind::NotTicked: return SAY("Fastener %1 has no tick to take back. Everything is as it was.");
    case ErrorKind::ReasonMissing: return SAY("A reason is missing. Nothing was logged; type why in a few words.");
    case ErrorKind::NothingToAccept: return SAY("There is nothing here to accept. Everything is as it was.");
    case ErrorKind::ToolNotForTorque: return SAY("%1 measures no torque. Nothing was changed; choose a torque wrench.");
    case ErrorKind::JointChanged:
        return SAY("Another seat has just revised %1, so what was shown here is no longer asked. Nothing was logged; look again.");
    case ErrorKind::StepByFasteners: return SAY("“%1” is done by its fasteners. Nothing was logged; tighten them, or say by feel.");
    case ErrorKind::ToolNotThat: return SAY("%1 is not a tool for this. Nothing was changed; choose another.");
    case ErrorKind::FileMissing: return SAY("There is no file “%1”. Nothing was opened; choose another, or begin a new garage.");
    case ErrorKind::FileExists: return SAY("“%1” is there already and was left as it is. Choose another name.");
    case ErrorKind::NotAGarage: return SAY("“%1” is not a garage of Asleft. It was left as it is; choose another file.");
    case ErrorKind::GarageNewer:
        return SAY("“%1” was written by a newer Asleft: it has version %2, this one knows %3. It was left as it is; open it with the newer "
                   "Asleft.");
    case ErrorKind::GarageReadOnly:
        return SAY("“%1” may not be written to. Nothing was stored; allow writing to the file and its folder, then try again.");
    case ErrorKind::GarageBusy: return SAY("“%1” is in use by another seat just now. Nothing was stored; try again in a moment.");
    case ErrorKind::NoRoom:
        return SAY("There is no room left to write “%1”. Everything logged before is kept, this is not; make room and try again.");
    case ErrorKind::GarageMoved:
        return SAY("“%1” was moved or replaced while it was open. What was logged before is in the file that was moved; open that one.");
    case ErrorKind::DiskFault:
        return SAY("“%1” could not be written: %2. What was being written is not stored, what was there before is; try another disk.");
    case ErrorKind::Damaged: return SAY("“%1” is damaged: %2. It was left as it is; open the latest backup.");
    case ErrorKind::UpgradeFailed:
        return SAY("“%1” could not be brought up to date, at step %2: %3. It is as it was, and the copy made before stands beside it.");
    case ErrorKind::Database:
        return SAY("The garage could not be read or written: %1. Nothing was stored; try again, and keep a backup at hand.");
    }
#undef SAY
    return "";
}

/// Where the tables have nothing of that diameter there is nothing to offer.
const char *threadUnknown()
{
    return QT_TRANSLATE_NOOP("ErrorWords", "There is no thread “%1”. Nothing was stored; measure it again.");
}

QString argumentOf(const Error &error, std::size_t index)
{
    return index < error.arguments.size() ? QString::fromStdString(error.arguments[index]) : QStringLiteral("…");
}

/// Both ways to read a number with one mark before three digits, each written so that it is not ambiguous again; for a text
/// without such a number, an example of each.
struct TwoWays {
    QString withDecimals;
    QString withoutMark;
};

TwoWays bothReadings(const QString &text)
{
    static const QRegularExpression number(QStringLiteral("([0-9]+)[.,]([0-9]{3})"));
    const QRegularExpressionMatch match = number.match(text);
    if (!match.hasMatch())
        return {QStringLiteral("1%1%2").arg(QLocale().decimalPoint(), QStringLiteral("25")), QStringLiteral("1250")};
    QString decimals = match.captured(2);
    const QString whole = match.captured(1);
    while (decimals.endsWith(u'0'))
        decimals.chop(1);
    if (decimals.isEmpty())
        return {whole, whole + match.captured(2)};
    if (decimals.size() == 3 && decimalMark() == DecimalMark::Comma)
        decimals += u'0';
    return {whole + QLocale().decimalPoint() + decimals, whole + match.captured(2)};
}

/// The time behind StillBleedingDown, which comes as a number.
QString timeOf(const QString &milliseconds)
{
    bool isNumber = false;
    const qint64 moment = milliseconds.toLongLong(&isNumber);
    return isNumber ? momentText(Moment{moment}) : milliseconds;
}

} // namespace

QString sentence(const Error &error)
{
    const bool alone = error.kind == ErrorKind::ThreadUnknown && (error.arguments.size() < 2 || error.arguments[1].empty());
    const QString pattern = QCoreApplication::translate("ErrorWords", alone ? threadUnknown() : patternOf(error.kind));
    const QString first = error.kind == ErrorKind::StillBleedingDown ? timeOf(argumentOf(error, 0)) : argumentOf(error, 0);
    if (error.kind == ErrorKind::AmbiguousNumber) {
        const TwoWays ways = bothReadings(first);
        return pattern.arg(first, ways.withDecimals, ways.withoutMark);
    }
    if (pattern.contains(QStringLiteral("%3")))
        return pattern.arg(first, argumentOf(error, 1), argumentOf(error, 2));
    if (pattern.contains(QStringLiteral("%2")))
        return pattern.arg(first, argumentOf(error, 1));
    return pattern.contains(QStringLiteral("%1")) ? pattern.arg(first) : pattern;
}

} // namespace asleft
