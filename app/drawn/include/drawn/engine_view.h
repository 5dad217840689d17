#pragma once

#include <draw/engine_drawing.h>

#include <QWidget>

namespace asleft {

/// The engine as far as it has been typed.
class EngineView : public QWidget {
    Q_OBJECT

public:
    explicit EngineView(QWidget *parent = nullptr);

    void show(const EngineSketch &sketch);

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    EngineSketch m_sketch;
};

} // namespace asleft
