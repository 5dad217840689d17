#pragma once

#include <shop/things.h>

#include <QWidget>

#include <vector>

namespace asleft {

/// Cautions written out: a bold title and a sentence each, and under them that the manual goes before this program.
class CautionWordsView : public QWidget {
    Q_OBJECT

public:
    explicit CautionWordsView(QWidget *parent = nullptr);

    void setCautions(const std::vector<Caution> &cautions);
};

} // namespace asleft
