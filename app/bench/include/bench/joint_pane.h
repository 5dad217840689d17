#pragma once

#include <bench/entry_bar.h>
#include <bench/other_stations.h>
#include <bench/pane.h>
#include <parts/app_context.h>

#include <work/job_book.h>

#include <chrono>
#include <variant>

class QStackedWidget;

namespace asleft {

class Heading;
class JointPaneTop;
class JointView;
class KeyButton;

// What may be asked about before it is done to a joint: the act as it would be logged, with what it depends on.
struct TickAsked {
    TickEntry tick;
    bool whole = false; ///< of a whole pass
    bool operator==(const TickAsked &) const = default;
};
struct FittedNew {
    std::vector<int> fasteners;
    bool operator==(const FittedNew &) const = default;
};
struct BegunAnew {
    int revision = 1; ///< it is begun by
    bool operator==(const BegunAnew &) const = default;
};
struct LineDone {
    std::vector<int> left; ///< of which nothing is noted
    bool operator==(const LineDone &) const = default;
};
using JointAsked = std::variant<TickAsked, LoosenEntry, FittedNew, BegunAnew, LineDone>;

/// A joint on the Bench: what it is and asks for, the joint drawn, and under it the bar. What is done to it, tightening or loosening, is
/// told by those that build on this.
class JointPane : public Pane {
    Q_OBJECT

public:
    void showStep(StepId step) override;
    void refresh() override;
    void takeFocus() override { m_bar->takeFocus(); }
    void takeUp(const Subject &about) override;
    bool takeBack(bool again) override;
    [[nodiscard]] QLineEdit *keypadTarget() const override;
    void takeInHand(int fastener);

    [[nodiscard]] std::optional<StepId> step() const { return m_step; }
    [[nodiscard]] std::optional<int> inHand() const { return m_inHand; }
    [[nodiscard]] EntryBar *bar() const { return m_bar; }
    [[nodiscard]] JointView *view() const { return m_view; }
    [[nodiscard]] JointPaneTop *top() const { return m_top; }
    [[nodiscard]] KeyButton *undoKey() const;

protected:
    void resizeEvent(QResizeEvent *event) override;
    JointPane(AppContext &context, JobBook &book, const QString &fieldName, const QList<BarKey> &keys);

    /// The way round the joint that is drawn, and how many legs of it are done.
    [[nodiscard]] virtual TighteningOrder path() const = 0;
    /// The same in words, and where it is from.
    [[nodiscard]] virtual QString orderWords() const = 0;
    [[nodiscard]] virtual qsizetype legsDone() const = 0;
    /// The fastener that is next; nothing where all are done.
    [[nodiscard]] virtual std::optional<int> next() const = 0;
    [[nodiscard]] virtual EntryView barView() const = 0;
    virtual void press(int key) = 0;
    virtual void enter(const QString &text) = 0;
    virtual void takeReason(const QString &reason) = 0;
    /// Another joint, or another fastener of it, is in hand.
    virtual void forget() {}

    [[nodiscard]] const JobState &state() const { return m_book.state(); }
    [[nodiscard]] JobBook &book() const { return m_book; }
    [[nodiscard]] AppContext &context() const { return m_context; }
    [[nodiscard]] JointId jointId() const { return *m_joint; }
    [[nodiscard]] const Joint &joint() const { return jointInHand(state(), *m_joint); }
    [[nodiscard]] const JointState &worked() const { return state().joints.at(*m_joint); }
    [[nodiscard]] bool readOnly() const { return m_context.garage().readOnly(); }
    [[nodiscard]] std::chrono::sys_days today() const;
    [[nodiscard]] QStackedWidget *stack() const { return m_stack; }

    /// Whether the same act was asked about before, or there is nothing to ask; else it is asked.
    [[nodiscard]] bool mayGoOn(const JointAsked &asked, QStringList why);
    void voidQuestion() { m_asked.reset(); }
    void goTo(std::optional<int> fastener);
    /// Does an act, and what comes after it.
    template <class Act>
    void log(Act act)
    {
        after(doing(act));
    }
    void after(const Result<ActSeq> &logged);

private:
    struct Question {
        JointId joint;
        std::optional<int> fastener;
        JointAsked what;
        bool operator==(const Question &) const = default;
    };

    void build();
    void wire();
    void showView();
    /// What stands above gives way where the sheet is low, or something else than the joint is in sight.
    void makeRoom();
    void hearOthers();
    [[nodiscard]] bool isAbout(const Act &act) const;
    [[nodiscard]] std::optional<int> inHandAfter(const Act &act) const;
    [[nodiscard]] QString tipOf(qsizetype index) const;
    [[nodiscard]] std::optional<int> numberAt(qsizetype index) const;
    void goAside(Qt::Key arrow);

    AppContext &m_context;
    JobBook &m_book;
    OtherStations m_others;
    std::optional<StepId> m_step;
    std::optional<JointId> m_joint;
    std::optional<int> m_inHand;
    std::optional<Question> m_asked;
    QString m_news; ///< what another computer did to the fastener in hand while something was being typed
    JointPaneTop *m_top = nullptr;
    JointView *m_view = nullptr;
    EntryBar *m_bar = nullptr;
    QStackedWidget *m_stack = nullptr; ///< the first page of it is the joint with its bar
};

} // namespace asleft
