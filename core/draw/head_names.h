#pragma once

#include <draw/head.h>

namespace asleft {

/// "◂ front"
QString frontWord();
/// What a bank is called: by the letter its cylinders share, "bank A"; else by its count; "front row" of a radial engine, "upper 1" of
/// stacked rows. Empty where there is only one.
QString bankName(const EngineDesign &design, int bank);
QString seenFromFrontWords();

/// A column of short texts, none upon another.
class GutterColumn {
public:
    GutterColumn(HeadPlan &plan, double left, double width) : m_plan(plan), m_left(left), m_width(width) {}
    /// Adds a text at this height to the plan's labels, unless it is empty or there is one already.
    void add(double y, const QString &text);

private:
    HeadPlan &m_plan;
    double m_left;
    double m_width;
    QList<double> m_taken;
};

/// Sets all numbers in the largest size in which each fits into its box.
void fitNumbers(HeadPlan &plan);

} // namespace asleft
