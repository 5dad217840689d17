#pragma once

class QCoreApplication;

namespace asleft {

/// Has every sentence said in English with its plurals ("1 valve", "2 valves"), which the sources write as "valve(s)". To be called once
/// the application stands and before anything asks for words.
void installTranslation(QCoreApplication &application);

} // namespace asleft
