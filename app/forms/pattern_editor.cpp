#include <forms/pattern_editor.h>

#include <drawn/pattern_board.h>
#include <drawn/pattern_photo.h>
#include <drawn/pattern_window.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/value_field.h>

#include <words/errors.h>

#include <QFileDialog>
#include <QGridLayout>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace asleft {

namespace {

constexpr std::size_t mostTakenBack = 100;

int nextNumber(const Pattern &pattern)
{
    int highest = 0;
    for (const FastenerPosition &place : pattern.places)
        highest = std::max(highest, place.number);
    return highest + 1;
}

/// Numbers for all places: those clicked are 1, 2, …, the rest follow in the order they had.
std::vector<int> numbersAfter(const Pattern &pattern, const std::vector<int> &clicked)
{
    std::vector<int> places = clicked;
    std::vector<int> rest;
    for (int at = 0; at < int(pattern.places.size()); ++at)
        if (std::ranges::find(clicked, at) == clicked.end())
            rest.push_back(at);
    std::ranges::sort(rest, {}, [&pattern](int at) { return pattern.places[std::size_t(at)].number; });
    places.insert(places.end(), rest.begin(), rest.end());
    std::vector<int> numbers(places.size());
    for (std::size_t nth = 0; nth < places.size(); ++nth)
        numbers[std::size_t(places[nth])] = int(nth) + 1;
    return numbers;
}

} // namespace

PatternEditor::PatternEditor(QWidget *parent)
    : QWidget(parent), m_board(new PatternBoard), m_drawing(new PatternWindow(m_board)), m_says(new MessageLine),
      m_number(new KeyButton(tr("Number by clicking"))), m_photo(new KeyButton(tr("Click on a photo…"))),
      m_add(new KeyButton(tr("One more"))), m_remove(new KeyButton(tr("Take out"))), m_back(new KeyButton(tr("As before"))),
      m_enlarge(new KeyButton({})), m_ownThread(new ValueField({})), m_ownLength(new ValueField({}))
{
    buildLayout();
    wire();
    refresh();
    showOwn();
    showEnlarge();
}

void PatternEditor::buildLayout()
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(m_drawing, 1);
    column->addWidget(m_says);
    column->addLayout(keys());
    auto *own = new QHBoxLayout;
    own->setSpacing(16);
    own->addWidget(m_ownThread, 1);
    own->addWidget(m_ownLength, 1);
    column->addLayout(own);
    m_ownThread->setPlaceholder(tr("as the joint's"));
    m_ownLength->setPlaceholder(tr("as the others'"));
    m_add->setAccessibleName(tr("One more place"));
    m_remove->setAccessibleName(tr("Take the place in hand out"));
    m_back->setAccessibleName(tr("Places as they were before"));
}

QLayout *PatternEditor::keys()
{
    auto *rows = new QVBoxLayout;
    rows->setSpacing(6);
    const auto row = [rows](const QList<KeyButton *> &keys) {
        auto *line = new QHBoxLayout;
        line->setSpacing(6);
        for (KeyButton *key : keys)
            line->addWidget(key);
        line->addStretch(1);
        rows->addLayout(line);
    };
    row({m_number, m_photo});
    row({m_add, m_remove, m_back, m_enlarge});
    return rows;
}

