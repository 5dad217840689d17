#include <window/page_tabs.h>

#include <parts/ink_of.h>
#include <parts/key_button.h>

#include <QButtonGroup>
#include <QEvent>
#include <QHBoxLayout>
#include <QPainter>

namespace asleft {

namespace {

constexpr int barHeight = 64;
constexpr qreal edge = 2.5;
constexpr int lookRoom = 112;

QFont tabFont(bool open)
{
    QFont font = textFont(open ? TextSize::BodyStrong : TextSize::Body);
    font.setPixelSize(17);
    return font;
}

} // namespace

PageTab::PageTab(const QString &text, QWidget *parent) : QAbstractButton(parent)
{
    setText(text);
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

QSize PageTab::sizeHint() const
{
    return {QFontMetrics(tabFont(true)).horizontalAdvance(text()) + 48, barHeight};
}

QSize PageTab::minimumSizeHint() const
{
    return sizeHint();
}

bool PageTab::event(QEvent *event)
{
    // Its letter opens it at once, without the button's own show of being pressed for a while.
    if (event->type() != QEvent::Shortcut)
        return QAbstractButton::event(event);
    click();
    return true;
}

void PageTab::paintEvent(QPaintEvent *)
{
    const Ink &ink = inkOf(*this);
    QPainter painter(this);
    painter.fillRect(rect(), isChecked() ? ink.paper : ink.casting);
    if (isChecked()) {
        if (x() > 0)
            painter.fillRect(QRectF(0, 0, edge, height()), ink.strongLine);
        painter.fillRect(QRectF(width() - edge, 0, edge, height()), ink.strongLine);
    } else {
        painter.fillRect(QRectF(0, 0, width(), edge), ink.strongLine);
    }
    painter.setFont(tabFont(isChecked()));
    painter.setPen(ink.text);
    painter.drawText(rect(), Qt::AlignCenter | Qt::TextShowMnemonic, text());
    if (hasFocus())
        paintFocusRing(painter, QRectF(rect()).adjusted(6, 8, -6, -8), ink);
}

PageTabs::PageTabs(QWidget *parent) : QWidget(parent), m_tabs(new QButtonGroup(this)), m_look(nullptr)
{
    setFixedHeight(barHeight);
    setAccessibleName(tr("Places"));
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(0);
    const QStringList names{tr("&Vehicles"), tr("&Jobs"), tr("&Bench"), tr("&Specs"), tr("&Tools")};
    for (const QString &name : names) {
        auto *tab = new PageTab(name);
        const int page = int(m_tabs->buttons().size());
        tab->setAccessibleName(QString(name).remove(QLatin1Char('&')));
        tab->setToolTip(tr("Ctrl+%1").arg(page + 1));
        m_tabs->addButton(tab, page);
        row->addWidget(tab, 1);
    }
    auto *look = new KeyButton({});
    look->setPlain(true);
    look->setFixedWidth(lookRoom);
    row->addWidget(look);
    m_look = look;
    connect(look, &KeyButton::clicked, this, &PageTabs::otherLookWanted);
    connect(m_tabs, &QButtonGroup::idClicked, this, [this](int page) { Q_EMIT pageWanted(Page(page)); });
    setPage(Page::Vehicles);
}

void PageTabs::setPage(Page page)
{
    tab(page)->setChecked(true);
}

Page PageTabs::page() const
{
    return Page(m_tabs->checkedId());
}

PageTab *PageTabs::tab(Page page) const
{
    return qobject_cast<PageTab *>(m_tabs->button(int(page)));
}

void PageTabs::setOtherLook(const QString &words)
{
    m_look->setText(words);
}

void PageTabs::paintEvent(QPaintEvent *)
{
    const Ink &ink = inkOf(*this);
    QPainter painter(this);
    painter.fillRect(rect(), ink.casting);
    painter.fillRect(QRectF(0, 0, width(), edge), ink.strongLine);
}

} // namespace asleft
