// bench_joint_window ROUNDS: a joint of 200 fasteners, shown, and painted again after one tick, against a bare widget of the same size.
#include "bench_timing.h"

#include <drawn/fastener_button.h>
#include <drawn/joint_view.h>

#include <draw/fonts.h>
#include <joints/order.h>

#include <QApplication>
#include <QStyleFactory>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <utility>

namespace {

using namespace asleft;
using namespace asleft::bench;

constexpr QSize windowSize(1000, 560);

/// What is measured has to be painted: a window that skips it would be the fastest of all.
class Paints : public QObject {
public:
    [[nodiscard]] int since()
    {
        const int painted = m_painted;
        m_painted = 0;
        return painted;
    }

protected:
    bool eventFilter(QObject *, QEvent *event) override
    {
        m_painted += event->type() == QEvent::Paint ? 1 : 0;
        return false;
    }

private:
    int m_painted = 0;
};

void untilPainted(Paints &paints, const char *what)
{
    for (int tries = 0; tries < 100; ++tries) {
        QCoreApplication::processEvents();
        if (paints.since() > 0)
            return;
    }
    broken(std::string("never painted: ") + what);
}

void show(QWidget &widget)
{
    widget.resize(windowSize);
    widget.show();
}

struct Joint {
    explicit Joint(Pattern places) : pattern(std::move(places)), order(generateOrder(pattern))
    {
        for (const FastenerPosition &place : pattern.places) {
            names.append(QStringLiteral("fastener %1").arg(place.number));
            looks.append(FastenerLook{.stage = FastenerStage::Loose, .toTick = true});
        }
    }

    [[nodiscard]] qsizetype indexAt(std::size_t turn) const
    {
        const int number = order[turn % order.size()];
        const auto isIt = [number](const FastenerPosition &place) { return place.number == number; };
        return std::find_if(pattern.places.begin(), pattern.places.end(), isIt) - pattern.places.begin();
    }

    void setOn(JointView &view) const
    {
        view.setJoint(pattern, order);
        view.setFasteners(names, looks, indexAt(0));
    }

    Pattern pattern;
    TighteningOrder order;
    QStringList names;
    QList<FastenerLook> looks;
};

class JointBench {
public:
    JointBench(std::string name, Result<Pattern> pattern, int rounds)
        : m_name(std::move(name)), m_rounds(rounds), m_joint(need(std::move(pattern), "200 fasteners were refused").value())
    {
    }

    void run()
    {
        const auto plan = [this] { (void)planJoint(m_joint.pattern, m_joint.order, QSizeF(windowSize)); };
        plan();
        std::vector<double> seconds;
        for (int round = 0; round < m_rounds; ++round)
            seconds.push_back(secondsOf(plan));
        std::printf("%-62s %8.1f us\n", (m_name + ": planned").c_str(), median(seconds) * 1e6);
        compare(
            m_name + ": shown / a bare widget shown", m_rounds, [this] { showJoint(); }, [this] { showBare(); });
        redraw();
    }

private:
    void showBare()
    {
        QWidget bare;
        bare.installEventFilter(&m_paints);
        show(bare);
        untilPainted(m_paints, "a bare widget");
    }

    void showJoint()
    {
        JointView view;
        m_joint.setOn(view);
        view.installEventFilter(&m_paints);
        show(view);
        untilPainted(m_paints, "a joint");
    }

    void redraw()
    {
        QWidget bare;
        show(bare);
        JointView view;
        m_joint.setOn(view);
        show(view);
        QCoreApplication::processEvents();
        bare.installEventFilter(&m_paints);
        for (qsizetype index = 0; index < view.fasteners(); ++index)
            view.button(index)->installEventFilter(&m_paints);
        const auto repaintBare = [&] {
            bare.update();
            untilPainted(m_paints, "a bare widget again");
        };
        const auto against = [&](const char *what, const std::function<void()> &work) {
            (void)m_paints.since();
            compare(m_name + ": " + what + " / bare repaint", m_rounds, work, repaintBare);
        };
        against("one tick", [&] { tick(view); });
        m_turn = 0;
        against("tick, and on to the next", [&] { tickAndGoOn(view); });
        against("all of it", [&] {
            view.repaint();
            if (m_paints.since() == 0)
                broken("never painted: all of a joint");
        });
    }

    /// The one in hand, again and again: from loose to tight and back.
    void tick(JointView &view)
    {
        FastenerLook &look = m_joint.looks[m_joint.indexAt(0)];
        look.toTick = !look.toTick;
        look.stage = look.toTick ? FastenerStage::Loose : FastenerStage::Tight;
        view.setFasteners(m_joint.names, m_joint.looks, m_joint.indexAt(0), look.toTick ? 0 : 1);
        untilPainted(m_paints, "a tick");
    }

    /// As the Bench does it: the view goes where the next one is.
    void tickAndGoOn(JointView &view)
    {
        FastenerLook &ticked = m_joint.looks[m_joint.indexAt(m_turn)];
        ticked = FastenerLook{.stage = FastenerStage::Tight, .verdict = Verdict::Inside};
        ++m_turn;
        m_joint.looks[m_joint.indexAt(m_turn)].inHand = true;
        view.setFasteners(m_joint.names, m_joint.looks, m_joint.indexAt(m_turn), static_cast<qsizetype>(m_turn));
        untilPainted(m_paints, "the next one");
    }

    std::string m_name;
    int m_rounds;
    Joint m_joint;
    Paints m_paints;
    std::size_t m_turn = 0;
};

} // namespace

int main(int count, char **words)
{
    QApplication application(count, words);
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    QApplication::setFont(textFont(TextSize::Body));
    const int rounds = count > 1 ? std::max(1, std::atoi(words[1])) : 1;
    JointBench("200 around a circle", circlePattern(200), rounds).run();
    JointBench("10 rows of 20", rowsPattern(10, 20), rounds).run();
    JointBench("200 along a cover", coverPattern(200), rounds).run();
    JointBench("200 in a row", rowPattern(200), rounds).run();
    return 0;
}
