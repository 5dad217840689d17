#include <parts/read_only.h>

#include <parts/choice_keys.h>
#include <parts/key_button.h>

#include <words/errors.h>
#include <work/garage.h>

namespace asleft {

void keepFromWriting(const Garage &garage, const QList<KeyButton *> &keys)
{
    if (!garage.readOnly())
        return;
    for (KeyButton *key : keys)
        key->forbid(readOnlySentence());
}

void keepFromWriting(const Garage &garage, ChoiceKeys &keys)
{
    if (!garage.readOnly())
        return;
    keys.setEnabled(false);
    keys.setToolTip(wrappedTip(readOnlySentence()));
}

} // namespace asleft
