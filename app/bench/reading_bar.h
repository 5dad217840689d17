#pragma once

#include <shop/entry.h>
#include <show/band_scale.h>

#include <QWidget>

#include <functional>
#include <optional>

class QButtonGroup;
class QHBoxLayout;

namespace asleft {

class ChoiceKey;
class Heading;
class KeyButton;
class MessageLine;
class ReadingEdit;
class ScaleView;

/// What the reading bar shows of the point in hand.
struct BarView {
    QString now;           ///< what to do now
    QString spec;          ///< its band and where that is printed
    QString beside;        ///< what else is worth knowing: the lock nut
    bool hasPoint = false; ///< a point is in hand: its keys work
    Phase phase = Phase::AsFound;
    std::optional<SpecBand<Length>> bands;
    LengthUnit unit = LengthUnit::Millimetre;
    QList<Typed<Length>> leaves;                       ///< chips
    std::optional<ScaleValue> logged;                  ///< the reading in force, shown until something is typed
    bool hasLeaf = false;                              ///< the spec has a leaf to set with
    bool canKeep = false;                              ///< left outside its band, not kept
    bool canCheckAgain = false;                        ///< left: later work may have moved it
    std::function<Verdict(const ReadingText &)> judge; ///< what a reading would be worth
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
    void refuse(const QString &sentence);
    void done(const QString &sentence);
    void quiet();
    void focusValue();

    [[nodiscard]] ReadingEdit *edit() const { return m_edit; }
    [[nodiscard]] KeyButton *key(Key key) const;
    [[nodiscard]] MessageLine *message() const { return m_message; }
    [[nodiscard]] Heading *now() const { return m_now; }
    [[nodiscard]] ChoiceKey *unitKey(LengthUnit unit) const;

Q_SIGNALS:
    void valueEntered(const asleft::ReadingText &reading);
    void nothingEntered();
    void keyed(asleft::ReadingBar::Key key);
    void unitChosen(asleft::LengthUnit unit);
    void arrowPressed(Qt::Key arrow);
    /// The person went on typing: a question asked before is void.
    void typing();

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    void buildKeys(QHBoxLayout *row);
    void buildUnits(QHBoxLayout *row);
    void showChips();
    void showTyped();
    void enter();
    void pressLetter(QChar letter);
    [[nodiscard]] QString emptyEcho() const;

    DecimalMark m_mark;
    BarView m_view;
    Heading *m_now;
    Heading *m_spec;
    Heading *m_beside;
    ReadingEdit *m_edit;
    ScaleView *m_scale;
    QHBoxLayout *m_nowRow = nullptr;
    QHBoxLayout *m_chips = nullptr;
    QList<KeyButton *> m_chipKeys;
    QList<KeyButton *> m_keys;
    QButtonGroup *m_units;
    MessageLine *m_message;
};

} // namespace asleft
