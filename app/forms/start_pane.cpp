#include <forms/start_pane.h>

#include <parts/heading.h>
#include <parts/ink_of.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/rule.h>

#include <QFileDialog>
#include <QHBoxLayout>
#include <QVBoxLayout>

namespace asleft {

namespace {

const QString suffix = QStringLiteral("asleft");

QFileDialog *garageDialog(StartPane *sheet, const QString &title)
{
    auto *dialog = new QFileDialog(sheet, title);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setDefaultSuffix(suffix);
    dialog->setNameFilters({StartPane::tr("Garages (*.asleft)"), StartPane::tr("All files (*)")});
    return dialog;
}

} // namespace

StartPane::StartPane(QWidget *parent) : QWidget(parent), m_message(new MessageLine)
{
    setWindowTitle(tr("Asleft"));
    setMinimumSize(640, 400);
    buildLayout();
}

void StartPane::buildLayout()
{
    auto *make = new KeyButton(tr("New garage"));
    auto *open = new KeyButton(tr("Open a garage"));
    make->setStrong(true);
    auto *keys = new QHBoxLayout;
    keys->setSpacing(10);
    keys->addWidget(make);
    keys->addWidget(open);
    keys->addStretch(1);

    auto *words =
        new Heading(tr("A garage is one file: its vehicles, its jobs, and everything that was found, set and left."), TextSize::Body);
    words->setWordWrap(true);

    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(2 * paneMargin, paneMargin, 2 * paneMargin, paneMargin);
    column->setSpacing(14);
    column->addStretch(1);
    column->addWidget(new Heading(tr("Asleft"), TextSize::Title));
    column->addWidget(new Rule(Rule::Weight::Heavy));
    column->addWidget(words);
    column->addWidget(m_message);
    column->addSpacing(6);
    column->addLayout(keys);
    column->addStretch(2);
    connect(make, &KeyButton::clicked, this, &StartPane::askNew);
    connect(open, &KeyButton::clicked, this, &StartPane::askOpen);
}

void StartPane::askNew()
{
    QFileDialog *dialog = garageDialog(this, tr("Where the new garage is kept"));
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    connect(dialog, &QFileDialog::fileSelected, this, &StartPane::newWanted);
    dialog->open();
}

void StartPane::askOpen()
{
    QFileDialog *dialog = garageDialog(this, tr("Which garage to open"));
    dialog->setFileMode(QFileDialog::ExistingFile);
    connect(dialog, &QFileDialog::fileSelected, this, &StartPane::openWanted);
    dialog->open();
}

} // namespace asleft
