#pragma once

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QGroupBox>
#include <QLabel>
#include <QLineEdit>
#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainter>
#include <QSet>
#include <QTranslator>

namespace asleft::testing {

/// A language that nobody speaks: every sentence between brackets, its letters Cyrillic ones, its arguments where they were. A Latin letter
/// on the screen has then not come through the translator: it is data, a unit, or a sentence that cannot be translated.
class PseudoLanguage : public QTranslator {
public:
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char * /*context*/, const char *source, const char * /*disambiguation*/,
                                    int /*count*/) const override
    {
        const QString text = QString::fromUtf8(source);
        QString said(u'[');
        for (qsizetype at = 0; at < text.size(); ++at) {
            const QChar letter = text[at];
            const bool argument = at > 0 && text[at - 1] == u'%' && letter == u'n';
            said += !argument && isLatin(letter) ? QChar(0x400 + letter.unicode()) : letter;
        }
        return said + u']';
    }

    [[nodiscard]] static bool isLatin(QChar letter) { return (letter >= u'a' && letter <= u'z') || (letter >= u'A' && letter <= u'Z'); }
};

/// Nothing is painted on it; the texts that would be are kept.
class PaintedTexts : public QPaintDevice {
public:
    static QStringList of(QWidget &widget)
    {
        PaintedTexts device(widget.size());
        widget.render(&device, {}, {}, QWidget::DrawWindowBackground);
        return device.m_engine.texts;
    }

    [[nodiscard]] QPaintEngine *paintEngine() const override { return &m_engine; }

protected:
    [[nodiscard]] int metric(PaintDeviceMetric asked) const override
    {
        switch (asked) {
        case PdmWidth: return m_size.width();
        case PdmHeight: return m_size.height();
        case PdmWidthMM: return m_size.width() / 4;
        case PdmHeightMM: return m_size.height() / 4;
        case PdmNumColors: return 1 << 24;
        case PdmDepth: return 32;
        case PdmDpiX:
        case PdmDpiY:
        case PdmPhysicalDpiX:
        case PdmPhysicalDpiY: return 96;
        case PdmDevicePixelRatio: return 1;
        default: return QPaintDevice::metric(asked);
        }
    }

private:
    class Engine : public QPaintEngine {
    public:
        Engine() : QPaintEngine(QPaintEngine::AllFeatures) {}
        bool begin(QPaintDevice * /*device*/) override { return true; }
        bool end() override { return true; }
        void updateState(const QPaintEngineState & /*state*/) override {}
        void drawPixmap(const QRectF & /*to*/, const QPixmap & /*pixmap*/, const QRectF & /*from*/) override {}
        void drawPath(const QPainterPath & /*path*/) override {}
        void drawPolygon(const QPointF * /*points*/, int /*count*/, PolygonDrawMode /*mode*/) override {}
        void drawTextItem(const QPointF & /*where*/, const QTextItem &item) override { texts.append(item.text()); }
        [[nodiscard]] Type type() const override { return User; }
        QStringList texts;
    };

    explicit PaintedTexts(QSize size) : m_size(size) {}

    QSize m_size;
    mutable Engine m_engine;
};

/// What a window shows or says of itself, read from its visible widgets, with where it was read.
class ShownTexts {
public:
    struct Text {
        QString where;
        QString text;
    };

    explicit ShownTexts(QWidget &window)
    {
        read(window);
        for (QWidget *widget : window.findChildren<QWidget *>())
            if (widget->isVisibleTo(&window))
                read(*widget);
    }

    [[nodiscard]] const QList<Text> &texts() const { return m_texts; }
    /// What stands in the fields: whoever typed it knows its language.
    [[nodiscard]] const QSet<QString> &typed() const { return m_typed; }

private:
    void read(QWidget &widget)
    {
        add(widget, "title", widget.windowTitle());
        add(widget, "tip", widget.toolTip());
        add(widget, "name", widget.accessibleName());
        add(widget, "description", widget.accessibleDescription());
        if (const auto *label = qobject_cast<QLabel *>(&widget))
            add(widget, "text", label->text());
        if (const auto *button = qobject_cast<QAbstractButton *>(&widget))
            add(widget, "text", button->text());
        if (const auto *box = qobject_cast<QGroupBox *>(&widget))
            add(widget, "text", box->title());
        if (const auto *edit = qobject_cast<QLineEdit *>(&widget)) {
            add(widget, "placeholder", edit->placeholderText());
            m_typed.insert(edit->text());
        }
        if (const auto *view = qobject_cast<QAbstractItemView *>(&widget))
            readRows(widget, *view->model());
        // What has its text read above paints it in pieces.
        const bool isRead = qobject_cast<QLabel *>(&widget) || qobject_cast<QLineEdit *>(&widget) ||
                            qobject_cast<QAbstractItemView *>(widget.parentWidget());
        if (!isRead)
            for (const QString &text : PaintedTexts::of(widget))
                add(widget, "painting", text);
    }

    void readRows(QWidget &widget, const QAbstractItemModel &model)
    {
        for (int row = 0; row < model.rowCount(); ++row)
            for (int column = 0; column < model.columnCount(); ++column)
                for (const QVariant &text : textsOf(model.index(row, column)))
                    add(widget, "row", text.toString());
    }

    static QVariantList textsOf(const QModelIndex &index)
    {
        QVariantList texts;
        for (const int role : {int(Qt::DisplayRole), int(Qt::ToolTipRole), int(Qt::AccessibleTextRole), int(Qt::AccessibleDescriptionRole),
                               int(Qt::UserRole), Qt::UserRole + 1, Qt::UserRole + 2, Qt::UserRole + 3, Qt::UserRole + 4})
            if (index.data(role).typeId() == QMetaType::QString)
                texts.append(index.data(role));
        return texts;
    }

    void add(const QWidget &widget, const char *what, const QString &text)
    {
        if (!text.isEmpty())
            m_texts.append({QStringLiteral("%1 of %2").arg(QLatin1String(what), QLatin1String(widget.metaObject()->className())), text});
    }

    QList<Text> m_texts;
    QSet<QString> m_typed;
};

} // namespace asleft::testing
