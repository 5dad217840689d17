#include <words/errors.h>
#include <words/numbers.h>
#include <words/times.h>

#include <QCoreApplication>
#include <QRegularExpression>

namespace asleft {

namespace {

class ErrorWords {
    Q_DECLARE_TR_FUNCTIONS(ErrorWords)
};

const QString unknownArgument = QStringLiteral("…");

QString argumentOf(const Error &error, std::size_t index)
{
    return index < error.arguments.size() ? QString::fromStdString(error.arguments[index]) : unknownArgument;
}

int countOf(const Error &error, std::size_t index)
{
    return argumentOf(error, index).toInt();
}

QString nounText(Noun noun)
{
    switch (noun) {
    case Noun::Vehicle: return ErrorWords::tr("vehicle");
    case Noun::Engine: return ErrorWords::tr("engine");
    case Noun::Job: return ErrorWords::tr("job");
    case Noun::Step: return ErrorWords::tr("step");
    case Noun::Joint: return ErrorWords::tr("joint");
    case Noun::LashSpec: return ErrorWords::tr("lash spec");
    case Noun::DecisionRule: return ErrorWords::tr("decision rule");
    case Noun::Initials: return ErrorWords::tr("initials");
    case Noun::Length: return ErrorWords::tr("length");
    case Noun::Point: return ErrorWords::tr("point");
    case Noun::PointThatWasLeft: return ErrorWords::tr("point that was left");
    case Noun::PointToSetHere: return ErrorWords::tr("point to set here");
    case Noun::FeelerSet: return ErrorWords::tr("feeler set");
    case Noun::Gauge: return ErrorWords::tr("gauge");
    case Noun::TorqueWrench: return ErrorWords::tr("torque wrench");
    case Noun::AngleGauge: return ErrorWords::tr("angle gauge");
    case Noun::Adapter: return ErrorWords::tr("adapter");
    case Noun::Socket: return ErrorWords::tr("socket");
    case Noun::Tool: return ErrorWords::tr("tool");
    case Noun::IntakeArc: return ErrorWords::tr("intake", "arc of a cam");
    case Noun::ExhaustArc: return ErrorWords::tr("exhaust", "arc of a cam");
    case Noun::SecondExhaustArc: return ErrorWords::tr("second exhaust", "arc of a cam");
    case Noun::InjectorArc: return ErrorWords::tr("injector", "arc of a cam");
    case Noun::Act: return ErrorWords::tr("act");
    case Noun::Spec: return ErrorWords::tr("spec");
    case Noun::Calibration: return ErrorWords::tr("calibration of tool");
    case Noun::FilePage: return ErrorWords::tr("page", "of a garage file");
    }
    return {};
}

QString nounOf(const Error &error)
{
    return error.noun ? nounText(*error.noun) : unknownArgument;
}

QString cylinders(int count)
{
    return ErrorWords::tr("%n cylinder(s)", nullptr, count);
}

/// What of a garage cannot be read, by its numbers, or in the words of the database.
QString damagedPart(const Error &error)
{
    const QString second = argumentOf(error, 1);
    if (!error.noun)
        return second;
    return error.arguments.size() < 3
               ? ErrorWords::tr("%1 %2", "what cannot be read, its number").arg(nounOf(error), second)
               : ErrorWords::tr("%1 %2 revision %3", "what cannot be read, its number").arg(nounOf(error), second, argumentOf(error, 2));
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

/// Each says what is wrong, what was kept, and what to do.
QString sentence(const Error &error)
{
    const QString first = argumentOf(error, 0);
    const QString second = argumentOf(error, 1);
    const QString third = argumentOf(error, 2);
    const QString noun = nounOf(error);
    switch (error.kind) {
    case ErrorKind::EmptyText: return ErrorWords::tr("Nothing was typed. Nothing was stored; type a value, such as 0.25 mm or 24 N·m.");
    case ErrorKind::NotANumber:
        return ErrorWords::tr("“%1” is not a number. Nothing was stored; type digits, such as 0.25 mm or 24 N·m.").arg(first);
    case ErrorKind::AmbiguousNumber:
        return ErrorWords::tr("“%1” can be read two ways. Nothing was stored; type %2 or %3.")
            .arg(first, bothReadings(first).withDecimals, bothReadings(first).withoutMark);
    case ErrorKind::TooManyDigits:
        return ErrorWords::tr("“%1” has more than twelve digits. Nothing was stored; type it with fewer.").arg(first);
    case ErrorKind::NegativeValue:
        return ErrorWords::tr("“%1” is below zero. Nothing was stored; type the value without the minus sign.").arg(first);
    case ErrorKind::UnknownUnit:
        return ErrorWords::tr("“%1” is not a unit for this value. Nothing was stored; use one of: %2.").arg(first, second);
    case ErrorKind::TextLeftOver:
        return ErrorWords::tr("“%1” has no place behind the value. Nothing was stored; take it away and try again.").arg(first);
    case ErrorKind::ValueTooLarge:
        return ErrorWords::tr("“%1” is more than can be kept here. Nothing was stored; the most is %2.").arg(first, second);
    case ErrorKind::ValueTooSmall:
        return ErrorWords::tr("“%1” is less than can be kept here. Nothing was stored; the least is %2.").arg(first, second);
    case ErrorKind::TextTooLong:
        return ErrorWords::tr("The text has %1. Nothing was stored; type at most %2.")
            .arg(ErrorWords::tr("%n character(s)", nullptr, countOf(error, 0)), second);
    case ErrorKind::DivisionByZero:
        return ErrorWords::tr("“%1” divides by zero. Nothing was stored; type a fraction such as 5/8 in.").arg(first);
    case ErrorKind::BandUpsideDown:
        return ErrorWords::tr("The low end %1 is above the high end %2. The spec is as it was; type the low end first.").arg(first, second);
    case ErrorKind::BandWithoutValue:
        return ErrorWords::tr("“%1” names no value. The spec is as it was; type a band such as 0.20 to 0.30 mm.").arg(first);
    case ErrorKind::BandSystemsDiffer:
        return ErrorWords::tr("%1 and %2 do not overlap, so one of them is misread. The spec is as it was; compare both with the manual.")
            .arg(first, second);
    case ErrorKind::BandSameSystem:
        return ErrorWords::
            tr("The second band, %1, is in the same system as the first. The spec is as it was; type it as printed in the other system.")
                .arg(first);
    case ErrorKind::CylinderCount:
        return ErrorWords::tr(
                   "An engine of this layout cannot have %1 here. Nothing was changed; type a number from %2 to %3 that it can have.")
            .arg(cylinders(countOf(error, 0)), second, third);
    case ErrorKind::BanksForLayout:
        return ErrorWords::tr("The numbering has %1, the layout has %2. Nothing was changed; part the banks with a slash, front first.")
            .arg(ErrorWords::tr("%n bank(s)", nullptr, countOf(error, 0)), second);
    case ErrorKind::CylinderLabelTwice:
        return ErrorWords::tr("Cylinder “%1” is named twice in the numbering. Nothing was changed; name each one once.").arg(first);
    case ErrorKind::CylinderLabelCount:
        return ErrorWords::tr("The numbering names %1, the engine has %2. Nothing was changed; name every one once.")
            .arg(cylinders(countOf(error, 0)), second);
    case ErrorKind::CylindersInUse:
        return ErrorWords::tr("Jobs of %1 have been worked on, and they hang on its cylinders, firing order and gaps. Nothing was changed; "
                              "type another engine as a new vehicle.")
            .arg(first);
    case ErrorKind::FiringOrderMissing:
        return ErrorWords::tr("Cylinder %1 is missing from the firing order. Nothing was changed; name every cylinder once.").arg(first);
    case ErrorKind::FiringOrderTwice:
        return ErrorWords::tr("Cylinder %1 fires twice in the order. Nothing was changed; name every cylinder once.").arg(first);
    case ErrorKind::FiringOrderUnknown:
        return ErrorWords::tr("The engine has no cylinder “%1” to fire. Nothing was changed; use the names of the numbering.").arg(first);
    case ErrorKind::GapNotAnAngle:
        return ErrorWords::tr("“%1” is not a firing gap. Nothing was changed; type degrees, such as 90-270.").arg(first);
    case ErrorKind::GapsCount:
        return ErrorWords::tr(
                   "There are %n firing gap(s) where %1. Nothing was changed; type one a cylinder, or a pattern that repeats evenly.",
                   nullptr, countOf(error, 0))
            .arg(ErrorWords::tr("%n are wanted", "firing gaps", countOf(error, 1)));
    case ErrorKind::GapsSum:
        return ErrorWords::tr(
                   "The firing gaps add up to %1°. Nothing was changed; they must make two turns, 720°, of a two-stroke one, 360°.")
            .arg(first);
    case ErrorKind::GapNotPositive:
        return ErrorWords::tr("“%1” is no gap between two firings. Nothing was changed; type degrees above zero.").arg(first);
    case ErrorKind::ValveOrderLength:
        return ErrorWords::tr("The valve order has %1, the bank has %2. Nothing was changed; type one letter a valve, front first.")
            .arg(ErrorWords::tr("%n letter(s)", nullptr, countOf(error, 0)), ErrorWords::tr("%n valve(s)", nullptr, countOf(error, 1)));
    case ErrorKind::ValveOrderLetter:
        return ErrorWords::tr("“%1” is no valve. Nothing was changed; type I for an intake and E for an exhaust.").arg(first);
    case ErrorKind::ValveOrderCount:
        return ErrorWords::tr("The valve order has %1 and %2, there must be %3 of each. Nothing was changed; look along the head again.")
            .arg(ErrorWords::tr("%n intake(s)", nullptr, countOf(error, 0)), ErrorWords::tr("%n exhaust(s)", nullptr, countOf(error, 1)),
                 third);
    case ErrorKind::CamArcTooLong:
        return ErrorWords::tr("By these events the %1 arc lasts %2°. Nothing was changed; check the events with the manual.")
            .arg(noun, first);
    case ErrorKind::ValvesACylinder:
        return ErrorWords::tr("“%1” are no valves of a cylinder. Nothing was changed; type 2 to 5, or intakes and exhausts as 2+1.")
            .arg(first);
    case ErrorKind::BridgeWithoutPair:
        return ErrorWords::tr("A bridge opens two valves at once, and neither side has an even number. Nothing was changed; check the "
                              "valves, or say that they are not bridged.");
    case ErrorKind::RowsUneven:
        return ErrorWords::tr("%n cylinder(s) do not stand evenly in %1. Nothing was changed; check the count or the rows.", nullptr,
                              countOf(error, 0))
            .arg(ErrorWords::tr("%n row(s)", nullptr, countOf(error, 1)));
    case ErrorKind::BarringUnread:
        return ErrorWords::tr("“%1” is no ring gear and pinion. Nothing was changed; type the teeth of both, as 132/11.").arg(first);
    case ErrorKind::PlanNeedsCam:
        return ErrorWords::tr("The fewest positions cannot be found with an assumed cam. The plan is as it was; type the cam's events, or "
                              "choose another way.");
    case ErrorKind::PlanNotReached:
        return ErrorWords::tr("No mark reaches %1 with this margin. The plan is as it was; ask for less margin, or turn by more marks.")
            .arg(first);
    case ErrorKind::PlanNotForEngine:
        return ErrorWords::tr("This way of turning is for another kind of engine. The plan is as it was; choose another way.");
    case ErrorKind::TableEmpty: return ErrorWords::tr("The table has no positions. Nothing was changed; type it as the manual prints it.");
    case ErrorKind::TablePositionUnread:
        return ErrorWords::tr("“%1” is no crank position. Nothing was changed; name a cylinder and what it is at.").arg(first);
    case ErrorKind::TablePointUnread:
        return ErrorWords::tr("“%1” names no point. Nothing was changed; type them as IN 1 2 4 EX 1 3 INJ 2.").arg(first);
    case ErrorKind::TableCylinder:
        return ErrorWords::tr("The engine has no cylinder “%1”. Nothing was changed; check the table against the numbering.").arg(first);
    case ErrorKind::TablePointTwice:
        return ErrorWords::tr("%1 stands at two positions of the table. Nothing was changed; each point is set once.").arg(first);
    case ErrorKind::LeavesUnread:
        return ErrorWords::tr("“%1” is no leaf. The set is as it was; type its leaves with spaces between, such as 0.05 0.10 0.15 mm.")
            .arg(first);
    case ErrorKind::NameMissing: return ErrorWords::tr("There is no text for: %1. Nothing was stored; type it first.").arg(noun);
    case ErrorKind::PitchOutOfRange:
        return ErrorWords::tr("“%1” is no pitch of an adjusting screw. Nothing was stored; type it as 1 mm or 1/24 in.").arg(first);
    case ErrorKind::MeterUnread:
        return ErrorWords::tr("“%1” is no meter reading. Nothing was stored; type the figures on the meter.").arg(first);
    case ErrorKind::MeterRunsBack:
        return ErrorWords::tr(
                   "The meter read %2 before and %1 is less. Nothing was stored; read it again, or say that it is another meter.")
            .arg(first, second);
    case ErrorKind::BleedDownUnread:
        return ErrorWords::tr("“%1” is no time to bleed down. Nothing was stored; type minutes or hours, as 15 min.").arg(first);
    case ErrorKind::VehicleTaken:
        return ErrorWords::tr("There is an engine in %1 already. Nothing was moved; put that one onto the stand first.").arg(first);
    case ErrorKind::NotFound:
        return ErrorWords::tr("Not found: %1. Nothing was changed; open the page once more to see what there is now.").arg(noun);
    case ErrorKind::WrongJob:
        return ErrorWords::tr("%1 does not belong to this job. Nothing was logged; open the job it belongs to.").arg(noun);
    case ErrorKind::NothingToUndo: return ErrorWords::tr("There is nothing of yours to undo in this job. Everything is as it was.");
    case ErrorKind::RestedOn:
        return ErrorWords::tr("A later act rests on this one: %1. Nothing was undone; undo the later one first.").arg(first);
    case ErrorKind::NutStillOpen:
        return ErrorWords::tr("Lock nut open: %1. The crank was not moved; set, lock and feel again first.").arg(first);
    case ErrorKind::CrankNotConfirmed:
        return ErrorWords::tr("Nobody has said in this sitting where the crank stands. Nothing was logged; look at mark and stroke and "
                              "confirm, or say unknown.");
    case ErrorKind::CautionsNotRead:
        return ErrorWords::tr("The cautions have not been read in this sitting. Nothing was logged; read them first.");
    case ErrorKind::NothingToKeep:
        return ErrorWords::tr("%1 has no reading outside its band to keep. Nothing was logged; log what was left first.").arg(first);
    case ErrorKind::StillBleedingDown:
        return ErrorWords::tr(
                   "Hydraulic tappets are bleeding down until %1, and a valve could be bent. The crank was not moved; wait till then.")
            .arg(timeOf(first));
    case ErrorKind::NothingToLog: return ErrorWords::tr("The sheet is empty. Nothing was logged; type what was written on it first.");
    case ErrorKind::PersonMissing:
        return ErrorWords::tr("Nobody has been chosen as who does the work. Nothing was logged; choose your initials first.");
    case ErrorKind::ThreadUnread:
        return ErrorWords::tr("“%1” is no thread. Nothing was stored; type it as M8, M8x1, 3/8-24 or 1/4-20 UNC.").arg(first);
    case ErrorKind::ThreadUnknown: // the tables may have nothing of that diameter to offer
        return second.isEmpty()
                   ? ErrorWords::tr("There is no thread “%1”. Nothing was stored; measure it again.").arg(first)
                   : ErrorWords::tr("There is no thread “%1”. Nothing was stored; measure it again. Of this diameter there are: %2.")
                         .arg(first, second);
    case ErrorKind::ClassUnknown:
        return ErrorWords::tr("“%1” is no strength class. Nothing was stored; type it as 8.8, grade 5 or A2-70.").arg(first);
    case ErrorKind::PatternUnread:
        return ErrorWords::tr("“%1” is no pattern. Nothing was changed; type it as 12 around a circle, 2 rows of 7, or 4 by 6 rectangle.")
            .arg(first);
    case ErrorKind::PatternCount:
        return ErrorWords::tr("A pattern of %1 cannot be made. Nothing was changed; it takes %2 to %3 here.").arg(first, second, third);
    case ErrorKind::PatternNumber:
        return ErrorWords::tr("Number %1 cannot stand there. Nothing was changed; give each fastener a number of its own.").arg(first);
    case ErrorKind::PlacesTooClose:
        return ErrorWords::tr("Fasteners %1 and %2 sit in one place. Nothing was changed; drag one of them to where it belongs.")
            .arg(first, second);
    case ErrorKind::OrderUnread:
        return ErrorWords::tr("“%1” is no fastener number. The order is as it was; type it as 7-3-1-5.").arg(first);
    case ErrorKind::OrderUnknown:
        return ErrorWords::tr("No fastener has number %1. The order is as it was; compare it with the drawing.").arg(first);
    case ErrorKind::OrderTwice:
        return ErrorWords::tr("Fastener %1 stands twice in the order. The order is as it was; name each one once.").arg(first);
    case ErrorKind::OrderMissing:
        return ErrorWords::tr("Fastener %1 is missing from the order. The order is as it was; name each one once.").arg(first);
    case ErrorKind::PassUnread:
        return ErrorWords::tr("“%1” is no pass. The passes are as they were; type them as finger, 50 %, target, +90°, settle 3. Settle "
                              "takes 1 to 10 rounds.")
            .arg(first);
    case ErrorKind::PassOverTarget:
        return ErrorWords::tr("The pass “%1” goes past the target. The passes are as they were; type at most 100 %, or correct the target.")
            .arg(first);
    case ErrorKind::PassesTooMany:
        return ErrorWords::tr("There are %n pass(es). The passes are as they were; %1 is the most.", nullptr, countOf(error, 0))
            .arg(second);
    case ErrorKind::PassesEmpty: return ErrorWords::tr("There are no passes. Nothing was stored; type at least one, such as target.");
    case ErrorKind::PassesFall:
        return ErrorWords::tr("The pass “%1” asks for no more than the one before. The passes are as they were; type them as they rise.")
            .arg(first);
    case ErrorKind::FingerNotFirst:
        return ErrorWords::tr("Finger-tight comes first. The passes are as they were; put it in front of the others.");
    case ErrorKind::TargetMissing:
        return ErrorWords::tr("The pass “%1” needs a target. Nothing was stored; type the torque the manual asks for.").arg(first);
    case ErrorKind::AngleWithoutSnug:
        return ErrorWords::tr(
                   "The pass “%1” has no torque before it to turn on from. The passes are as they were; put a snug torque first.")
            .arg(first);
    case ErrorKind::AngleTooLarge:
        return ErrorWords::tr("The angles add up to %1°, more than two turns. The passes are as they were; compare them with the manual.")
            .arg(first);
    case ErrorKind::SettleNotAllowed:
        return ErrorWords::tr("Settling is only for joints with limiters, or where the manual says so. The passes are as they were; say "
                              "which, or take it out.");
    case ErrorKind::SettleAfterAngle:
        return ErrorWords::tr(
            "A joint turned by an angle is never settled by torque again. The passes are as they were; take one of them out.");
    case ErrorKind::SettleMisplaced:
        return ErrorWords::tr("Settling comes once, after the target. The passes are as they were; put it last.");
    case ErrorKind::TorqueAfterAngle:
        return ErrorWords::tr("The pass “%1” stands after an angle. The passes are as they were; put all torques before the angles.")
            .arg(first);
    case ErrorKind::PassesStopShort:
        return ErrorWords::tr(
                   "The passes end at “%1”, below the target. The passes are as they were; put target last, or correct the target.")
            .arg(first);
    case ErrorKind::AdapterOutOfRange:
        return ErrorWords::tr("This lever or adapter cannot be. Nothing was changed; measure from the middle of the drive to the grip "
                              "mark, and to the fastener.");
    case ErrorKind::AdapterReversed:
        return ErrorWords::tr("The adapter reaches back to the hand, so the wrench shows nothing. Nothing was changed; turn the adapter or "
                              "take a longer wrench.");
    case ErrorKind::TorqueRange:
        return ErrorWords::tr("A wrench cannot reach from %1 to %2. Nothing was stored; type the range marked on it.").arg(first, second);
    case ErrorKind::DeviationOutOfRange:
        return ErrorWords::tr("A deviation of “%1” is none. Nothing was stored; type percent of the reading, as 4.").arg(first);
    case ErrorKind::LeverOutOfRange:
        return ErrorWords::tr("This lever cannot be. Nothing was stored; measure from the middle of the drive to the grip mark.");
    case ErrorKind::LeverMissing:
        return ErrorWords::tr("The lever of %1 is not known, so its setting with an adapter cannot be told. Nothing was changed; measure "
                              "from the drive to the grip mark and type it under Tools.")
            .arg(first);
    case ErrorKind::DateUnread: return ErrorWords::tr("“%1” is no date. Nothing was stored; type it as 2027-03-31.").arg(first);
    case ErrorKind::LoosenedUnread:
        return ErrorWords::tr("“%1” is no loosening torque. Nothing was logged; type it as 28 N·m, or choose what was found.").arg(first);
    case ErrorKind::JointInUse:
        return ErrorWords::tr(
                   "Jobs have worked on the fasteners of %1, so their places and numbers stay. Nothing was stored; describe another joint.")
            .arg(first);
    case ErrorKind::JointTaken:
        return ErrorWords::tr("This engine has a joint named %1 already. Nothing was stored; open that one, or choose another name.")
            .arg(first);
    case ErrorKind::FastenerUnknown:
        return ErrorWords::tr("The joint has no fastener %1. Nothing was logged; look at the drawing.").arg(first);
    case ErrorKind::TickOutOfTurn:
        return ErrorWords::tr("Fastener %1 is not to be ticked in this pass. Nothing was logged; take the one the bench names.").arg(first);
    case ErrorKind::NotTicked: return ErrorWords::tr("Fastener %1 has no tick to take back. Everything is as it was.").arg(first);
    case ErrorKind::ReasonMissing: return ErrorWords::tr("A reason is missing. Nothing was logged; type why in a few words.");
    case ErrorKind::NothingToAccept: return ErrorWords::tr("There is nothing here to accept. Everything is as it was.");
    case ErrorKind::ToolNotForTorque:
        return ErrorWords::tr("%1 measures no torque. Nothing was changed; choose a torque wrench.").arg(first);
    case ErrorKind::JointChanged:
        return ErrorWords::tr(
                   "Another seat has just revised %1, so what was shown here is no longer asked. Nothing was logged; look again.")
            .arg(first);
    case ErrorKind::StepByFasteners:
        return ErrorWords::tr("“%1” is done by its fasteners. Nothing was logged; tighten them, or say by feel.").arg(first);
    case ErrorKind::ToolNotThat: return ErrorWords::tr("%1 is not a tool for this. Nothing was changed; choose another.").arg(first);
    case ErrorKind::FileMissing:
        return ErrorWords::tr("There is no file “%1”. Nothing was opened; choose another, or begin a new garage.").arg(first);
    case ErrorKind::FileExists: return ErrorWords::tr("“%1” is there already and was left as it is. Choose another name.").arg(first);
    case ErrorKind::NotAGarage:
        return ErrorWords::tr("“%1” is not a garage of Asleft. It was left as it is; choose another file.").arg(first);
    case ErrorKind::GarageNewer:
        return ErrorWords::tr("“%1” was written by a newer Asleft: it has version %2, this one knows %3. It was left as it is; open it "
                              "with the newer Asleft.")
            .arg(first, second, third);
    case ErrorKind::GarageReadOnly:
        return ErrorWords::tr("“%1” may not be written to. Nothing was stored; allow writing to the file and its folder, then try again.")
            .arg(first);
    case ErrorKind::GarageBusy:
        return ErrorWords::tr("“%1” is in use by another seat just now. Nothing was stored; try again in a moment.").arg(first);
    case ErrorKind::NoRoom:
        return ErrorWords::tr(
                   "There is no room left to write “%1”. Everything logged before is kept, this is not; make room and try again.")
            .arg(first);
    case ErrorKind::GarageMoved:
        return ErrorWords::tr(
                   "“%1” was moved or replaced while it was open. What was logged before is in the file that was moved; open that one.")
            .arg(first);
    case ErrorKind::DiskFault:
        return ErrorWords::tr(
                   "“%1” could not be written: %2. What was being written is not stored, what was there before is; try another disk.")
            .arg(first, second);
    case ErrorKind::Damaged:
        return ErrorWords::tr("“%1” is damaged: %2. It was left as it is; open the latest backup.").arg(first, damagedPart(error));
    case ErrorKind::UpgradeFailed:
        return ErrorWords::tr(
                   "“%1” could not be brought up to date, at step %2: %3. It is as it was, and the copy made before stands beside it.")
            .arg(first, second, third);
    case ErrorKind::Database:
        return ErrorWords::tr("The garage could not be read or written: %1. Nothing was stored; try again, and keep a backup at hand.")
            .arg(first);
    }
    return {};
}

} // namespace asleft
