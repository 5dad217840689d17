// Everything a person can read on any screen comes through the translator: shown in a language that nobody speaks, no word is left in
// English.
#include "app_test.h"
#include "garage_fixture.h"
#include "pseudo_language.h"

#include <demo_garage.h>
#include <parts/garage_copy.h>
#include <pictures/screens.h>
#include <window/window.h>
#include <work/jobs.h>

#include <QFileInfo>
#include <QPushButton>
#include <QRegularExpression>
#include <QSqlDatabase>
#include <QSqlQuery>
#include <QSqlRecord>
#include <QStandardItemModel>
#include <QTableView>

using namespace asleft;
using namespace asleft::testing;

namespace {

/// Words of no language: units, threads, the notation of points, keys behind what they do, days as the locale writes them, the program's
/// name.
const QRegularExpression &symbols()
{
    static const QRegularExpression known(
        QStringLiteral("<[^>]*>|\\(?[A-Z]\\)|\\d+ [A-Z][a-z]{2}( \\d{4})?|"
                       "(?<![A-Za-z])(mm|in|thou|N·m|N|lbf·ft|lbf·in|kgf·m|kgf·cm|turn|km|mi|h|min|C|F|"
                       "M\\d+(x[\\d.]+)?|([IEJD]|B[IE])?\\d+[a-z]?|IN|EX|INJ|DEC|BRIDGE|Asleft)(?![A-Za-z])"));
    return known;
}

/// Every text that was typed into a garage: all of its columns but the words the file itself is written with.
QSet<QString> textsOfGarage(const QString &path)
{
    QSet<QString> texts;
    static const QRegularExpression ownWord(QStringLiteral("^[a-z_0-9]*$"));
    {
        QSqlDatabase file = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), QStringLiteral("texts"));
        file.setDatabaseName(path);
        if (!file.open())
            return {};
        for (const QString &table : file.tables()) {
            QSqlQuery rows(QStringLiteral("SELECT * FROM \"%1\"").arg(table), file);
            while (rows.next())
                for (int column = 0; column < rows.record().count(); ++column)
                    if (const QString text = rows.value(column).toString(); !ownWord.match(text).hasMatch())
                        texts.insert(text);
        }
    }
    QSqlDatabase::removeDatabase(QStringLiteral("texts"));
    return texts;
}

bool hasLatin(const QString &text)
{
    return std::any_of(text.begin(), text.end(), PseudoLanguage::isLatin);
}

/// What of a text is neither translated nor data.
class Untranslated {
public:
    explicit Untranslated(const QSet<QString> &data) : m_data(data.begin(), data.end())
    {
        std::sort(m_data.begin(), m_data.end(), [](const QString &a, const QString &b) { return a.size() > b.size(); });
    }

    [[nodiscard]] QStringList in(QWidget &window) const
    {
        const ShownTexts shown(window);
        const Untranslated here = with(shown.typed());
        QStringList left;
        for (const ShownTexts::Text &text : shown.texts())
            if (here.leaves(text.text))
                left.append(QStringLiteral("%1: “%2”").arg(text.where, text.text));
        left.removeDuplicates();
        return left;
    }

private:
    [[nodiscard]] Untranslated with(const QSet<QString> &typed) const
    {
        return Untranslated(QSet<QString>(m_data.begin(), m_data.end()) + typed);
    }

    [[nodiscard]] bool leaves(QString text) const
    {
        if (!hasLatin(text))
            return false;
        for (const QString &data : m_data)
            if (hasLatin(data))
                text.replace(data, QString());
        text.remove(symbols());
        // A line of what was wrapped, or the beginning of what was cut, is data too.
        static const QRegularExpression between(QStringLiteral("[][·…]"));
        const QStringList parts = text.split(between);
        return std::any_of(parts.begin(), parts.end(), [&](const QString &part) { return hasLatin(part) && !isInData(part.trimmed()); });
    }

    [[nodiscard]] bool isInData(const QString &part) const
    {
        return part.size() > 2 && std::any_of(m_data.begin(), m_data.end(), [&](const QString &data) { return data.contains(part); });
    }

    QStringList m_data;
};

} // namespace

class TranslatedTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void cleanupTestCase();
    void everyScreen_data();
    void everyScreen();
    void aBareWordIsFound_data();
    void aBareWordIsFound();
    void whatIsTranslatedOrDataIsNot();

private:
    PseudoLanguage m_language;
    QTemporaryDir m_folder;
    QString m_garage;
    QSet<QString> m_data; ///< beside what stands in the garage
};

