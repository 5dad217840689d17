// Two longer ways to lay places out: numbering one after the other, and clicking on a photo.
#include <forms/pattern_editor.h>

#include <drawn/pattern_board.h>
#include <drawn/pattern_photo.h>
#include <parts/message_line.h>

#include <words/errors.h>

#include <QFileDialog>

#include <algorithm>
#include <utility>

namespace asleft {

namespace {

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
