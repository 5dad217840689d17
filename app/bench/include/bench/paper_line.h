#pragma once

#include <bench/paper_box.h>

#include <QWidget>

namespace asleft {

class Heading;
class MessageLine;

inline constexpr Phase bothPhases[] = {Phase::AsFound, Phase::AsLeft};

/// One line of a bench sheet: the point with what is asked of it, the boxes for as found and as left, and beside each what it says is
/// worth.
class PaperLine : public QWidget {
    Q_OBJECT

public:
    PaperLine(const JobBook &book, PointId point, DecimalMark mark, QWidget *parent = nullptr);

    [[nodiscard]] PointId point() const { return m_point; }
    /// The job has changed: what is asked, and what is known of the point already.
    void refresh(EngineCondition condition);
    [[nodiscard]] PaperBox *field(Phase phase) const { return phase == Phase::AsFound ? m_found : m_left; }
    [[nodiscard]] Heading *judgement(Phase phase) const { return phase == Phase::AsFound ? m_foundJudgement : m_leftJudgement; }
    [[nodiscard]] MessageLine *message() const { return m_message; }

    /// Whether a box can be read; where not, the refusal stands at it.
    bool check(Phase phase);
    /// The first box that cannot be read; nothing if all can.
    [[nodiscard]] std::optional<Phase> firstRefused();
    /// What the line says; empty boxes say nothing. \pre firstRefused() gives nothing
    [[nodiscard]] SheetEntry entry() const;
    void refuse(Phase phase, const QString &sentence);
    void ask(const QString &sentence);
    void quiet();

Q_SIGNALS:
    void edited();
    /// Enter in a box that can be read.
    void entered(asleft::Phase phase);
    void arrowPressed(asleft::Phase phase, Qt::Key arrow);
    void focused(asleft::PaperBox *field);

private:
    void build();
    void wire(Phase phase);
    void showJudgement(Phase phase);
    [[nodiscard]] TypedAs typedAs() const;
    [[nodiscard]] QString asked() const;

    const JobBook &m_book;
    PointId m_point;
    DecimalMark m_mark;
    EngineCondition m_condition = EngineCondition::Cold;
    Heading *m_name = nullptr;
    Heading *m_asked = nullptr;
    PaperBox *m_found = nullptr;
    PaperBox *m_left = nullptr;
    Heading *m_foundJudgement = nullptr;
    Heading *m_leftJudgement = nullptr;
    MessageLine *m_message = nullptr;
};

/// The widths of its columns, for the words above them.
constexpr int paperNameWidth = 150;
constexpr int paperGap = 8;

} // namespace asleft