void PatternEditor::wire()
{
    connect(m_board, &PatternBoard::taken, this, [this](int index) {
        m_board->setInHand(index);
        showOwn();
    });
    connect(m_board, &PatternBoard::pressed, this, &PatternEditor::pressed);
    connect(m_board, &PatternBoard::moveWanted, this, &PatternEditor::move);
    connect(m_board, &PatternBoard::pageWanted, this, &PatternEditor::add);
    connect(m_board, &PatternBoard::addWanted, this, &PatternEditor::addSomewhere);
    connect(m_board, &PatternBoard::removeWanted, this, &PatternEditor::remove);
    connect(m_board, &PatternBoard::stopWanted, this, [this] {
        if (m_numbered)
            endNumbering();
        else
            endPhoto();
    });
    connect(m_number, &KeyButton::clicked, this, [this] { m_numbered ? endNumbering() : beginNumbering(); });
    connect(m_photo, &KeyButton::clicked, this, [this] { m_board->hasPhoto() ? endPhoto() : askForPhoto(); });
    connect(m_add, &KeyButton::clicked, this, &PatternEditor::addSomewhere);
    connect(m_remove, &KeyButton::clicked, this, [this] { remove(m_board->inHand()); });
    connect(m_enlarge, &KeyButton::clicked, this, [this] { m_drawing->setLarge(!m_drawing->isLarge()); });
    connect(m_drawing, &PatternWindow::changed, this, &PatternEditor::showEnlarge);
    connect(m_back, &KeyButton::clicked, this, &PatternEditor::undo);
    for (ValueField *field : {m_ownThread, m_ownLength}) {
        connect(field, &ValueField::edited, this, &PatternEditor::typedOwn);
        connect(field, &ValueField::entered, field, &ValueField::moveOn);
    }
    connect(m_ownThread, &ValueField::left, this, &PatternEditor::ownThreadLeft);
}

void PatternEditor::setPattern(const Pattern &pattern)
{
    m_numbered.reset();
    m_behindPhoto.reset();
    m_bare = false;
    m_board->setPhoto({});
    m_before.clear();
    m_pattern = pattern;
    refresh();
    m_board->setInHand(pattern.places.empty() ? -1 : 0);
    showOwn();
    say();
}

void PatternEditor::replace(const Pattern &pattern, const Pattern &before)
{
    std::vector<Pattern> history = std::move(m_before);
    if (!history.empty() && history.back() == before)
        history.pop_back();
    if (!before.places.empty() && pattern != before)
        history.push_back(before);
    if (pattern != m_pattern)
        setPattern(pattern);
    m_before = std::move(history);
    refresh();
}

void PatternEditor::setOrder(const TighteningOrder &order)
{
    m_order = order;
    refresh();
}

bool PatternEditor::apply(Pattern pattern, int inHand)
{
    auto checked = checkedPattern(std::move(pattern));
    if (!checked) {
        m_says->refuse(sentence(checked.error()));
        return false;
    }
    if (*checked == m_pattern)
        return true;
    m_before.push_back(m_pattern);
    if (m_before.size() > mostTakenBack)
        m_before.erase(m_before.begin());
    m_pattern = *std::move(checked);
    m_bare = false;
    refresh();
    m_board->setInHand(inHand);
    showOwn();
    say();
    Q_EMIT edited();
    return true;
}

void PatternEditor::undo()
{
    // On a photo Backspace takes back.
    if (m_before.empty() || m_numbered || m_board->hasPhoto())
        return;
    m_pattern = std::move(m_before.back());
    m_before.pop_back();
    refresh();
    showOwn();
    say();
    Q_EMIT edited();
}

void PatternEditor::move(int index, const QPointF &place)
{
    // One alone has nothing to be moved against.
    if (m_pattern.places.size() < 2 && !m_board->hasPhoto())
        return;
    Pattern moved = m_pattern;
    moved.kind = PatternKind::Free;
    moved.places[std::size_t(index)].x = place.x();
    moved.places[std::size_t(index)].y = place.y();
    apply(std::move(moved), index);
}

void PatternEditor::add(const QPointF &place)
{
    const bool keyboard = m_board->keyboardIsHere();
    Pattern more = m_bare ? Pattern{} : m_pattern;
    more.kind = PatternKind::Free;
    more.places.push_back({.number = nextNumber(more), .x = place.x(), .y = place.y()});
    const int index = int(more.places.size()) - 1;
    if (apply(std::move(more), index) && (keyboard || m_board->hasPhoto()))
        m_board->focusInHand();
}

