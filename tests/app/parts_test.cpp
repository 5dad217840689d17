#include "garage_fixture.h"

#include <parts/choice_keys.h>
#include <parts/ink_of.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/ruled_list.h>
#include <parts/value_field.h>

#include <QAccessible>
#include <QSignalSpy>
#include <QVBoxLayout>

namespace asleft::testing::parts_test {

namespace {

RuledRow row(qint64 id, const char *title)
{
    RuledRow row;
    row.id = id;
    row.title = QString::fromLatin1(title);
    return row;
}

void hold(QWidget *widget, Qt::Key key)
{
    QKeyEvent held(QEvent::KeyPress, key, Qt::NoModifier, QString(), true);
    QCoreApplication::sendEvent(widget, &held);
}

} // namespace

class PartsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void init() { failOnWarnings(); }

    void aKeyIsPressedByEnterOnceHoweverLongItIsHeld()
    {
        KeyButton key(QStringLiteral("Save"));
        present(key, key.sizeHint());
        QSignalSpy clicks(&key, &KeyButton::clicked);
        key.setFocus();
        press(Qt::Key_Return);
        hold(&key, Qt::Key_Return);
        hold(&key, Qt::Key_Return);
        QCOMPARE(clicks.size(), 1);
        press(Qt::Key_Space);
        QCOMPARE(clicks.size(), 2);
        QVERIFY(key.height() >= touchHeight);
        QVERIFY(!key.isDefault() && !key.autoDefault());
    }

    void focusIsSeen()
    {
        for (const Look look : {Look::Light, Look::Dark}) {
            QApplication::setPalette(palette(look));
            QWidget page;
            auto *column = new QVBoxLayout(&page);
            auto *first = new KeyButton(QStringLiteral("One"));
            auto *other = new KeyButton(QStringLiteral("Two"));
            column->addWidget(first);
            column->addWidget(other);
            present(page, {300, 200});
            other->setFocus();
            const QImage without = first->grab().toImage();
            first->setFocus();
            const QImage with = first->grab().toImage();
            QVERIFY(with != without);
            QCOMPARE(with.pixelColor(with.width() / 2, 1), ink(look).chosen);
        }
        QApplication::setPalette(palette(Look::Light));
    }

    void aMessageIsAnAlertNamedByItsSentence()
    {
        MessageLine line;
        line.refuse(QStringLiteral("“abc” is not a number."));
        QAccessibleInterface *interface = QAccessible::queryAccessibleInterface(&line);
        QVERIFY(interface);
        QCOMPARE(interface->role(), QAccessible::AlertMessage);
        QCOMPARE(interface->text(QAccessible::Name), QStringLiteral("“abc” is not a number."));
        line.clear();
        QVERIFY(line.isHidden());
    }

    void aLongMessageWrapsAndIsShownWhole()
    {
        QWidget page;
        auto *column = new QVBoxLayout(&page);
        auto *line = new MessageLine;
        column->addWidget(line);
        column->addStretch(1);
        line->refuse(QString(400, QLatin1Char('x')));
        present(page, {300, 400});
        QCOMPARE(page.width(), 300);
        QVERIFY(line->height() >= line->heightForWidth(line->width()));
        QVERIFY(line->height() > 3 * line->fontMetrics().height());
    }

    void aFieldSaysEnterOncePressed()
    {
        ValueField field(QStringLiteral("Pitch"));
        present(field, {300, 120});
        field.edit()->setFocus();
        QSignalSpy entered(&field, &ValueField::entered);
        press(Qt::Key_Return);
        hold(field.edit(), Qt::Key_Return);
        press(Qt::Key_Enter);
        QCOMPARE(entered.size(), 2);
        QVERIFY(field.edit()->height() >= touchHeight);
    }

    void aQuestionIsNoRefusalAndGoesLikeOne()
    {
        ValueField field(QStringLiteral("Asked for"));
        present(field, {300, 120});
        field.setNote(QStringLiteral("understood"));
        field.ask(QStringLiteral("Millimetres?"));
        QVERIFY(field.isAsking() && !field.isRefused());
        field.setNote(QStringLiteral("understood otherwise"));
        QCOMPARE(field.message()->sentence(), QStringLiteral("Millimetres?"));
        field.accept();
        QVERIFY(!field.isAsking());
        QCOMPARE(field.message()->sentence(), QStringLiteral("understood otherwise"));
        field.ask(QStringLiteral("Millimetres?"));
        field.refuse(QStringLiteral("No."));
        QVERIFY(field.isRefused() && !field.isAsking());
    }

    void aForbiddenKeyStaysOff()
    {
        KeyButton key(QStringLiteral("Save"));
        present(key, key.sizeHint());
        key.forbid(QStringLiteral("Only to be read."));
        key.setEnabled(true);
        QVERIFY(!key.isEnabled());
        QVERIFY(key.toolTip().contains(QStringLiteral("Only to be read.")));
        QCOMPARE(key.accessibleDescription(), QStringLiteral("Only to be read."));
    }

