#include <bench/joint_pane_top.h>

#include <parts/heading.h>
#include <parts/key_button.h>

#include <shop/outlook.h>
#include <words/cautions.h>
#include <words/job.h>
#include <words/joints.h>

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

namespace {

/// The first sentence of it; the whole is in the tooltip.
QString shortened(const QString &caution)
{
    const qsizetype end = caution.indexOf(QStringLiteral(". "));
    return end < 0 ? caution : caution.left(end + 1);
}

} // namespace

JointPaneTop::JointPaneTop(QWidget *parent)
    : QWidget(parent), m_name(Heading::wrapped({}, TextSize::Now)), m_spec(Heading::wrapped({}, TextSize::SmallStrong)),
      m_order(new Heading({}, TextSize::Small, Heading::Tone::Quiet)), m_cautions(Heading::wrapped({}, TextSize::Small)),
      m_undo(new KeyButton(tr("undo")))
{
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(8);
    auto *words = new QVBoxLayout;
    words->setSpacing(3);
    m_order->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    for (Heading *line : {m_name, m_spec, m_order, m_cautions})
        words->addWidget(line);
    words->addStretch(1);
    row->addLayout(words, 1);
    m_undo->setPlain(true);
    row->addWidget(m_undo, 0, Qt::AlignTop);
}

void JointPaneTop::present(const JobState &state, StepId id, const Joint &joint, const QString &order)
{
    m_name->setText(QString::fromStdString(joint.text.name));
    m_spec->setText(jointSpecLine(joint));
    m_spec->setVisible(!m_spec->text().isEmpty());
    QStringList held{driveLine(joint), order};
    held.removeAll(QString());
    m_orderWords = held.join(QStringLiteral(" · "));
    showOrder();
    QStringList titles;
    QStringList sentences;
    const Step *step = state.frame->step(id);
    for (const Caution caution : step ? step->cautions : std::vector<Caution>()) {
        const CautionWords words = cautionWords(caution);
        titles.append(words.title);
        sentences.append(words.sentence);
    }
    for (const QString &caution : jointCautions(joint)) {
        titles.append(shortened(caution));
        sentences.append(caution);
    }
    m_cautionWords = titles.join(QStringLiteral(" · "));
    m_cautions->setAccessibleDescription(sentences.join(QChar::Space));
    m_cautions->setToolTip(sentences.isEmpty() ? QString() : wrappedTip(sentences.join(QChar::Space)));
    showCautions();
}

void JointPaneTop::showUndo(const JobState &state, std::string_view station)
{
    const auto last = undoable(state, station);
    m_undo->setEnabled(last.has_value());
    const auto act = std::ranges::find(state.acts, last, [](const Act &each) { return std::optional(each.seq); });
    m_undo->setToolTip(act == state.acts.end() ? QString() : tr("Take back: %1 (Ctrl+Z)").arg(actText(*act, state)));
}

void JointPaneTop::setBrief(bool brief)
{
    m_brief = brief;
    showOrder();
    showCautions();
}

int JointPaneTop::room() const
{
    return qMax(width() - m_undo->sizeHint().width() - 12, 200);
}

void JointPaneTop::showCautions()
{
    const QString words = m_brief ? m_cautions->fontMetrics().elidedText(m_cautionWords, Qt::ElideRight, room()) : m_cautionWords;
    m_cautions->setText(words);
    m_cautions->setVisible(!words.isEmpty());
}

void JointPaneTop::showOrder()
{
    m_order->setText(m_order->fontMetrics().elidedText(m_orderWords, Qt::ElideMiddle, room()));
    m_order->setVisible(!m_brief);
    m_order->setToolTip(m_order->text() == m_orderWords ? QString() : wrappedTip(m_orderWords));
}

void JointPaneTop::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    showOrder();
    showCautions();
}

} // namespace asleft
