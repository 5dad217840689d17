#pragma once

#include <QWidget>

namespace asleft {

/// A ruled line across the sheet, or down it.
class Rule : public QWidget {
    Q_OBJECT

public:
    enum class Weight { Fine, Heavy };

    explicit Rule(Weight weight = Weight::Fine, Qt::Orientation orientation = Qt::Horizontal, QWidget *parent = nullptr);

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    Weight m_weight;
};

} // namespace asleft