    void arrowsMoveAlongAChoice()
    {
        ChoiceKeys keys(QStringLiteral("Layout"), {QStringLiteral("a"), QStringLiteral("b"), QStringLiteral("c")});
        present(keys, {300, 120});
        QSignalSpy chosen(&keys, &ChoiceKeys::chosen);
        keys.takeFocus();
        press(Qt::Key_Right);
        press(Qt::Key_Right);
        QCOMPARE(keys.choice(), 2);
        press(Qt::Key_Left);
        QCOMPARE(keys.choice(), 1);
        QCOMPARE(chosen.size(), 3);
        keys.setChoice(0);
        QCOMPARE(chosen.size(), 3);
        QAccessibleInterface *interface = QAccessible::queryAccessibleInterface(keys.key(0));
        QCOMPARE(interface->role(), QAccessible::RadioButton);
        QVERIFY(interface->state().checked);
        QVERIFY(keys.key(0)->height() >= touchHeight);
    }

    void tabStopsAtTheChosenKeyFromTheStart()
    {
        QWidget page;
        auto *column = new QVBoxLayout(&page);
        auto *before = new KeyButton(QStringLiteral("before"));
        auto *keys = new ChoiceKeys(QStringLiteral("Layout"), {QStringLiteral("a"), QStringLiteral("b"), QStringLiteral("c")});
        auto *after = new KeyButton(QStringLiteral("after"));
        for (QWidget *part : {static_cast<QWidget *>(before), static_cast<QWidget *>(keys), static_cast<QWidget *>(after)})
            column->addWidget(part);
        keys->setChoice(1);
        present(page, {300, 300});
        before->setFocus();
        press(Qt::Key_Tab);
        QVERIFY(keys->key(1)->hasFocus());
        press(Qt::Key_Tab);
        QVERIFY(after->hasFocus());
    }

    void rowsAreTakenOverOneByOne()
    {
        RuledRows rows;
        QSignalSpy resets(&rows, &RuledRows::modelReset);
        rows.setRows({row(1, "one"), row(2, "two"), row(3, "three")});
        const QPersistentModelIndex two = rows.indexOf(2);
        rows.setRows({row(4, "four"), row(3, "three"), row(2, "second")});
        QCOMPARE(two.row(), 2);
        QCOMPARE(two.data().toString(), QStringLiteral("second"));
        QCOMPARE(rows.rowCount(), 3);
        rows.setRows({});
        QCOMPARE(rows.rowCount(), 0);
        QVERIFY(!two.isValid());
        QCOMPARE(resets.size(), 0);
    }

    void aListTellsWhatThePersonChoseAndNothingElse()
    {
        RuledRows rows;
        rows.setRows({row(1, "one"), row(2, "two"), row(3, "three")});
        RuledList list(QStringLiteral("Jobs"), &rows);
        present(list, {300, 300});
        QSignalSpy chosen(&list, &RuledList::chosen);
        QSignalSpy opened(&list, &RuledList::opened);
        list.setCurrentId(2);
        rows.setRows({row(3, "three"), row(2, "two")});
        QCOMPARE(chosen.size(), 0);
        QCOMPARE(list.currentId(), std::optional<qint64>(2));
        list.setFocus();
        press(Qt::Key_Up);
        QCOMPARE(chosen.size(), 1);
        QCOMPARE(list.currentId(), std::optional<qint64>(3));
        press(Qt::Key_Return);
        QCOMPARE(opened.size(), 1);
        QTest::mouseClick(list.viewport(), Qt::LeftButton, {}, list.visualRect(rows.indexOf(2)).center());
        QCOMPARE(list.currentId(), std::optional<qint64>(2));
        for (const RuledRow &shown : rows.rows())
            QVERIFY(list.visualRect(rows.indexOf(shown.id)).height() >= touchHeight);
    }

    void aClickChoosesTheLineUnderItAlsoTheFirstTime()
    {
        QList<RuledRow> many;
        for (qint64 id = 1; id <= 40; ++id)
            many.append(row(id, "line"));
        RuledRows rows;
        rows.setRows(many);
        QWidget page;
        auto *column = new QVBoxLayout(&page);
        auto *before = new KeyButton(QStringLiteral("before"));
        auto *list = new RuledList(QStringLiteral("Lines"), &rows);
        column->addWidget(before);
        column->addWidget(list);
        present(page, {300, 400});
        before->setFocus();
        list->scrollToBottom();
        QSignalSpy chosen(list, &RuledList::chosen);
        QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualRect(rows.indexOf(39)).center());
        QCOMPARE(chosen.size(), 1);
        QCOMPARE(chosen.front().front().toLongLong(), 39);
        QVERIFY(list->hasFocus());
    }

    void twentyThousandRowsAreTakenOverInOneGo()
    {
        QList<RuledRow> many;
        for (qint64 id = 1; id <= 20'000; ++id)
            many.append(row(id, "job"));
        RuledRows rows;
        rows.setRows(many);
        many.move(many.size() - 1, 0);
        QSignalSpy moved(&rows, &RuledRows::rowsMoved);
        rows.setRows(many);
        QCOMPARE(moved.size(), 1);
        QCOMPARE(rows.indexOf(20'000).row(), 0);
    }
};

APP_TEST(PartsTest)

} // namespace asleft::testing::parts_test

#include "parts_test.moc"
