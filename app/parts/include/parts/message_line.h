#pragma once

#include <QLabel>

namespace asleft {

/// One sentence: a refusal, that something is done, or a quiet note. It wraps and is never cut off; to a screen reader it is an alert
/// whose name is the sentence. Empty, it takes no room.
class MessageLine : public QLabel {
    Q_OBJECT

public:
    enum class Role { Quiet, Done, Refusal };

    explicit MessageLine(QWidget *parent = nullptr);

    void say(Role role, const QString &sentence);
    void refuse(const QString &sentence) { say(Role::Refusal, sentence); }
    void done(const QString &sentence) { say(Role::Done, sentence); }
    void quiet(const QString &sentence) { say(Role::Quiet, sentence); }
    void clear();

    [[nodiscard]] Role role() const { return m_role; }
    [[nodiscard]] const QString &sentence() const { return m_sentence; }

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    Role m_role = Role::Quiet;
    QString m_sentence;
};

} // namespace asleft
