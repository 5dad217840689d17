#pragma once

#include <bench/pane.h>
#include <parts/app_context.h>

#include <work/job_book.h>

#include <QPointer>

class QVBoxLayout;

namespace asleft {

class Heading;
class KeyButton;
class MessageLine;
class PaperBox;
class PaperLine;
class PaperTop;

/// A bench sheet that was filled in with a pencil, to be typed in fast: its lines in its order, position by position, each with a box for
/// as found and one for as left; Enter goes to the next box. All of it is logged at one stroke, or nothing. What is typed stays here as a
/// draft while the job is open.
class BenchSheetPane : public Pane {
    Q_OBJECT

public:
    BenchSheetPane(AppContext &context, JobBook &book, QWidget *parent = nullptr);

    /// To be called whenever it comes into sight, and when the job has changed while it is.
    void refresh() override;
    void takeFocus() override;
    /// How many boxes are filled in and not logged.
    [[nodiscard]] int draft() const;
    /// With a draft it asks once.
    [[nodiscard]] bool mayLeave() override;
    /// The draft would be lost: asks once.
    [[nodiscard]] bool mayLose() override;
    /// The box that had the keyboard last.
    [[nodiscard]] QLineEdit *keypadTarget() const override;

    [[nodiscard]] PaperTop *top() const { return m_top; }
    [[nodiscard]] const QList<PaperLine *> &lines() const { return m_lines; }
    [[nodiscard]] KeyButton *logKey() const { return m_log; }
    [[nodiscard]] KeyButton *backKey() const { return m_back; }
    [[nodiscard]] KeyButton *wordKey(int word) const { return m_words.at(word); }
    [[nodiscard]] MessageLine *message() const { return m_message; }

private:
    /// The points of one position of the plan, or those of none.
    struct Part {
        QString title;
        QString finding;
        std::vector<PointId> points;
        bool operator==(const Part &) const = default;
    };

    void build();
    QWidget *buildTitles();
    void buildFoot(QVBoxLayout *column);
    void buildLines();
    PaperLine *addLine(PointId point);
    [[nodiscard]] std::vector<Part> parts() const;
    void moveOn(PaperLine *line, Phase phase);
    void moveUpOrDown(PaperLine *line, Phase phase, Qt::Key arrow);
    void showCount();
    void logAll();
    [[nodiscard]] bool checkAll();
    /// Whether nothing on it is far off, or the person has been asked about this very sheet.
    [[nodiscard]] bool mayBeSo(const std::vector<SheetEntry> &entries);
    [[nodiscard]] Result<ActSeq> logAs(const std::vector<SheetEntry> &entries);
    [[nodiscard]] QStringList texts() const;
    /// Asks with what would become of the draft, unless that was asked about these very texts.
    [[nodiscard]] bool mayBe(std::optional<QStringList> &asked, const QString &whatThen);
    void clear();

    AppContext &m_context;
    JobBook &m_book;
    std::vector<Part> m_parts; ///< as they are laid out now
    QList<PaperLine *> m_lines;
    PaperTop *m_top = nullptr;
    QWidget *m_sheet = nullptr;
    Heading *m_count = nullptr;
    MessageLine *m_message = nullptr;
    QList<KeyButton *> m_words;
    KeyButton *m_log = nullptr;
    KeyButton *m_back = nullptr;
    QPointer<PaperBox> m_box; ///< that had the keyboard last
    /// What stood in the boxes when something was asked: the same again answers it.
    std::optional<QStringList> m_askedFar;
    std::optional<QStringList> m_askedLeaving;
    std::optional<QStringList> m_askedLosing;
};

} // namespace asleft
