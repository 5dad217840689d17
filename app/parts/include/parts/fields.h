#pragma once

#include <parts/value_field.h>

#include <base/error.h>
#include <measure/parse.h>
#include <words/errors.h>
#include <work/workshop.h>

#include <algorithm>
#include <chrono>
#include <map>
#include <optional>

// What forms do with their fields, whatever stands in them.
namespace asleft {

inline std::string plainText(const ValueField *field)
{
    return field->text().trimmed().toStdString();
}

/// What stands in a field that may be left empty: nothing where it is.
template <class Q>
Result<std::optional<Typed<Q>>> readMaybe(const ValueField *field, Unit<Q> unit, DecimalMark mark)
{
    const std::string text = plainText(field);
    if (text.empty())
        return std::optional<Typed<Q>>();
    return parse<Q>(text, unit, mark).map([](Typed<Q> value) { return std::optional(std::move(value)); });
}

/// The same of a date.
inline Result<std::optional<std::chrono::sys_days>> readDay(const ValueField *field)
{
    const std::string text = plainText(field);
    if (text.empty())
        return std::optional<std::chrono::sys_days>();
    return parseDay(text).map([](std::chrono::sys_days day) { return std::optional(day); });
}

/// Accepts a field that can be read, and refuses one that cannot, unless it is still being typed in: then `refuse` is false, and only a
/// refusal that stands follows what is typed.
template <class T>
void markField(ValueField *field, const Result<T> &value, bool refuse)
{
    if (value)
        field->accept();
    else if (refuse || field->isRefused())
        field->refuse(sentence(value.error()));
}

/// Gives the keyboard to the first refused field. False where there is none.
inline bool focusRefused(const QList<ValueField *> &fields)
{
    const auto wrong = std::ranges::find_if(fields, &ValueField::isRefused);
    if (wrong == fields.end())
        return false;
    (*wrong)->edit()->setFocus(Qt::OtherFocusReason);
    return true;
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
