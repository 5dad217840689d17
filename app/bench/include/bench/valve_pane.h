#pragma once

#include <bench/crank_line.h>
#include <bench/doubts.h>
#include <bench/other_stations.h>
#include <bench/pane.h>
#include <bench/reading_bar.h>
#include <parts/app_context.h>

#include <work/job_book.h>

namespace asleft {

class Heading;
class HeadView;
class KeyButton;

/// The valve set on the Bench: where the crank stands and what is set there, the head with its points, the reading bar. Reads the
/// job's state, logs through its book, and takes the next point in hand by itself.
class ValvePane : public Pane {
    Q_OBJECT

public:
    ValvePane(AppContext &context, JobBook &book, QWidget *parent = nullptr);

    void refresh() override;
    void takeFocus() override { focusValue(); }
    void focusValue();
    /// Takes the point of the next act in hand, or none where the crank has to be turned first.
    void goToNext();
    void undo();
    void redo();
    [[nodiscard]] std::optional<PointId> inHand() const { return m_inHand; }
    void takeInHand(PointId point);
    /// Says what was just logged elsewhere on the Bench.
    void tellDone(ActSeq act);

    [[nodiscard]] ReadingBar *bar() const { return m_bar; }
    [[nodiscard]] HeadView *head() const { return m_head; }
    [[nodiscard]] KeyButton *turnKey() const { return m_line->key(CrankLine::Key::Turn); }
    [[nodiscard]] KeyButton *allHereKey() const { return m_line->key(CrankLine::Key::AllHere); }
    [[nodiscard]] KeyButton *planKey() const { return m_line->key(CrankLine::Key::Plan); }
    [[nodiscard]] KeyButton *sheetKey() const { return m_line->key(CrankLine::Key::Sheet); }
    [[nodiscard]] KeyButton *undoKey() const { return m_line->key(CrankLine::Key::Undo); }

Q_SIGNALS:
    void turnWanted();
    void crankWanted();
    void planWanted();
    /// A filled-in sheet is to be typed in.
    void sheetWanted();
    /// Later work may have moved this point, or others.
    void checkAgainWanted(std::optional<asleft::PointId> point);
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
    void wire();
    void shortcuts();
    void showHead();
    void showBar();
    [[nodiscard]] Phase phaseOf(PointId point) const;
    void enter(const TypedReading &reading);
    void press(ReadingBar::Key key);
    void pressLine(CrankLine::Key key);
    void logPressed(PointId point, ReadingBar::Key key);
    void logAllHere();
    void logInstead();
    void keep(const QString &reason);
    void goAside(Qt::Key arrow);
    void moveOn();
    /// Looks at the acts of other computers that have come since the last look.
    void hearOthers();
    [[nodiscard]] Question questionAbout(std::optional<PointId> point, const QString &about) const;
    /// Does an act, and what comes after it.
    template <class Act>
    void log(Act act)
    {
        after(doing(act));
    }
    void after(const Result<ActSeq> &logged);
    [[nodiscard]] std::optional<PointId> inHandAfter(const Act &act) const;
    [[nodiscard]] bool mayGoOn(PointId point, const QString &about, const ValueDoubt &doubt);
    [[nodiscard]] bool readOnly() const { return m_context.garage().readOnly(); }

    AppContext &m_context;
    JobBook &m_book;
    OtherStations m_others;
    std::optional<PointId> m_inHand;
    std::optional<Phase> m_phase;     ///< chosen by the person for the point in hand
    std::optional<LengthUnit> m_unit; ///< chosen by the person; else the spec's
    std::optional<Question> m_asked;
    std::optional<TypedReading> m_instead; ///< what one key logs instead of what was typed
    QString m_news;                        ///< what another computer did to the point in hand while something stood in the bar
    CrankLine *m_line = nullptr;
    HeadView *m_head = nullptr;
    ReadingBar *m_bar = nullptr;
};

} // namespace asleft
