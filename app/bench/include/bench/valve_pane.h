#pragma once

#include <bench/bar_view.h>
#include <bench/crank_line.h>
#include <bench/doubts.h>
#include <bench/other_stations.h>
#include <bench/pane.h>
#include <parts/app_context.h>

#include <work/job_book.h>

#include <variant>

namespace asleft {

class Heading;
class HeadView;
class KeyButton;

/// The valve set on the Bench: where the crank stands and what is set there, the head with its points, the reading bar. Reads the
/// job's state, logs through its book, and takes the next point in hand by itself.
class ValvePane : public Pane {
    Q_OBJECT

public:
    using Key = ValveKey;

    ValvePane(AppContext &context, JobBook &book, QWidget *parent = nullptr);

    [[nodiscard]] std::optional<StepId> ownStep() const override;
    /// Whether a valve may be set hangs on where the crank stands: that is asked first, once a session.
    [[nodiscard]] std::optional<PaneWanted> asksFirst() override;
    void open() override;
    void refresh() override;
    void takeFocus() override { m_bar->takeFocus(); }
    void takeUp(const Subject &about) override;
    void tellDone(ActSeq act) override;
    void tellRefused(const QString &sentence) override { m_bar->refuse(sentence); }
    bool takeBack(bool again) override;
    [[nodiscard]] QLineEdit *keypadTarget() const override;
    /// Takes the point of the next act in hand, or none where the crank has to be turned first.
    void goToNext();
    [[nodiscard]] std::optional<PointId> inHand() const { return m_inHand; }
    void takeInHand(PointId point);

    [[nodiscard]] EntryBar *bar() const { return m_bar; }
    [[nodiscard]] KeyButton *key(Key which) const { return m_bar->key(int(which)); }
    [[nodiscard]] HeadView *head() const { return m_head; }
    [[nodiscard]] KeyButton *turnKey() const { return m_line->key(CrankLine::Key::Turn); }
    [[nodiscard]] KeyButton *allHereKey() const { return m_line->key(CrankLine::Key::AllHere); }
    [[nodiscard]] KeyButton *planKey() const { return m_line->key(CrankLine::Key::Plan); }
    [[nodiscard]] KeyButton *sheetKey() const { return m_line->key(CrankLine::Key::Sheet); }
    [[nodiscard]] KeyButton *undoKey() const { return m_line->key(CrankLine::Key::Undo); }

private:
    struct AllHere {
        bool operator==(const AllHere &) const = default;
    };
    struct NutOpened {
        PointId point;
        bool operator==(const NutOpened &) const = default;
    };
    /// A question the next same act answers: logging where the valve may be off its seat, a value far off its band, all at once.
    struct Question {
        std::variant<ReadingEntry, NutOpened, AllHere> what;
        std::optional<ActSeq> crank; ///< the act that told where it stands: moved since, the question is another one
        bool operator==(const Question &) const = default;
    };

    void build();
    void wire();
    void showHead();
    void showBar();
    [[nodiscard]] Phase phaseOf(PointId point) const;
    [[nodiscard]] BarChoice choice(Phase phase) const { return {phase, m_unit, m_context.mark()}; }
    void enter(const QString &text);
    void press(Key key);
    void pressLine(CrankLine::Key key);
    void openNut(PointId point);
    /// Logs this, once what speaks against it was asked.
    void logReading(const ReadingEntry &entry, const ValueDoubt &doubt);
    void logAllHere();
    void logInstead();
    void keep(const QString &reason);
    void goAside(Qt::Key arrow);
    void moveOn();
    /// Looks at the acts of other computers that have come since the last look.
    void hearOthers();
    /// Does an act, and what comes after it.
    template <class Act>
    void log(Act act)
    {
        after(doing(act));
    }
    [[nodiscard]] Question question(decltype(Question::what) what) const;
    void after(const Result<ActSeq> &logged);
    [[nodiscard]] std::optional<PointId> inHandAfter(const Act &act) const;
    [[nodiscard]] bool mayGoOn(const Question &asked, PointId point, const ValueDoubt &doubt);
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
    EntryBar *m_bar = nullptr;
};

} // namespace asleft
