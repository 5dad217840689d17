#pragma once

#include "bench/reading_bar.h"
#include "desk.h"

#include <work/job_book.h>

#include <QWidget>

namespace asleft {

class Heading;
class HeadView;
class KeyButton;

/// The valve set on the Bench: where the crank stands and what is set there, the head with its points, the reading bar. Reads the
/// job's state, logs through its book, and takes the next point in hand by itself.
class ValveSheet : public QWidget {
    Q_OBJECT

public:
    ValveSheet(Desk &desk, JobBook &book, QWidget *parent = nullptr);

    void refresh();
    void focusValue();
    /// Takes the point of the next act in hand, or none where the crank has to be turned first.
    void goToNext();
    void undo();
    void redo();
    [[nodiscard]] std::optional<PointId> inHand() const { return m_inHand; }
    void takeInHand(PointId point);

    [[nodiscard]] ReadingBar *bar() const { return m_bar; }
    [[nodiscard]] HeadView *head() const { return m_head; }
    [[nodiscard]] KeyButton *turnKey() const { return m_turn; }
    [[nodiscard]] KeyButton *allHereKey() const { return m_allHere; }
    [[nodiscard]] KeyButton *planKey() const { return m_planKey; }

Q_SIGNALS:
    void turnWanted();
    void crankWanted();
    void planWanted();
    /// Every point is settled and Enter was pressed: on to the next line.
    void finished();

private:
    /// A question the next same act answers: logging where the valve may be off its seat, a value far off its band, all at once.
    struct Question {
        std::optional<PointId> point;
        QString about;
        std::optional<ActSeq> crank; ///< the act that told where it stands: moved since, the question is another one
        bool operator==(const Question &) const = default;
    };

    void build();
    void showCrank();
    void showPlan();
    void showHead();
    void showBar();
    [[nodiscard]] Phase phaseOf(PointId point) const;
    void enter(const ReadingText &reading);
    void press(ReadingBar::Key key);
    void logAllHere();
    void moveOn();
    [[nodiscard]] Question questionAbout(std::optional<PointId> point, const QString &about) const;
    void after(const Result<ActSeq> &logged);
    [[nodiscard]] std::optional<PointId> inHandAfter(const Act &act) const;
    [[nodiscard]] bool mayGoOn(PointId point, const QString &about, const QString &farOffQuestion);

    Desk &m_desk;
    JobBook &m_book;
    std::optional<PointId> m_inHand;
    std::optional<Phase> m_phase;     ///< chosen by the person for the point in hand
    std::optional<LengthUnit> m_unit; ///< chosen by the person; else the spec's
    std::optional<Question> m_asked;
    Heading *m_place = nullptr;
    Heading *m_sets = nullptr;
    Heading *m_then = nullptr;
    Heading *m_known = nullptr;
    KeyButton *m_planKey = nullptr;
    KeyButton *m_undo = nullptr;
    KeyButton *m_allHere = nullptr;
    KeyButton *m_turn = nullptr;
    HeadView *m_head = nullptr;
    ReadingBar *m_bar = nullptr;
};

} // namespace asleft
