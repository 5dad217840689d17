#include <drawn/pattern_board.h>

#include <drawn/pattern_dot.h>
#include <parts/ink_of.h>

#include <words/joints.h>

#include <QKeyEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <utility>

namespace asleft {

namespace {

constexpr double photoDot = 30;
/// The longer side of a photo in the pattern's unit: places a few pixels apart are still told apart.
constexpr double photoSide = 20;
/// Where the drawing does not tell it: of a single place.
constexpr double scaleOfOne = 100;
constexpr double nearStep = 0.1;
constexpr double farStep = 0.5;

QPointF pointOf(const FastenerPosition &place)
{
    return {place.x, place.y};
}

/// What sets one fastener apart, for a screen reader.
QString ownWords(const FastenerPosition &place)
{
    QStringList words;
    if (!place.thread.empty())
        words << PatternBoard::tr("thread %1").arg(QString::fromStdString(place.thread));
    if (!place.length.empty())
        words << PatternBoard::tr("length %1").arg(QString::fromStdString(place.length));
    return words.join(QStringLiteral(", "));
}

} // namespace

PatternBoard::PatternBoard(QWidget *parent) : QWidget(parent)
{
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Drawing of the places"));
}

void PatternBoard::setPattern(const Pattern &pattern, const TighteningOrder &order)
{
    if (pattern == m_pattern && order == m_order)
        return;
    m_pattern = pattern;
    m_order = order;
    m_dragged.reset();
    makeDots();
    replan();
    Q_EMIT changed();
}

void PatternBoard::setPhoto(const QImage &photo)
{
    m_photo = photo;
    replan();
    Q_EMIT changed();
}

void PatternBoard::setNumbered(const std::optional<std::vector<int>> &numbered)
{
    m_numbered = numbered;
    replan();
}

void PatternBoard::setInHand(int index)
{
    m_inHand = index;
    dressDots();
}

void PatternBoard::focusInHand()
{
    if (m_inHand >= 0)
        m_dots.at(m_inHand)->setFocus(Qt::OtherFocusReason);
    else
        setFocus(Qt::OtherFocusReason);
}

bool PatternBoard::keyboardIsHere() const
{
    return hasFocus() || std::ranges::any_of(m_dots, [](const PatternDot *dot) { return dot->hasFocus(); });
}

void PatternBoard::makeDots()
{
    const auto wanted = qsizetype(m_pattern.places.size());
    while (m_dots.size() > wanted) {
        // The key that was pressed may belong to it: it has to outlive its own click.
        PatternDot *dot = m_dots.takeLast();
        dot->disconnect(this);
        dot->hide();
        dot->deleteLater();
    }
    while (m_dots.size() < wanted) {
        auto *dot = new PatternDot(this);
        // Made late, it would come after everything else of the form.
        setFocusPolicy(Qt::StrongFocus);
        setTabOrder(m_dots.isEmpty() ? static_cast<QWidget *>(this) : m_dots.last(), dot);
        m_dots.append(dot);
        wire(dot);
        dot->show();
    }
    m_inHand = wanted == 0 ? -1 : std::clamp(m_inHand, 0, int(wanted) - 1);
}

void PatternBoard::wire(PatternDot *dot)
{
    connect(dot, &PatternDot::focused, this, [this, dot] { Q_EMIT taken(indexOf(dot)); });
    connect(dot, &PatternDot::clicked, this, [this, dot] { Q_EMIT pressed(indexOf(dot)); });
    connect(dot, &PatternDot::keyed, this, [this, dot](int key, Qt::KeyboardModifiers modifiers) { keyed(indexOf(dot), key, modifiers); });
    connect(dot, &PatternDot::dragged, this, [this, dot](const QPointF &middle) {
        const QRectF room = hasPhoto() ? photoRect() : QRectF(rect());
        const QPointF at(std::clamp(middle.x(), room.left(), room.right()), std::clamp(middle.y(), room.top(), room.bottom()));
        m_dragged = indexOf(dot);
        dot->move((at - QRectF(dot->rect()).center()).toPoint());
        update();
    });
    connect(dot, &PatternDot::dropped, this, [this, dot] {
        const int index = indexOf(dot);
        m_dragged.reset();
        const QPointF place = toPattern(middleOf(index));
        placeDots();
        Q_EMIT moveWanted(index, place);
    });
}

double PatternBoard::dotSideIn(QSize room) const
{
    return m_pattern.places.empty() || hasPhoto() ? 0 : planJoint(m_pattern, {}, room).diameter;
}

QPointF PatternBoard::middleOf(int index) const
{
    const PatternDot *dot = m_dots.at(index);
    return QRectF(dot->geometry()).center();
}

QRectF PatternBoard::photoRect() const
{
    const QSizeF size = QSizeF(m_photo.size()).scaled(QSizeF(this->size()), Qt::KeepAspectRatio);
    return {QPointF((width() - size.width()) / 2, (height() - size.height()) / 2), size};
}

QPointF PatternBoard::toPattern(const QPointF &at) const
{
    return (at - m_origin) / m_scale;
}

QPointF PatternBoard::toBoard(const QPointF &place) const
{
    return m_origin + place * m_scale;
}

/// The drawing says where each place lies; two of them that are far apart tell the scale.
void PatternBoard::replan()
{
    m_plan = m_pattern.places.empty() || hasPhoto() ? JointPlan{} : planJoint(m_pattern, m_order, size());
    if (hasPhoto()) {
        const QRectF area = photoRect();
        m_origin = area.topLeft();
        m_scale = std::max(area.width(), area.height()) / photoSide;
    } else if (!m_plan.fasteners.isEmpty()) {
        const QPointF first = pointOf(m_pattern.places.front());
        const auto farther = [&first](const FastenerPosition &a, const FastenerPosition &b) {
            const QPointF one = pointOf(a) - first;
            const QPointF other = pointOf(b) - first;
            return QPointF::dotProduct(one, one) < QPointF::dotProduct(other, other);
        };
        const auto last = std::ranges::max_element(m_pattern.places, farther);
        const QPointF apart = pointOf(*last) - first;
        const QPointF drawn = m_plan.fasteners.at(last - m_pattern.places.begin()) - m_plan.fasteners.front();
        const double length = std::hypot(apart.x(), apart.y());
        m_scale = length > 0 ? std::hypot(drawn.x(), drawn.y()) / length : scaleOfOne;
        m_origin = m_plan.fasteners.front() - first * m_scale;
    }
    if (m_numbered)
        for (qsizetype at = 0; at < m_plan.numbers.size(); ++at) {
            const auto found = std::ranges::find(*m_numbered, int(at));
            m_plan.numbers[at].text = found == m_numbered->end() ? QString() : QString::number(found - m_numbered->begin() + 1);
        }
    placeDots();
    dressDots();
    update();
}

void PatternBoard::placeDots()
{
    for (int at = 0; at < int(m_dots.size()); ++at) {
        const double side = hasPhoto() ? photoDot : m_plan.diameter;
        const QPointF middle = toBoard(pointOf(m_pattern.places[std::size_t(at)]));
        m_dots[at]->setGeometry(QRectF(middle.x() - side / 2, middle.y() - side / 2, side, side).toAlignedRect());
    }
}

void PatternBoard::dressDots()
{
    for (int at = 0; at < int(m_dots.size()); ++at) {
        const FastenerPosition &place = m_pattern.places[std::size_t(at)];
        FastenerLook look;
        look.inHand = at == m_inHand;
        const bool waits = m_numbered && std::ranges::find(*m_numbered, at) == m_numbered->end();
        look.toTick = waits;
        PatternDot *dot = m_dots[at];
        dot->setLook(look);
        dot->setAccessibleName(waits ? tr("Place %1, not numbered yet").arg(at + 1) : fastenersName({place.number}));
        dot->setAccessibleDescription(ownWords(place));
        dot->setFocusPolicy(at == m_inHand ? Qt::StrongFocus : Qt::ClickFocus);
    }
    setFocusPolicy(m_dots.isEmpty() && hasPhoto() ? Qt::StrongFocus : Qt::NoFocus);
}

void PatternBoard::keyed(int index, int key, Qt::KeyboardModifiers modifiers)
{
    if (key == Qt::Key_Escape)
        Q_EMIT stopWanted();
    else if (key == Qt::Key_Delete)
        Q_EMIT removeWanted(index);
    else if (key == Qt::Key_Backspace)
        Q_EMIT removeWanted(hasPhoto() ? int(m_dots.size()) - 1 : index);
    else if (key == Qt::Key_Insert)
        Q_EMIT addWanted();
    else if (const auto place = m_numbered ? std::nullopt : nudge(index, key, modifiers.testFlag(Qt::ShiftModifier)))
        Q_EMIT moveWanted(index, *place);
    else
        step(index, key);
}

std::optional<QPointF> PatternBoard::nudge(int index, int key, bool far) const
{
    const double by = far ? farStep : nearStep;
    const QPointF from = pointOf(m_pattern.places[std::size_t(index)]);
    switch (key) {
    case Qt::Key_Left: return from - QPointF(by, 0);
    case Qt::Key_Right: return from + QPointF(by, 0);
    case Qt::Key_Up: return from - QPointF(0, by);
    case Qt::Key_Down: return from + QPointF(0, by);
    default: return std::nullopt;
    }
}

/// To another place, in the order of the pattern and round.
void PatternBoard::step(int index, int key)
{
    const int count = int(m_dots.size());
    int to = index;
    if (key == Qt::Key_Home)
        to = 0;
    else if (key == Qt::Key_End)
        to = count - 1;
    else if (key == Qt::Key_PageUp || key == Qt::Key_Left || key == Qt::Key_Up)
        to = (index + count - 1) % count;
    else
        to = (index + 1) % count;
    m_dots.at(to)->setFocus(Qt::OtherFocusReason);
}

void PatternBoard::paintPhoto(QPainter &painter) const
{
    const Ink &ink = inkOf(*this);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    painter.drawImage(photoRect(), m_photo);
    painter.setFont(textFont(TextSize::SmallStrong));
    for (int at = 0; at < int(m_dots.size()); ++at) {
        // A photo has any colour: dot and number bring their own ground.
        const QPointF middle = middleOf(at);
        painter.setPen(QPen(ink.edge, 1));
        painter.setBrush(ink.paper);
        painter.drawEllipse(middle, photoDot / 2, photoDot / 2);
        const bool numbered = !m_numbered || std::ranges::find(*m_numbered, at) != m_numbered->end();
        const auto place = m_numbered ? std::ranges::find(*m_numbered, at) - m_numbered->begin() + 1
                                      : std::ptrdiff_t(m_pattern.places[std::size_t(at)].number);
        if (!numbered)
            continue;
        const QString number = QString::number(place);
        QRectF plate(middle.x() + photoDot / 2 + 1, middle.y() - 9, painter.fontMetrics().horizontalAdvance(number) + 8, 18);
        if (plate.right() > width())
            plate.moveRight(middle.x() - photoDot / 2 - 1);
        painter.drawRect(plate);
        painter.setPen(ink.text);
        painter.drawText(plate, Qt::AlignCenter, number);
    }
}

void PatternBoard::paintEvent(QPaintEvent *)
{
    const Ink &ink = inkOf(*this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    if (hasPhoto()) {
        paintPhoto(painter);
        return;
    }
    if (m_dots.isEmpty()) {
        painter.setPen(QPen(ink.edge, 1, Qt::DashLine));
        painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5));
        painter.setPen(ink.quietText);
        painter.setFont(textFont(TextSize::Body));
        painter.drawText(rect().adjusted(20, 20, -20, -20), Qt::AlignCenter | Qt::TextWordWrap,
                         tr("The places stand here once they are typed or clicked on a photo."));
        return;
    }
    JointPlan shown = m_plan;
    if (m_dragged) {
        // Its number goes with it; the path waits until it lies.
        const QPointF by = middleOf(*m_dragged) - m_plan.fasteners.at(*m_dragged);
        shown.numbers[*m_dragged].box.translate(by);
        shown.differences[*m_dragged].text.clear();
    }
    paintJoint(painter, shown, ink, !m_dragged && !m_numbered);
}

void PatternBoard::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    replan();
}

void PatternBoard::mousePressEvent(QMouseEvent *event)
{
    const bool onPhoto = hasPhoto() && event->button() == Qt::LeftButton && photoRect().contains(event->position());
    if (onPhoto && !m_numbered)
        Q_EMIT pageWanted(toPattern(event->position()));
    else
        QWidget::mousePressEvent(event);
}

void PatternBoard::keyPressEvent(QKeyEvent *event)
{
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter || event->key() == Qt::Key_Insert;
    if (hasPhoto() && enter && !event->isAutoRepeat())
        Q_EMIT addWanted();
    else if (event->key() == Qt::Key_Escape)
        Q_EMIT stopWanted();
    else
        QWidget::keyPressEvent(event);
}

} // namespace asleft
