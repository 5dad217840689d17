#include <bench/paper_box.h>

#include <parts/ink_of.h>

#include <QKeyEvent>

#include <algorithm>

namespace asleft {

namespace {

using Word = PaperBox::Word;

constexpr int boxWidth = 96;

/// What a letter writes on an empty box: the same letters as at the bar.
struct LetterOfWord {
    char16_t letter;
    Word word;
};
constexpr LetterOfWord everyWord[] = {{u's', Word::Leaf}, {u'l', Word::Loose}, {u't', Word::Tight}, {u'f', Word::ByFeel}};

TypedReading readingOf(Word word, bool turns)
{
    switch (word) {
    case Word::Leaf: return {.form = turns ? ReadingForm::Turned : ReadingForm::Exact, .specLeaf = true};
    case Word::Loose: return {.form = ReadingForm::Loose};
    case Word::Tight: return {.form = ReadingForm::Tight};
    case Word::ByFeel: break;
    }
    return {.form = ReadingForm::ByFeel};
}

} // namespace

PaperBox::PaperBox(QWidget *parent) : LineEdit(parent)
{
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
}

QSize PaperBox::sizeHint() const
{
    return {boxWidth, touchHeight};
}

QString PaperBox::wordText(Word word) const
{
    switch (word) {
    case Word::Leaf: return !m_leafFound.isEmpty() ? m_leafFound : m_as.turns ? tr("spec turns") : tr("spec leaf");
    case Word::Loose: return tr("loose");
    case Word::Tight: return tr("tight");
    case Word::ByFeel: break;
    }
    return tr("by feel");
}

void PaperBox::write(Word word)
{
    setText(wordText(word));
    Q_EMIT textEdited(text());
}

Result<std::optional<TypedReading>> PaperBox::read() const
{
    const QString typed = text().trimmed();
    if (typed.isEmpty())
        return std::optional<TypedReading>();
    for (const auto &[letter, word] : everyWord)
        if (typed.compare(wordText(word), Qt::CaseInsensitive) == 0 && !(word == Word::Leaf && !m_leafFound.isEmpty()))
            return std::optional(readingOf(word, m_as.turns));
    auto reading = readTyped(typed, m_as);
    if (!reading)
        return tl::unexpected(std::move(reading.error()));
    return std::optional(std::move(*reading));
}

void PaperBox::keyPressEvent(QKeyEvent *event)
{
    const auto key = static_cast<Qt::Key>(event->key());
    if (key == Qt::Key_Up || key == Qt::Key_Down) {
        Q_EMIT arrowPressed(key);
        return;
    }
    const bool bare = (event->modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier)) == Qt::NoModifier;
    const QChar letter = event->text().isEmpty() ? QChar() : event->text().front().toLower();
    const auto said = std::ranges::find(everyWord, letter.unicode(), &LetterOfWord::letter);
    if (bare && text().isEmpty() && said != std::end(everyWord))
        write(said->word);
    else
        LineEdit::keyPressEvent(event);
}

void PaperBox::focusInEvent(QFocusEvent *event)
{
    LineEdit::focusInEvent(event);
    Q_EMIT focused();
}

} // namespace asleft
