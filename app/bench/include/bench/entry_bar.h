#pragma once

#include <bench/bar_keys.h>
#include <bench/bar_message.h>
#include <draw/band_scale.h>
#include <parts/chip_row.h>

#include <QWidget>

#include <functional>
#include <optional>

class QBoxLayout;
class QButtonGroup;
class QLayout;
class QStackedWidget;
class QVBoxLayout;

namespace asleft {

class ChoiceKey;
class Heading;
class MessageLine;
class ReadingEdit;
class ReasonLine;
class ScaleView;

/// What stands beside the field of a bar.
enum class BesideField {
    Scale, ///< the band to scale; beneath, values to touch and units to choose
    Words, ///< in large what to set, beneath it what is worth knowing, and what is asked with the keys that answer
};

/// What the text in the field comes to; of an empty one, what stands logged.
struct Preview {
    QString echo = {};  ///< under the text, in place of what stands there while it is empty
    QString words = {}; ///< in place of the small ones
    std::optional<ScaleValue> onScale = {};
    std::optional<ScaleTurns> turnsOnScale = {};
};

/// What the bar shows now.
struct EntryView {
    /// Whether a value is typed.
    enum class Field { Hidden, Off, On };

    QString now;        ///< what to do now
    QString spec = {};  ///< beneath it: what is asked and where that is printed
    QString large = {}; ///< what to set the wrench to; may be empty
    QString small = {}; ///< what else is worth knowing
    QString asked = {}; ///< what is asked beside the keys that answer; may be empty
    QMap<int, KeyNow> keys = {};
    QMap<int, QString> shortWords = {}; ///< of keys whose words are too long for a narrow bar
    Field field = Field::Hidden;
    bool readOnly = false; ///< nothing can be logged
    QString echo = {};     ///< of the empty field
    std::function<Preview(const QString &text)> preview = {};
    std::optional<SpecBand<Length>> bands = {};
    std::optional<SpecBand<Angle>> turns = {}; ///< what is typed counts turns: no units to choose
    LengthUnit unit = LengthUnit::Millimetre;
    QList<BarChip> chips = {};

    [[nodiscard]] KeyShown &shown(int key) { return keys[key].shown; }
};

/// Under a drawing: what to do now, a field for a value with what it is worth, and a key for each thing that is said without a number.
/// Knows nothing of jobs: it tells what was pressed and typed, and shows what it is given.
class EntryBar : public QWidget {
    Q_OBJECT

public:
    EntryBar(const QString &fieldName, const QList<BarKey> &keys, BesideField beside, QWidget *parent = nullptr);

    void present(const EntryView &view);
    /// Takes what was typed away, with whatever was said about it.
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
    /// Asks for a reason in one line; `take` stands on its key.
    void askReason(const QString &asked, const QString &take);
    [[nodiscard]] bool asksReason() const;
    /// The keyboard goes to the reason asked for, an answer, the field, or the strong key.
    void takeFocus();

    [[nodiscard]] ReadingEdit *edit() const { return m_edit; }
    [[nodiscard]] ReasonLine *reason() const { return m_reason; }
    [[nodiscard]] KeyButton *key(int id) const { return m_keys.key(id); }
    [[nodiscard]] const QList<KeyButton *> &keys() const { return m_keys.buttons(); }
    [[nodiscard]] KeyButton *insteadKey() const { return m_instead; }
    [[nodiscard]] ChoiceKey *unitKey(LengthUnit unit) const;
    [[nodiscard]] MessageLine *message() const { return m_message.line(); }
    [[nodiscard]] Heading *now() const { return m_now; }
    [[nodiscard]] Heading *large() const { return m_large; }
    [[nodiscard]] Heading *small() const { return m_small; }
    [[nodiscard]] Heading *asked() const { return m_asked; }
    [[nodiscard]] ScaleView *scale() const { return m_scale; }

Q_SIGNALS:
    void keyed(int id);
    /// Enter in the field; the text may be empty.
    void entered(const QString &text);
    void insteadTaken();
    void reasonGiven(const QString &reason);
    void unitChosen(asleft::LengthUnit unit);
    void arrowPressed(Qt::Key arrow);
    /// The person went on typing: a question asked before is void.
    void typing();

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    void build();
    void buildNow(QVBoxLayout *column);
    void buildValues(QVBoxLayout *column);
    void buildAsked(QVBoxLayout *column);
    void buildChoices(QVBoxLayout *column);
    void buildUnits();
    void placeKeys();
    void wire();
    void enter();
    void showKeys();
    void showField();
    void showChips();
    void showTyped();
    /// As large as there is room for: no figure of it is cut off.
    void fitLarge();
    /// Where there is no room for both on one line the question stands above its answers.
    void placeAnswers();
    void dropQuestion();
    [[nodiscard]] bool hasScale() const { return m_besideField == BesideField::Scale; }

    BesideField m_besideField;
    EntryView m_view;
    Heading *m_now;
    Heading *m_spec;
    Heading *m_large;
    Heading *m_small;
    Heading *m_asked;
    ReadingEdit *m_edit;
    ScaleView *m_scale;
    ReasonLine *m_reason;
    ChipRow *m_chips;
    KeyButton *m_instead;
    QButtonGroup *m_units;
    BarMessage m_message;
    BarKeys m_keys;
    QStackedWidget *m_values = nullptr;
    QWidget *m_askedRow = nullptr;
    QWidget *m_choices = nullptr;
    QBoxLayout *m_askedLine = nullptr;
    QMap<BarKey::Place, QLayout *> m_places;
    bool m_asksWhich = false;
};

} // namespace asleft
