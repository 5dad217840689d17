#pragma once

#include <joints/order.h>

#include <QWidget>

#include <optional>
#include <vector>

class QLayout;

namespace asleft {

class Heading;
class KeyButton;
class MessageLine;
class PatternBoard;
class PatternWindow;
class ValueField;

/// Lays out the places of a joint: dragged or moved by keys, clicked on a photo of the part, numbered one after the other in the manual's
/// order, and each with a thread or length of its own.
class PatternEditor : public QWidget {
    Q_OBJECT

public:
    explicit PatternEditor(QWidget *parent = nullptr);

    /// Another joint's places: what was begun here ends, and there is nothing to take back.
    void setPattern(const Pattern &pattern);
    /// The same joint's places, made anew by what is typed, letter by letter; `before` is what is taken back to.
    void replace(const Pattern &pattern, const Pattern &before);
    void setOrder(const TighteningOrder &order);
    [[nodiscard]] const Pattern &pattern() const { return m_pattern; }

    /// The fastener in hand, by its number.
    void take(int number);
    void refuseThread(const QString &sentence);
    void acceptThread();

    void beginNumbering();
    /// Those not clicked follow in the order they had.
    void endNumbering();
    /// A picture to click on; it is not kept. False where the file cannot be read as one, which is said.
    bool showPhoto(const QString &path);
    void endPhoto();
    void askForPhoto();

    [[nodiscard]] PatternBoard *board() const { return m_board; }
    /// What the board is seen through.
    [[nodiscard]] PatternWindow *drawing() const { return m_drawing; }
    /// In sight only where there are so many places that they want it.
    [[nodiscard]] KeyButton *enlargeKey() const { return m_enlarge; }
    [[nodiscard]] KeyButton *numberKey() const { return m_number; }
    [[nodiscard]] KeyButton *photoKey() const { return m_photo; }
    [[nodiscard]] KeyButton *addKey() const { return m_add; }
    [[nodiscard]] KeyButton *removeKey() const { return m_remove; }
    [[nodiscard]] KeyButton *backKey() const { return m_back; }
    [[nodiscard]] ValueField *ownThread() const { return m_ownThread; }
    [[nodiscard]] ValueField *ownLength() const { return m_ownLength; }
    [[nodiscard]] MessageLine *says() const { return m_says; }

Q_SIGNALS:
    /// The person changed the places.
    void edited();
    void ownThreadLeft();

private:
    void buildLayout();
    QLayout *keys();
    void wire();
    /// Takes the places over if they can be: else says why not, and all stays as it was.
    bool apply(Pattern pattern, int inHand);
    void undo();
    void move(int index, const QPointF &place);
    void add(const QPointF &place);
    void addSomewhere();
    void remove(int index);
    void bareAgain();
    void pressed(int index);
    void typedOwn();
    void refresh();
    void showOwn();
    void showEnlarge();
    void say();

    Pattern m_pattern;
    TighteningOrder m_order;
    std::vector<Pattern> m_before; ///< to take back
    std::optional<std::vector<int>> m_numbered;
    std::optional<Pattern> m_behindPhoto; ///< what there was, while there is a photo
    bool m_bare = false;                  ///< the photo has no place yet
    PatternBoard *m_board;
    PatternWindow *m_drawing;
    MessageLine *m_says;
    KeyButton *m_number;
    KeyButton *m_photo;
    KeyButton *m_add;
    KeyButton *m_remove;
    KeyButton *m_back;
    KeyButton *m_enlarge;
    ValueField *m_ownThread;
    ValueField *m_ownLength;
};

} // namespace asleft
