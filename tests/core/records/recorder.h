#pragma once

#include <QFontMetricsF>
#include <QList>
#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainter>
#include <QPainterPath>
#include <QPolygonF>
#include <QRectF>
#include <QString>

#include <memory>

namespace asleft {

/// A text as it lies on the paper.
struct RecordedText {
    QString text;
    QRectF box;      ///< from ascent to descent, in points
    double size = 0; ///< of its type, in points
    bool strong = false;
};

struct RecordedPage {
    QList<RecordedText> texts;
    QList<QRectF> rectangles; ///< outlines drawn as rectangles
    QList<QRectF> shapes;     ///< around lines, paths and ellipses
};

/// Keeps what is painted instead of showing it.
class RecordingEngine : public QPaintEngine {
public:
    RecordingEngine() : QPaintEngine(AllFeatures) {}

    bool begin(QPaintDevice *) override { return true; }
    bool end() override { return true; }
    Type type() const override { return User; }
    void updateState(const QPaintEngineState &state) override
    {
        if (state.state() & DirtyTransform)
            m_transform = state.transform();
    }
    void drawPixmap(const QRectF &, const QPixmap &, const QRectF &) override {}
    void drawPath(const QPainterPath &path) override { addShape(path.boundingRect()); }
    void drawPolygon(const QPointF *points, int count, PolygonDrawMode) override
    {
        addShape(QPolygonF(QList<QPointF>(points, points + count)).boundingRect());
    }
    void drawEllipse(const QRectF &box) override { addShape(box); }
    void drawLines(const QLineF *lines, int count) override
    {
        for (int index = 0; index < count; ++index)
            addShape(QRectF(lines[index].p1(), lines[index].p2()).normalized());
    }
    void drawRects(const QRectF *rectangles, int count) override
    {
        for (int index = 0; index < count; ++index)
            pages.last().rectangles.append(m_transform.mapRect(rectangles[index]));
    }
    void drawTextItem(const QPointF &at, const QTextItem &item) override
    {
        const QRectF box(at.x(), at.y() - item.ascent(), item.width(), item.ascent() + item.descent());
        pages.last().texts.append({item.text(), m_transform.mapRect(box), item.font().pixelSize() * m_transform.m11(), item.font().bold()});
    }

    QList<RecordedPage> pages{RecordedPage{}};

private:
    void addShape(const QRectF &box) { pages.last().shapes.append(m_transform.mapRect(box)); }

    QTransform m_transform;
};

/// Paper with a dot a point.
class RecordingPaper : public QPaintDevice {
public:
    explicit RecordingPaper(QSize size) : m_size(size) {}

    QPaintEngine *paintEngine() const override { return m_engine.get(); }
    [[nodiscard]] const QList<RecordedPage> &pages() const { return m_engine->pages; }
    void nextPage() { m_engine->pages.append(RecordedPage{}); }

protected:
    int metric(PaintDeviceMetric metric) const override
    {
        switch (metric) {
        case PdmWidth: return m_size.width();
        case PdmHeight: return m_size.height();
        case PdmDpiX:
        case PdmDpiY:
        case PdmPhysicalDpiX:
        case PdmPhysicalDpiY: return 72;
        case PdmDepth: return 24;
        case PdmDevicePixelRatio: return 1;
        default: return QPaintDevice::metric(metric);
        }
    }

private:
    QSize m_size;
    std::unique_ptr<RecordingEngine> m_engine = std::make_unique<RecordingEngine>();
};

} // namespace asleft
