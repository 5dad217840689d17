// What is told of the fields of a joint.
#include <forms/joint_reader.h>

#include <forms/spec_reader.h>

#include <words/errors.h>
#include <words/joint_names.h>
#include <words/joints.h>
#include <words/numbers.h>

#include <QCoreApplication>

namespace asleft {

namespace {

class JointReader {
    Q_DECLARE_TR_FUNCTIONS(JointReader)
};

QString threadTold(const Thread &thread)
{
    return JointReader::tr("%1, stress area %2 mm²")
        .arg(QString::fromStdString(thread.name), QLocale().toString(stressAreaSquareMillimetres(thread), 'f', 1));
}

/// A long order breaks between its numbers, not within one.
QString orderTold(const Joint &joint)
{
    constexpr std::size_t longOrder = 24;
    QString told = orderLine(joint);
    if (joint.order.size() <= longOrder)
        return told;
    const QString order = QString::fromStdString(writeOrder(joint.order));
    return told.replace(order, QString(order).replace(QLatin1Char('-'), QStringLiteral(" - ")));
}

/// Rounds are counted when they are made; here it is told how many there may be.
QString passTold(const Joint &joint, std::size_t pass)
{
    const auto *settle = std::get_if<Settle>(&joint.passes[pass]);
    if (!settle)
        return passName(joint, pass);
    return JointReader::tr("until none moves, at most %n round(s)", nullptr, settle->mostRounds);
}

QString passesTold(const Joint &joint)
{
    QStringList lines;
    for (std::size_t pass = 0; pass < joint.passes.size(); ++pass)
        lines.append(QStringLiteral("%1. %2").arg(QString::number(pass + 1), passTold(joint, pass)));
    return lines.join(QLatin1Char('\n'));
}

} // namespace

std::map<JointField, QString> echoesOf(const JointReading &reading)
{
    const Joint &joint = reading.joint;
    const auto refused = [&reading](JointField field) { return reading.refusals.contains(field); };
    std::map<JointField, QString> echoes;
    if (joint.thread)
        echoes[JointField::Thread] = threadTold(*joint.thread);
    if (joint.strength)
        echoes[JointField::Strength] = strengthName(*joint.strength);
    for (const auto &[field, band] : reading.bands)
        echoes[field] = torqueEcho(band);
    if (!refused(JointField::Passes) && !refused(JointField::Target) && !refused(JointField::OtherTarget))
        echoes[JointField::Passes] = passesTold(joint);
    if (!refused(JointField::Order) && !refused(JointField::Places))
        echoes[JointField::Order] = orderTold(joint);
    return echoes;
}

QString refusalSentence(JointField field, const Error &error)
{
    if (field == JointField::Places && error.kind == ErrorKind::EmptyText)
        return JointReader::tr("Nothing says where the fasteners sit. Type it as 12 around a circle, or click them on a photo.");
    return sentence(error);
}

} // namespace asleft