/// Onto the middle of the photo, or beside all the others: from there it is moved to where it belongs.
void PatternEditor::addSomewhere()
{
    if (m_numbered)
        return;
    if (m_board->hasPhoto()) {
        add(m_board->toPattern(QRectF(m_board->rect()).center()));
        return;
    }
    QPointF at;
    if (!m_pattern.places.empty()) {
        const auto rightmost = std::ranges::max_element(m_pattern.places, {}, &FastenerPosition::x);
        at = {rightmost->x + 1, rightmost->y};
    }
    add(at);
}

void PatternEditor::remove(int index)
{
    if (m_numbered || m_bare || index < 0 || index >= int(m_pattern.places.size()))
        return;
    if (m_pattern.places.size() == 1 && m_behindPhoto) {
        bareAgain();
        return;
    }
    if (m_pattern.places.size() == 1) {
        m_says->refuse(tr("One place stays: a joint has at least one fastener."));
        return;
    }
    const bool keyboard = m_board->keyboardIsHere();
    Pattern fewer = m_pattern;
    const int gone = fewer.places[std::size_t(index)].number;
    fewer.kind = PatternKind::Free;
    fewer.places.erase(fewer.places.begin() + index);
    for (FastenerPosition &place : fewer.places)
        place.number -= place.number > gone ? 1 : 0;
    const int next = std::min(index, int(fewer.places.size()) - 1);
    if (apply(std::move(fewer), next) && keyboard)
        m_board->focusInHand();
}

/// The last place clicked was taken away: what stood before the photo counts again.
void PatternEditor::bareAgain()
{
    m_pattern = *m_behindPhoto;
    m_bare = true;
    refresh();
    showOwn();
    m_board->focusInHand();
    Q_EMIT edited();
}

void PatternEditor::take(int number)
{
    for (int at = 0; at < int(m_pattern.places.size()); ++at)
        if (m_pattern.places[std::size_t(at)].number == number)
            m_board->setInHand(at);
    showOwn();
}

void PatternEditor::refuseThread(const QString &sentence)
{
    m_ownThread->refuse(sentence);
}

void PatternEditor::acceptThread()
{
    m_ownThread->accept();
}

void PatternEditor::typedOwn()
{
    const int index = m_board->inHand();
    if (index < 0 || m_bare)
        return;
    FastenerPosition &place = m_pattern.places[std::size_t(index)];
    place.thread = m_ownThread->text().toStdString();
    place.length = m_ownLength->text().toStdString();
    refresh();
    Q_EMIT edited();
}

void PatternEditor::refresh()
{
    // A photo that has no place yet hides those there were.
    m_board->setPattern(m_bare ? Pattern{} : m_pattern, m_bare ? TighteningOrder{} : m_order);
    const bool photo = m_board->hasPhoto();
    const bool some = !m_pattern.places.empty() && !m_bare;
    m_number->setText(m_numbered ? tr("Numbered so far is enough") : tr("Number by clicking"));
    m_number->setEnabled(some);
    m_photo->setText(photo ? tr("Done with the photo") : tr("Click on a photo…"));
    m_photo->setEnabled(!m_numbered);
    m_add->setEnabled(!m_numbered);
    m_remove->setEnabled(some && !m_numbered);
    m_back->setEnabled(!m_before.empty() && !m_numbered && !photo);
}

void PatternEditor::showOwn()
{
    const int index = m_bare ? -1 : m_board->inHand();
    // Until all are numbered, a number does not tell which is meant.
    const bool some = index >= 0 && index < int(m_pattern.places.size()) && !m_numbered;
    const FastenerPosition place = some ? m_pattern.places[std::size_t(index)] : FastenerPosition{};
    m_ownThread->setLabel(some ? tr("Thread of fastener %1").arg(place.number) : tr("Thread of one fastener"));
    m_ownLength->setLabel(some ? tr("Length of fastener %1").arg(place.number) : tr("Length of one fastener"));
    if (m_ownThread->text() != QString::fromStdString(place.thread)) {
        m_ownThread->setText(QString::fromStdString(place.thread));
        m_ownThread->accept();
    }
    m_ownLength->setText(QString::fromStdString(place.length));
    m_ownThread->setEnabled(some);
    m_ownLength->setEnabled(some);
}

