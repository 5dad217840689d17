#pragma once

#include <parts/app_context.h>

#include <shop/outlook.h>
#include <shop/subject.h>

#include <QWidget>

#include <array>

namespace asleft {

class Heading;
class RuledList;
class RuledRows;

/// Still open, always in sight: what stands between now and turning the crank, first start, and hand-over, each counted.
class OpenColumn : public QWidget {
    Q_OBJECT

public:
    explicit OpenColumn(AppContext &context, QWidget *parent = nullptr);

    void present(const JobState &state);
    [[nodiscard]] RuledRows *rows(Gate gate) const { return m_parts.at(std::size_t(gate)).rows; }
    [[nodiscard]] RuledList *list(Gate gate) const { return m_parts.at(std::size_t(gate)).list; }

Q_SIGNALS:
    /// What a line leads to.
    void wanted(const asleft::Subject &about);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    struct Part {
        Heading *count = nullptr;
        RuledRows *rows = nullptr;
        RuledList *list = nullptr;
    };

    Part buildPart(Gate gate);
    void presentPart(Part &part, const std::vector<OpenItem> &items, const JobState &state);
    void choose(const Part &part, qint64 id);

    AppContext &m_context;
    std::array<Part, 3> m_parts;
    QHash<qint64, Subject> m_items;
};

} // namespace asleft
