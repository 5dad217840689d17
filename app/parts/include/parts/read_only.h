#pragma once

#include <QList>

namespace asleft {

class ChoiceKeys;
class Garage;
class KeyButton;

/// Turns off what would write into a garage that may only be read, and says why. Does nothing in any other garage.
void keepFromWriting(const Garage &garage, const QList<KeyButton *> &keys);
void keepFromWriting(const Garage &garage, ChoiceKeys &keys);

} // namespace asleft
