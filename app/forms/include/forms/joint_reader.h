#pragma once

#include <shop/joint_entry.h>

#include <QString>

namespace asleft {

/// What was understood of each field, for under it.
std::map<JointField, QString> echoesOf(const JointReading &reading);

/// The sentence that refuses a field: what to type where nothing is typed, else what is wrong.
QString refusalSentence(JointField field, const Error &error);

} // namespace asleft
