#pragma once

#include <parts/heading.h>

#include <QWidget>

namespace asleft {

/// The head of a page: what it is about, a quiet word beside it, two lines at the right, and the heavy rule under it all.
class PageHead : public QWidget {
    Q_OBJECT

public:
    explicit PageHead(const QString &title, QWidget *parent = nullptr);

    void setTitle(const QString &title);
    void setBeside(const QString &words);
    void setRight(const QString &strong, const QString &quiet);

private:
    Heading *m_title;
    Heading *m_beside;
    Heading *m_strong;
    Heading *m_quiet;
};

} // namespace asleft
