#include <parts/page_head.h>

#include <parts/ink_of.h>
#include <parts/rule.h>

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace asleft {

namespace {

constexpr int headHeight = 62;
constexpr int leastTitle = 60;
constexpr int overhang = 2; ///< some capitals reach left of where they stand

} // namespace

PageHead::PageHead(const QString &title, QWidget *parent)
    : QWidget(parent), m_title(new Heading(title, TextSize::Title)), m_beside(new Heading({}, TextSize::Now, Heading::Tone::Quiet)),
      m_strong(new Heading({}, TextSize::BodyStrong)), m_quiet(new Heading({}, TextSize::Small, Heading::Tone::Quiet))
{
    QFont beside = m_beside->font();
    beside.setWeight(QFont::Normal);
    m_beside->setFont(beside);
    // Long names give way before the sheet does.
    m_title->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Preferred);
    m_title->setMinimumWidth(leastTitle);
    m_title->setIndent(overhang);
    m_beside->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);

    auto *right = new QVBoxLayout;
    right->setSpacing(2);
    right->addStretch(1);
    right->addWidget(m_strong, 0, Qt::AlignRight);
    right->addWidget(m_quiet, 0, Qt::AlignRight);
    right->addStretch(1);

    auto *words = new QHBoxLayout;
    words->setContentsMargins(paneMargin - overhang, 0, paneMargin, 0);
    words->setSpacing(32);
    words->addWidget(m_title);
    words->addWidget(m_beside, 1);
    words->addLayout(right);

    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 6, 0, 0);
    column->setSpacing(0);
    column->addLayout(words, 1);
    auto *under = new QHBoxLayout;
    under->setContentsMargins(paneMargin, 0, paneMargin, 0);
    under->addWidget(new Rule(Rule::Weight::Heavy));
    column->addLayout(under);
    setRight({}, {});
    setFixedHeight(headHeight);
}

void PageHead::setTitle(const QString &title)
{
    m_title->setText(title);
}

void PageHead::setBeside(const QString &words)
{
    m_beside->setText(words);
}

void PageHead::setRight(const QString &strong, const QString &quiet)
{
    m_strong->setText(strong);
    m_quiet->setText(quiet);
    m_strong->setVisible(!strong.isEmpty());
    m_quiet->setVisible(!quiet.isEmpty());
}

} // namespace asleft