void PatternEditor::showEnlarge()
{
    m_enlarge->setVisible(m_drawing->isCrowded());
    m_enlarge->setText(m_drawing->isLarge() ? tr("Show all") : tr("Enlarge"));
    m_enlarge->setAccessibleName(m_drawing->isLarge() ? tr("Show all of the drawing") : tr("Enlarge the drawing"));
}

/// What can be done here now, by mouse and by keys.
void PatternEditor::say()
{
    if (m_numbered)
        m_says->quiet(tr("Click number %1 on the drawing, or go to it with the arrow keys and press Enter. Esc stops.")
                          .arg(int(m_numbered->size()) + 1));
    else if (m_board->hasPhoto())
        m_says->quiet(
            tr("Click each place in the order of the numbers. Backspace takes the last away; Insert puts one in the middle for the "
               "arrow keys."));
    else if (m_pattern.places.size() > 1)
        m_says->quiet(tr("Drag a place, or move it with the arrow keys, with Shift farther. Page Down goes to the next."));
    else
        m_says->clear();
}

void PatternEditor::pressed(int index)
{
    m_board->setInHand(index);
    showOwn();
    if (!m_numbered || std::ranges::find(*m_numbered, index) != m_numbered->end())
        return;
    m_numbered->push_back(index);
    m_board->setNumbered(m_numbered);
    if (m_numbered->size() == m_pattern.places.size())
        endNumbering();
    else
        say();
}

void PatternEditor::beginNumbering()
{
    if (m_pattern.places.empty() || m_bare)
        return;
    m_numbered.emplace();
    m_board->setNumbered(m_numbered);
    refresh();
    showOwn();
    say();
    m_board->focusInHand();
}

void PatternEditor::endNumbering()
{
    if (!m_numbered)
        return;
    const std::vector<int> clicked = *std::exchange(m_numbered, std::nullopt);
    m_board->setNumbered(std::nullopt);
    auto numbered = clicked.empty() ? Result<Pattern>(m_pattern) : renumbered(m_pattern, numbersAfter(m_pattern, clicked));
    if (!numbered)
        m_says->refuse(sentence(numbered.error()));
    else
        apply(*std::move(numbered), m_board->inHand());
    refresh();
    showOwn();
    say();
}

void PatternEditor::askForPhoto()
{
    auto *dialog = new QFileDialog(this, tr("A photo of the part"));
    dialog->setOption(QFileDialog::DontUseNativeDialog);
    dialog->setFileMode(QFileDialog::ExistingFile);
    dialog->setNameFilter(tr("Pictures (*.jpg *.jpeg *.png *.webp *.bmp *.gif)"));
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QFileDialog::fileSelected, this, &PatternEditor::showPhoto);
    dialog->open();
}

bool PatternEditor::showPhoto(const QString &path)
{
    const QImage photo = readPhoto(path);
    if (photo.isNull()) {
        m_says->refuse(tr("“%1” cannot be read as a picture. The places are as they were; choose another file.").arg(path));
        return false;
    }
    endNumbering();
    m_behindPhoto = m_pattern;
    m_bare = true;
    m_board->setPhoto(photo);
    refresh();
    showOwn();
    say();
    m_board->focusInHand();
    return true;
}

void PatternEditor::endPhoto()
{
    if (!m_board->hasPhoto())
        return;
    endNumbering();
    m_behindPhoto.reset();
    m_bare = false;
    m_board->setPhoto({});
    refresh();
    showOwn();
    say();
}

} // namespace asleft