void TranslatedTest::initTestCase()
{
    m_garage = m_folder.filePath(QStringLiteral("demo.asleft"));
    QVERIFY(makeDemoGarage(m_garage.toStdString()));
    QVERIFY(textsOfGarage(m_garage).size() > 100);
    // The lines of a job sheet are stored with the job as they stand in the sheet.
    for (const JobSheet &sheet : builtInSheets()) {
        m_data.insert(QString::fromStdString(sheet.title));
        for (const SheetLine &line : sheet.lines)
            m_data.insert(QString::fromStdString(line.title));
    }
    QVERIFY(QCoreApplication::installTranslator(&m_language));
}

void TranslatedTest::cleanupTestCase()
{
    QCoreApplication::removeTranslator(&m_language);
}

void TranslatedTest::everyScreen_data()
{
    QTest::addColumn<QString>("name");
    for (const Screen &screen : screens())
        QTest::newRow(screen.name) << QString::fromLatin1(screen.name);
}

void TranslatedTest::everyScreen()
{
    QFETCH(QString, name);
    const auto screen = std::ranges::find_if(screens(), [&](const Screen &each) { return name == QLatin1String(each.name); });
    const auto copy = GarageCopy::of(m_garage);
    QVERIFY(copy);
    AppContext context(copy->garage(), Look::Light);
    Window window(context);
    present(window);
    window.goTo(screen->page);
    if (screen->prepare)
        screen->prepare(window);
    QCoreApplication::processEvents();
    // Some screens lay a vehicle of their own.
    const QString file = QString::fromStdString(copy->garage().path());
    const QSet<QString> data = m_data + textsOfGarage(file) + QSet<QString>{QFileInfo(file).completeBaseName()};
    const QStringList left = Untranslated(data).in(window);
    QVERIFY2(left.isEmpty(), qPrintable(left.join(u'\n')));
}

void TranslatedTest::aBareWordIsFound_data()
{
    QTest::addColumn<std::function<void(QWidget &)>>("plant");
    using Plant = std::function<void(QWidget &)>;
    const QString bare = QStringLiteral("Bare words");
    QTest::newRow("label") << Plant([=](QWidget &window) { new QLabel(bare, &window); });
    QTest::newRow("button") << Plant([=](QWidget &window) { new QPushButton(bare, &window); });
    QTest::newRow("placeholder") << Plant([=](QWidget &window) { (new QLineEdit(&window))->setPlaceholderText(bare); });
    QTest::newRow("tip") << Plant([=](QWidget &window) { window.setToolTip(bare); });
    QTest::newRow("name") << Plant([=](QWidget &window) { window.setAccessibleName(bare); });
    QTest::newRow("description") << Plant([=](QWidget &window) { window.setAccessibleDescription(bare); });
    QTest::newRow("title") << Plant([=](QWidget &window) { window.setWindowTitle(bare); });
    QTest::newRow("row") << Plant([=](QWidget &window) {
        auto *rows = new QStandardItemModel(&window);
        rows->appendRow(new QStandardItem(bare));
        (new QTableView(&window))->setModel(rows);
    });
    QTest::newRow("noun in a sentence") << Plant([](QWidget &window) {
        new QLabel(QCoreApplication::translate("TranslatedTest", "Not found: %1.").arg(QStringLiteral("torque wrench")), &window);
    });
    QTest::newRow("painting") << Plant([=](QWidget &window) {
        class Painted : public QWidget {
        public:
            Painted(QString text, QWidget *parent) : QWidget(parent), m_text(std::move(text)) {}

        protected:
            void paintEvent(QPaintEvent * /*event*/) override { QPainter(this).drawText(rect(), m_text); }

        private:
            QString m_text;
        };
        new Painted(bare, &window);
    });
}

void TranslatedTest::aBareWordIsFound()
{
    QFETCH(std::function<void(QWidget &)>, plant);
    QWidget window;
    plant(window);
    present(window);
    QVERIFY(!Untranslated({QStringLiteral("Bare"), QStringLiteral("wrench")}).in(window).isEmpty());
}

void TranslatedTest::whatIsTranslatedOrDataIsNot()
{
    QWidget window;
    new QLabel(
        QCoreApplication::translate("TranslatedTest", "%1 is set to %2.").arg(QStringLiteral("Small wrench"), QStringLiteral("24 N·m")),
        &window);
    new QLineEdit(QStringLiteral("as typed"), &window);
    present(window);
    QCOMPARE(Untranslated({QStringLiteral("Small wrench")}).in(window), QStringList());
}

APP_TEST(TranslatedTest)
#include "translated_test.moc"
