#pragma once

#include <QString>

class QLayout;
class QVBoxLayout;
class QWidget;

namespace asleft {

class KeyButton;
class MessageLine;

/// The name of a group of fields with the rule that runs on from it.
QLayout *groupHead(const QString &words);

/// The column of a form for one more thing, with its name above.
QVBoxLayout *columnUnder(const QString &head, QWidget *form);
/// Two parts of a form beside each other, equally wide.
void addPair(QVBoxLayout &column, QWidget *left, QWidget *right);
/// What a form ends with: the one sentence, and the key that keeps what is typed.
void addEnd(QVBoxLayout &column, MessageLine *message, KeyButton *save);

} // namespace asleft
