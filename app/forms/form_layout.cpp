#include "form_layout.h"

#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/rule.h>

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace asleft {

QLayout *groupHead(const QString &words)
{
    auto *row = new QHBoxLayout;
    row->setSpacing(14);
    row->addWidget(new Heading(words, TextSize::BodyStrong));
    row->addWidget(new Rule, 1, Qt::AlignVCenter);
    return row;
}

QVBoxLayout *columnUnder(const QString &head, QWidget *form)
{
    auto *column = new QVBoxLayout(form);
    column->setContentsMargins(8, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(new Heading(head, TextSize::BodyStrong));
    return column;
}

void addPair(QVBoxLayout &column, QWidget *left, QWidget *right)
{
    auto *row = new QHBoxLayout;
    row->setSpacing(10);
    row->addWidget(left, 1);
    row->addWidget(right, 1);
    column.addLayout(row);
}

void addEnd(QVBoxLayout &column, MessageLine *message, KeyButton *save)
{
    column.addWidget(message);
    column.addWidget(save, 0, Qt::AlignLeft);
    save->setStrong(true);
}

} // namespace asleft
