#include <parts/notes.h>

#include <parts/heading.h>

#include <QVBoxLayout>

namespace asleft {

namespace {

Heading *paragraph(const QString &text, TextSize size, Heading::Tone tone)
{
    auto *words = new Heading(text, size, tone);
    words->setWordWrap(true);
    // Its height follows from its width alone: what Qt guesses without one is for a narrower column, and leaves the sheet blank below.
    QSizePolicy policy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    words->setSizePolicy(policy);
    return words;
}

} // namespace

Notes::Notes(const QString &name, QWidget *parent) : QWidget(parent), m_column(new QVBoxLayout(this))
{
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(2);
    setAccessibleName(name);
}

void Notes::setNotes(const QList<Note> &notes)
{
    if (notes == m_notes)
        return;
    m_notes = notes;
    while (QLayoutItem *item = m_column->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    for (const Note &note : notes) {
        if (!note.head.isEmpty())
            m_column->addWidget(paragraph(note.head, TextSize::BodyStrong, Heading::Tone::Plain));
        m_column->addWidget(
            paragraph(note.words, note.quiet ? TextSize::Small : TextSize::Body, note.quiet ? Heading::Tone::Quiet : Heading::Tone::Plain));
        m_column->addSpacing(6);
    }
    m_column->addStretch(1);
}

} // namespace asleft
