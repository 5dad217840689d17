#pragma once

#include <parts/value_field.h>

#include <base/error.h>

#include <map>

// What forms do with their fields, whatever stands in them.
namespace asleft {

template <class F>
QList<ValueField *> allOf(const std::map<F, ValueField *> &fields)
{
    QList<ValueField *> all;
    for (const auto &[which, field] : fields)
        all.append(field);
    return all;
}

/// Refuses a field that was left; one passed by without typing is not told off for being empty.
template <class F, class Words>
void refuseLeft(const std::map<F, ValueField *> &fields, F left, const std::map<F, Error> &refusals, Words words)
{
    const auto refusal = refusals.find(left);
    ValueField *field = fields.at(left);
    if (refusal != refusals.end() && !field->text().trimmed().isEmpty())
        field->refuse(words(left, refusal->second));
}

/// A refusal that stands goes or follows what is typed; a new one waits until the field is left. `words` makes the sentence of a field and
/// what is wrong with it.
template <class F, class Words>
void mendFields(const std::map<F, ValueField *> &fields, const std::map<F, Error> &refusals, Words words)
{
    for (const auto &[which, field] : fields) {
        const auto refusal = refusals.find(which);
        if (refusal == refusals.end())
            field->accept();
        else if (field->isRefused())
            field->refuse(words(which, refusal->second));
    }
}

/// What was understood is told at once, under its field.
template <class F>
void tellEchoes(const std::map<F, ValueField *> &fields, const std::map<F, QString> &echoes)
{
    for (const auto &[which, field] : fields) {
        const auto echo = echoes.find(which);
        field->setNote(echo == echoes.end() ? QString() : echo->second);
    }
}

/// Refuses everything that is wrong and gives the keyboard to the first of it. False where nothing is.
template <class F, class Words>
bool refuseFields(const std::map<F, ValueField *> &fields, const std::map<F, Error> &refusals, Words words)
{
    for (const auto &[which, error] : refusals)
        fields.at(which)->refuse(words(which, error));
    if (refusals.empty())
        return false;
    fields.at(refusals.begin()->first)->edit()->setFocus(Qt::OtherFocusReason);
    return true;
}

} // namespace asleft
