#include <bench/loosen_pane.h>

#include <drawn/joint_view.h>
#include <parts/key_button.h>
#include <parts/read_only.h>
#include <parts/reading_edit.h>

#include <words/errors.h>
#include <words/fasteners.h>
#include <words/joint_names.h>
#include <words/joints.h>
#include <words/numbers.h>

#include <algorithm>

namespace asleft {

namespace {

QList<BarKey> loosenKeys()
{
    using Place = BarKey::Place;
    using Key = LoosenPane::Key;
    const auto key = [](Key which) { return int(which); };
    return {
        {key(Key::Loose), LoosenPane::tr("loose"), LoosenPane::tr("Hardly tight or not at all, by feel"), u'l'},
        {key(Key::Tight), LoosenPane::tr("tight"), LoosenPane::tr("As tight as it should be, by feel"), u't'},
        {key(Key::Missing), LoosenPane::tr("missing"), LoosenPane::tr("It is not there"), u'm'},
        {key(Key::Broken), LoosenPane::tr("broken"), LoosenPane::tr("It is broken"), u'b'},
        {key(Key::WrongLength), LoosenPane::tr("wrong length"), LoosenPane::tr("It is not as long as it should be"), u'g'},
        {key(Key::Out), LoosenPane::tr("out"), LoosenPane::tr("Out, and nobody looked how tight it was"), u'o'},
        {key(Key::RestOut), LoosenPane::tr("all the rest"), LoosenPane::tr("All the rest are out, and nobody looked"), u'a', Place::Beside},
        {key(Key::Done), LoosenPane::tr("Done"), LoosenPane::tr("This line is done"), u'd', Place::Seldom, true},
        {key(Key::With), LoosenPane::tr("wrench"), LoosenPane::tr("What the torque is read with: the next wrench on the rack"), u'w',
         Place::Beside},
        {key(Key::Finding), LoosenPane::tr("note it"), LoosenPane::tr("Note as a finding that several were loose"), u'n', Place::Answer},
    };
}

/// Long names would push the keys beside it away.
QString shortName(const Tool &tool)
{
    constexpr qsizetype most = 12;
    const QString name = QString::fromStdString(tool.name);
    return name.size() > most ? name.left(most - 1) + QChar(0x2026) : name;
}

} // namespace

LoosenPane::LoosenPane(AppContext &context, JobBook &book) : JointPane(context, book, tr("Loosening torque"), loosenKeys())
{
    for (const Key which :
         {Key::Loose, Key::Tight, Key::Missing, Key::Broken, Key::WrongLength, Key::Out, Key::RestOut, Key::Done, Key::Finding})
        keepFromWriting(context.garage(), {key(which)});
}

bool LoosenPane::isFound(int fastener) const
{
    const auto known = worked().fasteners.find(fastener);
    return known != worked().fasteners.end() && known->second.found;
}

std::vector<int> LoosenPane::rest() const
{
    std::vector<int> left;
    std::ranges::copy_if(path(), std::back_inserter(left), [this](int number) { return !isFound(number); });
    return left;
}

std::optional<int> LoosenPane::next() const
{
    const auto left = rest();
    return left.empty() ? std::nullopt : std::optional(left.front());
}

qsizetype LoosenPane::legsDone() const
{
    const auto order = path();
    return std::ranges::find_if_not(order, [this](int number) { return isFound(number); }) - order.begin();
}

bool LoosenPane::isDone() const
{
    const Step *line = step() ? state().frame->step(*step()) : nullptr;
    return line && stepDone(state(), *line);
}

const Tool *LoosenPane::wrench() const
{
    return m_wrench ? state().frame->tool(*m_wrench) : nullptr;
}

TorqueUnit LoosenPane::unit() const
{
    const Tool *with = wrench();
    return with && with->torque ? with->torque->most.unit : joint().text.unit;
}

QString LoosenPane::findingToNote() const
{
    const auto loose = foundLoose(worked());
    if (loose.size() < 2)
        return {};
    const QString text = looseFinding(joint(), loose);
    const bool noted = std::ranges::any_of(state().findings, [&](const Finding &finding) {
        const auto *about = std::get_if<FastenerSubject>(&finding.what.subject);
        return about && about->joint == jointId() && finding.what.text == text.toStdString();
    });
    return noted ? QString() : text;
}

QString LoosenPane::summary() const
{
    QStringList texts;
    QList<QStringList> numbers;
    for (const int number : path()) {
        if (!isFound(number))
            continue;
        const QString text = foundText(*worked().fasteners.at(number).found);
        if (!texts.contains(text)) {
            texts.append(text);
            numbers.append(QStringList());
        }
        numbers[texts.indexOf(text)].append(QString::number(number));
    }
    QStringList parts;
    for (qsizetype i = 0; i < texts.size(); ++i)
        parts.append(tr("%1: %2", "how found, which").arg(texts[i], numbers[i].join(QStringLiteral(", "))));
    return parts.join(QStringLiteral(" · "));
}

EntryView LoosenPane::barView() const
{
    EntryView view;
    view.field = EntryView::Field::On;
    for (const BarKey &key : loosenKeys())
        view.shown(key.id) = KeyShown::On;
    const auto left = rest();
    const bool held = inHand() && isFound(*inHand());
    const bool done = isDone();
    if (inHand() && held)
        view.now = tr("Fastener %1: %2").arg(*inHand()).arg(foundText(*worked().fasteners.at(*inHand()).found));
    else if (inHand())
        view.now = tr("Fastener %1: loosen it, say how it was").arg(*inHand());
    if (left.empty() || (done && held))
        view.now = tr("%1 Enter goes on to the next line.").arg(left.empty() ? tr("Every fastener is noted.") : tr("This line is done."));
    view.small = summary();
    if (view.small.isEmpty())
        view.small = tr("Enter logs the torque it came loose at");
    const auto off = [&view](Key key) { view.shown(int(key)) = KeyShown::Off; };
    if (left.size() < 2)
        off(Key::RestOut);
    if (done)
        off(Key::Done);
    view.shown(int(Key::Finding)) = KeyShown::Hidden;
    view.asked = findingToNote();
    if (!view.asked.isEmpty())
        view.shown(int(Key::Finding)) = KeyShown::On;
    const Tool *with = wrench();
    view.keys[int(Key::With)].words = with ? shortName(*with) : tr("wrench");
    if (rackOf(state().frame->tools).wrenches.empty())
        view.shown(int(Key::With)) = KeyShown::Hidden;
    view.echo = unitText(unit());
    return view;
}

void LoosenPane::press(int which)
{
    if (Key(which) == Key::With) {
        nextWrench();
        return;
    }
    if (readOnly())
        return;
    switch (Key(which)) {
    case Key::Loose: found(FoundHow::LooseByFeel); return;
    case Key::Tight: found(FoundHow::TightByFeel); return;
    case Key::Missing: found(FoundHow::Missing); return;
    case Key::Broken: found(FoundHow::Broken); return;
    case Key::WrongLength: found(FoundHow::WrongLength); return;
    case Key::Out: found(FoundHow::NotNoted); return;
    case Key::RestOut: restOut(); return;
    case Key::Done: markDone(); return;
    case Key::Finding: noteFinding(); return;
    case Key::With: return;
    }
}

void LoosenPane::enter(const QString &text)
{
    if (text.isEmpty()) {
        const auto following = next();
        if (!following || isDone())
            Q_EMIT finished();
        else if (following != inHand())
            takeInHand(*following);
        return;
    }
    if (!inHand() || readOnly())
        return;
    const auto torque = parse<Torque>(text.toStdString(), unit(), context().mark());
    if (!torque) {
        bar()->refuse(sentence(torque.error()));
        return;
    }
    note({.joint = jointId(),
          .fasteners = {*inHand()},
          .how = FoundHow::Measured,
          .torque = *torque,
          .tool = m_wrench,
          .revision = joint().revision});
}

void LoosenPane::found(FoundHow how)
{
    if (!inHand())
        return;
    const LoosenEntry entry{.joint = jointId(), .fasteners = {*inHand()}, .how = how, .revision = joint().revision};
    if (how != FoundHow::Broken && how != FoundHow::WrongLength) {
        note(entry);
        return;
    }
    m_noteFor = entry;
    bar()->askReason(tr("%1: what there is to say of it; Enter alone notes it so").arg(foundHowName(how)), tr("note it"));
}

void LoosenPane::takeReason(const QString &words)
{
    if (!m_noteFor)
        return;
    LoosenEntry entry = *m_noteFor;
    entry.note = words.toStdString();
    note(entry);
}

/// What was tightened already is loose again by it: that is asked about.
void LoosenPane::note(LoosenEntry entry)
{
    std::vector<int> tight;
    std::ranges::copy_if(entry.fasteners, std::back_inserter(tight), [this](int number) {
        const auto known = worked().fasteners.find(number);
        return known != worked().fasteners.end() && !known->second.ticks.empty();
    });
    QStringList why;
    if (!tight.empty())
        why.append(tr("%1: ticked already, and to be tightened from the beginning after this. The same again notes it.")
                       .arg(fastenersName(tight)));
    if (mayGoOn(entry, why))
        log([&] { return book().loosen(entry); });
}

void LoosenPane::restOut()
{
    const auto left = rest();
    if (left.empty())
        return;
    const QString question = tr("%1: out, and nobody looked how tight they were? The same again notes it.").arg(fastenersName(left));
    const LoosenEntry entry{.joint = jointId(), .fasteners = left, .how = FoundHow::NotNoted, .revision = joint().revision};
    if (mayGoOn(entry, {question}))
        log([&] { return book().loosen(entry); });
}

void LoosenPane::noteFinding()
{
    const QString text = findingToNote();
    if (!text.isEmpty())
        log([&] { return book().noteFinding(FastenerSubject{jointId(), foundLoose(worked())}, text.toStdString()); });
}

void LoosenPane::markDone()
{
    const auto left = rest();
    QStringList why;
    if (!left.empty())
        why.append(tr("%1: nothing is noted. “Done” once more leaves it so.").arg(fastenersName(left)));
    if (!mayGoOn(LineDone{left}, why))
        return;
    const auto logged = doing([&] { return book().markStepDone(*step()); });
    after(logged);
    if (logged)
        Q_EMIT finished();
}

/// One after the other, and none: there are few on a rack.
void LoosenPane::nextWrench()
{
    const auto wrenches = rackOf(state().frame->tools).wrenches;
    const auto now = std::ranges::find(wrenches, m_wrench, [](const Tool *tool) { return std::optional(tool->id); });
    const auto following = now == wrenches.end() ? wrenches.begin() : now + 1;
    m_wrench = following == wrenches.end() ? std::nullopt : std::optional((*following)->id);
    refresh();
    takeFocus();
}

} // namespace asleft
