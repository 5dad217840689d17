// Things a job speaks of that could not be read again when they changed.
#include "support.h"

#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>

namespace asleft {
namespace frame_reload_tests {

class FrameReload : public BookTest {
protected:
    /// Through the connection of the only garage open: another connection's change would be noticed by itself.
    static void say(const char *statement)
    {
        const QStringList names = QSqlDatabase::connectionNames();
        ASSERT_EQ(names.size(), 1);
        QSqlQuery query(QSqlDatabase::database(names.front(), false));
        ASSERT_TRUE(query.exec(QLatin1String(statement))) << statement << ": " << query.lastError().text().toStdString();
    }
};

TEST_F(FrameReload, IsTriedAgainAtTheNextCatchingUp)
{
    say("CREATE TEMP TABLE person (empty INTEGER)"); // stands before the table of that name
    const ToolId leaves = need(addFeelerSet(*garage, "Set", "0.05", LengthUnit::Millimetre));
    EXPECT_TRUE(book->state().frame->tools.empty()) << "nobody could be read";
    EXPECT_FALSE(book->catchUp().has_value()) << "nor now";
    say("DROP TABLE temp.person");
    int told = 0;
    QObject::connect(book.get(), &JobBook::changed, [&] { ++told; });
    need(book->catchUp());
    EXPECT_EQ(told, 1);
    EXPECT_TRUE(book->state().frame->tool(leaves));
    need(book->catchUp());
    EXPECT_EQ(told, 1) << "once is enough";
}

TEST_F(FrameReload, IsTriedAgainWithTheNextAct)
{
    say("CREATE TEMP TABLE person (empty INTEGER)");
    const ToolId leaves = need(addFeelerSet(*garage, "Set", "0.05", LengthUnit::Millimetre));
    need(book->openNut(at("I1")));
    EXPECT_EQ(point("I1").stage, PointStage::NutOpen) << "what is stored is shown";
    say("DROP TABLE temp.person");
    left("I1", "0.30 mm");
    EXPECT_TRUE(book->state().frame->tool(leaves));
    EXPECT_EQ(book->state().acts.size(), 2U);
}

} // namespace frame_reload_tests
} // namespace asleft
