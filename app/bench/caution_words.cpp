#include "caution_words.h"

#include <parts/heading.h>

#include <words/cautions.h>

#include <QVBoxLayout>

namespace asleft {

CautionWordsView::CautionWordsView(QWidget *parent) : QWidget(parent)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
}

void CautionWordsView::setCautions(const std::vector<Caution> &cautions)
{
    auto *column = static_cast<QVBoxLayout *>(layout());
    while (QLayoutItem *item = column->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    for (const Caution caution : cautions) {
        const CautionWords words = cautionWords(caution);
        column->addWidget(Heading::wrapped(words.title, TextSize::SmallStrong));
        column->addWidget(Heading::wrapped(words.sentence, TextSize::Small));
        column->addSpacing(6);
    }
    if (!cautions.empty())
        column->addWidget(Heading::wrapped(standingSentence(), TextSize::Small, Heading::Tone::Quiet));
    setVisible(!cautions.empty());
}

} // namespace asleft
