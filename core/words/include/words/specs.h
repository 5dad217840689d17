#pragma once

#include <shop/things.h>

#include <QString>

namespace asleft {

// What a manual asks for, and from where.

QString conditionName(EngineCondition condition); ///< "cold"
QString subjectName(SpecSubject subject);         ///< "Intake lash"
QString certaintyName(Certainty certainty);       ///< "read in the manual"
/// "0.35 to 0.45 mm cold · Workshop Manual p. 41"; says where it was not read in a manual or its tolerance is assumed.
QString specLine(const Spec &spec);
/// Only where it comes from: "Workshop Manual p. 41", "from memory".
QString sourceText(const SpecSource &source);

} // namespace asleft
