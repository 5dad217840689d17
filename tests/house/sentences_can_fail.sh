#!/usr/bin/env bash
# Lays a small house whose sentences can all be translated, then plants one sentence after the other that cannot be, and requires sentences.pl
# to say so by the right name, and in that file.
set -euo pipefail

tests=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
gate=$tests/sentences.pl
house=$(mktemp -d)
trap 'rm -rf "$house" "$house.kept"' EXIT
failures=0
tried=()

complain() {
    printf '%s\n' "$1"
    failures=$((failures + 1))
}

# passes WHAT: the house as it stands says nothing that cannot be translated.
passes() {
    local said code=0
    said=$(perl "$gate" "$house") || code=$?
    ((code != 77)) || { echo "$said"; exit 77; }
    ((code == 0)) || complain "$1 was refused: $said"
}

# refuses RULE FILE TEXT: with TEXT put in for the mark HERE of FILE, RULE is broken, and named with that file.
refuses() {
    local rule=$1 file=$house/$2 said
    tried+=("$rule")
    cp "$file" "$house.kept"
    awk -v text="$3" '/HERE/ { print text } { print }' "$house.kept" >"$file"
    if said=$(perl "$gate" "$house"); then
        complain "$rule did not notice in $2: $3"
    else
        grep -q "^$rule: ${4:-$2}" <<<"$said" || complain "$rule did not name ${4:-$2} for $3, but: $said"
    fi
    cp "$house.kept" "$file"
}

mkdir -p "$house"/{core/words,app,scripts,resources/translations}
cp "$tests/../../scripts/translations" "$house/scripts/"
cat >"$house/core/words/words.cpp" <<'C'
#include <QCoreApplication>

namespace asleft {

namespace {

class HouseWords {
    Q_DECLARE_TR_FUNCTIONS(HouseWords)
};

} // namespace

// A comment may speak of tr(words), and a string of "tr(words)".
QString words(int count, bool here)
{
    const QString quoted = QStringLiteral("tr(words) // no comment") + QChar::fromLatin1('"');
    const QString twice = HouseWords::tr("again") + HouseWords::tr("again") + HouseWords::tr("again, of another kind", "noun");
    const QString long_ = HouseWords::tr("two halves "
                                         "of a sentence (%1)").arg(quoted);
    // HERE
    return here ? HouseWords::tr("%n valve(s)", nullptr, count) : QCoreApplication::translate("HouseWords", "elsewhere");
}

} // namespace asleft
C
echo '// HERE' >"$house/app/page.cpp"
"$house/scripts/translations"
sed -i -z 's/ type="unfinished"//; s/<numerusform></<numerusform>%n valve</; s/<numerusform></<numerusform>%n valves</' \
    "$house/resources/translations/asleft_en.ts"
passes 'a house that can be translated'

words=core/words/words.cpp
refuses no-literal $words 'QString a = HouseWords::tr(text);'
refuses no-literal $words 'QString a = HouseWords::tr(here ? "one" : "other");'
refuses no-literal $words 'QString a = QCoreApplication::translate(context, "one");'
refuses no-context $words 'QString a = QCoreApplication::translate("", "one");'
refuses said-elsewhere $words 'const char *a = QT_TR''ANSLATE_NOOP("HouseWords", "one");'
refuses said-elsewhere $words '#define SAY(text) HouseWords::tr(text)'
refuses no-context $words 'using Say = HouseWords; QString a = Say::tr("one");'
refuses lupdate-says app/page.cpp 'QString a() { return tr("one"); }'
refuses not-extracted app/page.cpp 'QString a() { return tr("one"); }'
refuses plural-by-hand $words 'QString a = count == 1 ? HouseWords::tr("one valve") : HouseWords::tr("%1 valves").arg(count);'
refuses plural-by-hand $words 'QString a = HouseWords::tr("1 valve");'
refuses plural-untold $words 'QString a = HouseWords::tr("%n cover(s)", nullptr, count);' resources/translations/asleft_en.ts

passes 'the house once everything was mended'

while IFS= read -r rule; do
    [[ " ${tried[*]} " == *" $rule "* ]] || complain "no breach of $rule was tried"
done < <(perl "$gate" --names)

if ((failures)); then
    exit 1
fi
echo "${#tried[@]} sentences that cannot be translated were noticed"
