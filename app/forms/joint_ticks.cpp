#include <forms/joint_ticks.h>

#include <parts/ink_of.h>

#include <draw/fonts.h>
#include <words/joints.h>

#include <QKeyEvent>
#include <QPainter>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

namespace {

constexpr int inset = 8;
constexpr int boxSide = 26;
constexpr int boxRoom = 38;
constexpr int narrowest = 140;
constexpr int above = 7;
constexpr int ruleHeight = 2;

/// Words wrap between them; one that is wider than its line breaks anywhere.
int wrapping(TextSize size, int width, const QString &words)
{
    const QRect room(0, 0, qMax(1, width), 10'000);
    const bool fits = QFontMetrics(textFont(size)).boundingRect(room, Qt::TextWordWrap, words).width() <= width;
    return Qt::AlignLeft | Qt::AlignTop | (fits ? Qt::TextWordWrap : Qt::TextWrapAnywhere);
}

int heightOf(TextSize size, int width, const QString &words)
{
    const QRect room(0, 0, qMax(1, width), 10'000);
    return words.isEmpty() ? 0 : QFontMetrics(textFont(size)).boundingRect(room, wrapping(size, width, words), words).height();
}

} // namespace

JointTick::JointTick(JointId joint, QWidget *parent) : QCheckBox(parent), m_joint(joint)
{
    // Not Fixed: that would hold it to the height of its hint, however narrow it is.
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

void JointTick::setWords(const QString &name, const QString &note)
{
    if (m_name == name && m_note == note)
        return;
    // An ampersand of the name is one, not the mark of a key.
    m_name = name;
    m_note = note;
    setAccessibleName(name);
    updateGeometry();
    update();
}

void JointTick::setPlace(int place)
{
    m_place = place;
    setAccessibleDescription(place > 0 ? tr("%1; comes off as number %2").arg(m_note, QString::number(place)) : m_note);
    update();
}

QSize JointTick::sizeHint() const
{
    constexpr int narrow = 200;
    return {narrow, heightForWidth(narrow)};
}

QSize JointTick::minimumSizeHint() const
{
    return {narrowest, touchHeight};
}

int JointTick::heightForWidth(int width) const
{
    const int room = width - 2 * inset - boxRoom;
    const int words = heightOf(TextSize::BodyStrong, room, m_name) + heightOf(TextSize::Small, room, m_note);
    return qMax(touchHeight, words + 2 * above + ruleHeight);
}

bool JointTick::hitButton(const QPoint &position) const
{
    return rect().contains(position);
}

void JointTick::paintBox(QPainter &painter, const Ink &ink) const
{
    const QRectF box(inset, (height() - ruleHeight - boxSide) / 2.0, boxSide, boxSide);
    painter.setPen(QPen(isChecked() ? ink.strongLine : ink.edge, isChecked() ? 2.5 : 1.5));
    painter.setBrush(ink.field);
    painter.drawRect(box);
    if (m_place == 0)
        return;
    painter.setFont(textFont(TextSize::BodyStrong));
    painter.setPen(ink.text);
    painter.drawText(box, Qt::AlignCenter, QString::number(m_place));
}

void JointTick::paintEvent(QPaintEvent *)
{
    const Ink &ink = inkOf(*this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(QRect(inset, height() - ruleHeight, width() - 2 * inset, ruleHeight), ink.line);
    paintBox(painter, ink);
    const int room = width() - 2 * inset - boxRoom;
    const int name = heightOf(TextSize::BodyStrong, room, m_name);
    const int note = heightOf(TextSize::Small, room, m_note);
    const int top = (height() - ruleHeight - name - note) / 2;
    painter.setFont(textFont(isChecked() ? TextSize::BodyStrong : TextSize::Body));
    painter.setPen(ink.text);
    painter.drawText(QRect(inset + boxRoom, top, room, name), wrapping(TextSize::BodyStrong, room, m_name), m_name);
    painter.setFont(textFont(TextSize::Small));
    painter.setPen(ink.quietText);
    painter.drawText(QRect(inset + boxRoom, top + name, room, note), wrapping(TextSize::Small, room, m_note), m_note);
    if (hasFocus())
        paintFocusRing(painter, rect().adjusted(0, 0, 0, -ruleHeight), ink);
}

void JointTick::keyPressEvent(QKeyEvent *event)
{
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (!enter)
        QCheckBox::keyPressEvent(event);
    else if (!event->isAutoRepeat())
        moveOn();
}

JointTicks::JointTicks(const QString &name, QWidget *parent) : QWidget(parent), m_column(new QVBoxLayout(this))
{
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(0);
    setAccessibleName(name);
}

JointTick *JointTicks::tickOf(JointId joint) const
{
    const auto found = std::ranges::find(m_ticks, joint, &JointTick::joint);
    return found == m_ticks.end() ? nullptr : *found;
}

JointTick *JointTicks::add(JointId joint)
{
    auto *tick = new JointTick(joint);
    connect(tick, &JointTick::toggled, this, [this, joint](bool on) { toggle(joint, on); });
    return tick;
}

void JointTicks::setJoints(const std::vector<Joint> &joints)
{
    const auto isThere = [&joints](JointId id) { return std::ranges::find(joints, id, &Joint::id) != joints.end(); };
    std::erase_if(m_ticks, [&](JointTick *tick) {
        const bool gone = !isThere(tick->joint());
        if (gone)
            delete tick;
        return gone;
    });
    std::erase_if(m_ticked, [&](JointId id) { return !isThere(id); });
    std::vector<JointTick *> ticks;
    for (const Joint &joint : joints) {
        JointTick *known = tickOf(joint.id);
        ticks.push_back(known ? known : add(joint.id));
        ticks.back()->setWords(QString::fromStdString(joint.text.name), jointLine(joint));
        if (!known)
            m_column->insertWidget(int(ticks.size()) - 1, ticks.back());
    }
    m_ticks = std::move(ticks);
    showPlaces();
}

void JointTicks::clear()
{
    m_ticked.clear();
    showPlaces();
    Q_EMIT changed();
}

void JointTicks::toggle(JointId joint, bool on)
{
    std::erase(m_ticked, joint);
    if (on)
        m_ticked.push_back(joint);
    showPlaces();
    Q_EMIT changed();
}

void JointTicks::showPlaces()
{
    for (JointTick *tick : m_ticks) {
        const auto at = std::ranges::find(m_ticked, tick->joint());
        const QSignalBlocker quiet(tick);
        tick->setChecked(at != m_ticked.end());
        tick->setPlace(at == m_ticked.end() ? 0 : int(at - m_ticked.begin()) + 1);
    }
}

} // namespace asleft
