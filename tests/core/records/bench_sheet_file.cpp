// The file a bench sheet is printed into.
#include "gui.h"
#include "printing.h"
#include "samples.h"

#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <csignal>
#include <sys/resource.h>

namespace asleft {

namespace bench_sheet_file_tests {

class SheetFile : public ::testing::Test {
protected:
    void SetUp() override { ASSERT_TRUE(m_folder.isValid()); }

    [[nodiscard]] std::string path(const char *name) const { return m_folder.filePath(QString::fromLatin1(name)).toStdString(); }
    [[nodiscard]] static QByteArray contents(const std::string &path)
    {
        QFile file(QString::fromStdString(path));
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    Done write(const std::string &to, SheetPaper paper = SheetPaper::A4) const
    {
        return writeBenchSheet(m_state, m_plan, paper, printed, to);
    }

    QTemporaryDir m_folder;
    const JobState m_state = stateOf(frameOf(sixWithEverything()));
    const CrankPlan m_plan = generatePlan(m_state.frame->engine.design, PlanWay::EachOnCompression);
};

/// Width and height of every page of a PDF, by its own word.
QList<QSizeF> mediaBoxes(const QByteArray &pdf)
{
    static const QRegularExpression box(QStringLiteral("/MediaBox \\[0 0 ([0-9.]+) ([0-9.]+)\\]"));
    QList<QSizeF> sizes;
    auto matches = box.globalMatch(QString::fromLatin1(pdf));
    while (matches.hasNext()) {
        const auto match = matches.next();
        sizes.append(QSizeF(match.captured(1).toDouble(), match.captured(2).toDouble()));
    }
    return sizes;
}

TEST_F(SheetFile, HasTheSizeOfItsPaperOnEveryPage)
{
    for (const SheetPaper paper : {SheetPaper::A4, SheetPaper::Letter}) {
        ASSERT_TRUE(write(path("sheet.pdf"), paper));
        const QList<QSizeF> boxes = mediaBoxes(contents(path("sheet.pdf")));
        EXPECT_EQ(boxes.size(), recorded(m_state, m_plan, paper).size());
        for (const QSizeF &box : boxes)
            EXPECT_EQ(box.toSize(), sizeOf(paper));
    }
}

QByteArray withoutTime(QByteArray pdf)
{
    static const QRegularExpression time(QStringLiteral("/CreationDate \\([^)]*\\)"));
    QString text = QString::fromLatin1(pdf);
    EXPECT_TRUE(text.contains(time));
    return text.remove(time).toLatin1();
}

TEST_F(SheetFile, IsTheSameEachTimeButForItsTime)
{
    ASSERT_TRUE(write(path("first.pdf")));
    ASSERT_TRUE(write(path("second.pdf")));
    EXPECT_EQ(withoutTime(contents(path("first.pdf"))), withoutTime(contents(path("second.pdf"))));
    EXPECT_TRUE(contents(path("first.pdf")).startsWith("%PDF-"));
}

TEST_F(SheetFile, AFolderThatIsNotThereIsSaid)
{
    const auto refused = write(path("nowhere/sheet.pdf"));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().kind, ErrorKind::DiskFault);
    EXPECT_EQ(refused.error().arguments.size(), 2U);
    EXPECT_EQ(refused.error().arguments.front(), path("nowhere/sheet.pdf"));
}

/// Files of this process may not grow past so many bytes; a write beyond fails as on a full disk.
class SmallDisk {
public:
    explicit SmallDisk(rlim_t bytes)
    {
        m_handler = std::signal(SIGXFSZ, SIG_IGN);
        getrlimit(RLIMIT_FSIZE, &m_before);
        const rlimit small{bytes, m_before.rlim_max};
        setrlimit(RLIMIT_FSIZE, &small);
    }
    ~SmallDisk()
    {
        setrlimit(RLIMIT_FSIZE, &m_before);
        std::signal(SIGXFSZ, m_handler);
    }
    SmallDisk(const SmallDisk &) = delete;
    SmallDisk &operator=(const SmallDisk &) = delete;

private:
    void (*m_handler)(int);
    rlimit m_before{};
};

TEST_F(SheetFile, AFailedWriteLeavesTheOldFileWhole)
{
    ASSERT_TRUE(write(path("sheet.pdf")));
    const QByteArray before = contents(path("sheet.pdf"));
    for (const rlim_t bytes : {rlim_t(0), rlim_t(1), rlim_t(4096), rlim_t(before.size() - 1)}) {
        const SmallDisk disk(bytes);
        const auto refused = write(path("sheet.pdf"));
        ASSERT_FALSE(refused) << bytes;
        EXPECT_EQ(refused.error().kind, ErrorKind::DiskFault);
        EXPECT_EQ(contents(path("sheet.pdf")), before) << bytes;
    }
    EXPECT_EQ(QDir(m_folder.path()).entryList(QDir::Files), QStringList{QStringLiteral("sheet.pdf")});
    EXPECT_TRUE(write(path("sheet.pdf")));
}

} // namespace bench_sheet_file_tests

} // namespace asleft
