#pragma once

#include <bench/bar_message.h>
#include <bench/typed_reading.h>
#include <parts/chip_row.h>

#include <QWidget>

#include <functional>
#include <optional>

class QButtonGroup;
class QHBoxLayout;
class QStackedWidget;
class QVBoxLayout;

namespace asleft {

class ChoiceKey;
class Heading;
class KeyButton;
class MessageLine;
class ReadingEdit;
class ReasonLine;
class ScaleView;

/// What the reading bar shows of the point in hand.
struct BarView {
    QString now;           ///< what to do now
    QString spec;          ///< its band and where that is printed
    QString beside;        ///< what else is worth knowing: the lock nut
    bool hasPoint = false; ///< a point is in hand: its keys work
    bool readOnly = false; ///< nothing can be logged
    Phase phase = Phase::AsFound;
    std::optional<SpecBand<Length>> bands;
    std::optional<SpecBand<Angle>> turns; ///< the spec is so many turns from zero lash: digits alone are turns
    LengthUnit unit = LengthUnit::Millimetre;
    QList<BarChip> chips;
    std::optional<Judgement> logged; ///< of the reading in force, shown until something is typed
    bool hasLeaf = false;            ///< the spec has a leaf to set with, or turns
    bool canKeep = false;            ///< left outside its band, not kept
    bool canCheckAgain = false;      ///< something is left: later work may have moved it
    std::function<Judgement(const TypedReading &)> worth;
};

/// Under the head: what to do now, the value as it is typed with its band to scale, and one key for each thing that is said without
/// a number. Knows nothing of jobs: it tells what was entered and shows what it is given.
class ReadingBar : public QWidget {
    Q_OBJECT

public:
    enum class Key { SpecLeaf, Loose, Tight, NutOpen, ByFeel, Keep, CheckAgain, OtherPhase };

    explicit ReadingBar(DecimalMark mark, QWidget *parent = nullptr);

    void present(const BarView &view);
    /// Takes the typed value away: it was logged.
    void clearValue();
    /// Asks for a second Enter; what was typed stays.
    void ask(const QString &sentence);
    /// The same, with another value that one key takes instead.
    void askWhich(const QString &sentence, const QString &instead);
    /// Says what came from outside; it stands until something is logged, also while the person types.
    void notice(const QString &sentence);
    void refuse(const QString &sentence);
    void done(const QString &sentence);
    void quiet();
    /// Asks in one line why the point is kept.
    void askReason();
    void focusValue();

    [[nodiscard]] ReadingEdit *edit() const { return m_edit; }
    [[nodiscard]] ReasonLine *reason() const { return m_reason; }
    [[nodiscard]] bool asksReason() const;
    [[nodiscard]] KeyButton *key(Key key) const;
    /// All of them, in the order of Key.
    [[nodiscard]] const QList<KeyButton *> &keys() const { return m_keys; }
    [[nodiscard]] KeyButton *insteadKey() const { return m_instead; }
    [[nodiscard]] MessageLine *message() const { return m_message.line(); }
    [[nodiscard]] Heading *now() const { return m_now; }
    [[nodiscard]] Heading *beside() const { return m_beside; }
    [[nodiscard]] ScaleView *scale() const { return m_scale; }
    [[nodiscard]] ChoiceKey *unitKey(LengthUnit unit) const;

Q_SIGNALS:
    void valueEntered(const asleft::TypedReading &reading);
    void insteadTaken();
    void nothingEntered();
    void reasonGiven(const QString &reason);
    void keyed(asleft::ReadingBar::Key key);
    void unitChosen(asleft::LengthUnit unit);
    void arrowPressed(Qt::Key arrow);
    /// The person went on typing: a question asked before is void.
    void typing();

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    void build(QVBoxLayout *column);
    void buildValues(QVBoxLayout *column);
    void buildKeys(QHBoxLayout *row);
    void buildUnits(QHBoxLayout *row);
    void showKeys();
    void showChips();
    void showTyped();
    void showJudgement(const std::optional<Judgement> &worth, const QString &typed);
    void dropQuestion();
    void enter();
    void pressLetter(QChar letter);
    void leaveReason();
    [[nodiscard]] TypedAs typedAs() const;
    [[nodiscard]] QString emptyEcho() const;

    DecimalMark m_mark;
    BarView m_view;
    Heading *m_now;
    Heading *m_spec;
    Heading *m_beside;
    ReadingEdit *m_edit;
    ScaleView *m_scale;
    ReasonLine *m_reason;
    QStackedWidget *m_values = nullptr;
    QHBoxLayout *m_nowRow = nullptr;
    ChipRow *m_chips;
    QList<KeyButton *> m_keys;
    KeyButton *m_instead;
    QButtonGroup *m_units;
    BarMessage m_message;
    bool m_asksWhich = false;
};

} // namespace asleft
