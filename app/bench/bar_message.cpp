#include <bench/bar_message.h>

#include <parts/message_line.h>
#include <parts/reading_edit.h>

namespace asleft {

BarMessage::BarMessage(ReadingEdit *edit) : m_edit(edit), m_line(new MessageLine)
{
    QSizePolicy kept = m_line->sizePolicy();
    kept.setRetainSizeWhenHidden(true);
    m_line->setSizePolicy(kept);
    m_line->setMinimumHeight(m_line->fontMetrics().height());
}

void BarMessage::ask(const QString &sentence)
{
    m_noticed = false;
    m_line->refuse(sentence);
}

void BarMessage::notice(const QString &sentence)
{
    m_noticed = true;
    m_line->refuse(sentence);
}

void BarMessage::refuse(const QString &sentence)
{
    m_edit->setRefused(!m_edit->text().isEmpty());
    m_edit->selectAll();
    ask(sentence);
}

void BarMessage::done(const QString &sentence)
{
    m_noticed = false;
    m_line->done(sentence);
}

void BarMessage::quiet()
{
    m_noticed = false;
    m_line->clear();
}

void BarMessage::typed()
{
    if (!m_noticed)
        m_line->clear();
    m_edit->setRefused(false);
}

} // namespace asleft
