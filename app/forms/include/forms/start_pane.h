#pragma once

#include <QWidget>

namespace asleft {

class MessageLine;

/// Where one begins without a garage: make one, or open one.
class StartPane : public QWidget {
    Q_OBJECT

public:
    explicit StartPane(QWidget *parent = nullptr);

    [[nodiscard]] MessageLine *message() const { return m_message; }

Q_SIGNALS:
    void newWanted(const QString &path);
    void openWanted(const QString &path);

private:
    void buildLayout();
    void askNew();
    void askOpen();

    MessageLine *m_message;
};

} // namespace asleft
