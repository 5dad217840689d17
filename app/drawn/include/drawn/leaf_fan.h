#pragma once

#include <measure/parse.h>

#include <QWidget>

#include <vector>

namespace asleft {

/// The leaves of a feeler set side by side, each as thick as it is beside the others.
class LeafFan : public QWidget {
    Q_OBJECT

public:
    explicit LeafFan(QWidget *parent = nullptr);

    void show(const std::vector<Typed<Length>> &leaves);

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    std::vector<Typed<Length>> m_leaves;
};

} // namespace asleft
