#!/usr/bin/env bash
# rules.sh ROOT: the rules of the house that a look at the text can tell. Prints each breach and fails if there is one.
# rules.sh --names: the name of every rule, for the test of this test.
set -euo pipefail
export LC_ALL=C

names=(upward-include widgets-in-core sql-outside-store select-star printing-core modal-dialog style-sheet
    spin-box unfinished-mark machine-path long-file long-function scattered-class run-bit)

if [[ $1 == --names ]]; then
    printf '%s\n' "${names[@]}"
    exit 0
fi

cd "$1"
breaches=0

# breach RULE TEXT: one line for each line of TEXT.
breach() {
    local line
    while IFS= read -r line; do
        [[ -n $line ]] || continue
        printf '%s: %s\n' "$1" "$line"
        breaches=$((breaches + 1))
    done <<<"$2"
}

# look RULE PATTERN FOLDER... -- [GREP OPTION...]: every line that matches is a breach; folders that are not there are passed over.
look() {
    local rule=$1 pattern=$2 folders=()
    shift 2
    while (($#)) && [[ $1 != -- ]]; do
        [[ -e $1 ]] && folders+=("$1")
        shift
    done
    (($#)) && shift
    ((${#folders[@]})) || return 0
    breach "$rule" "$(grep -rnIE "$@" -e "$pattern" "${folders[@]}" || true)"
}

sources=(--include=*.h --include=*.cpp)
builds=(--include=CMakeLists.txt --include=*.cmake)
everywhere=(core app demo-db tests resources scripts cmake .ci docs README.md DEVELOPERS.md CMakeLists.txt CMakePresets.json)

look upward-include '#[[:space:]]*include[[:space:]]*"\.\./' core app demo-db tests -- "${sources[@]}"

look widgets-in-core 'QtWidgets|Qt6?::Widgets|<Q(Widget|Application|MainWindow|Dialog|MessageBox|Label|PushButton|AbstractButton|LineEdit)>' \
    core -- "${sources[@]}" "${builds[@]}"

# SQL in capitals anywhere; in small letters where a string begins with it (a sentence for people begins with a capital).
sql='QSql|sqlite3|\b(SELECT|INSERT (OR [A-Z]+ )?INTO|DELETE FROM|UPDATE [^ ]+ SET|(CREATE|DROP|ALTER) (TABLE|INDEX|VIEW|TRIGGER)|PRAGMA|BEGIN IMMEDIATE)\b'
sql+='|"[[:space:]]*(select [^"]* from|insert into|delete from|update [^ "]+ set|(create|drop|alter) table|pragma) '
other_rooms=()
for room in core/*/; do [[ $room == core/store/ ]] || other_rooms+=("${room%/}"); done
look sql-outside-store "$sql" app demo-db "${other_rooms[@]}" -- "${sources[@]}"
look sql-outside-store 'Qt6?::Sql|[Ss][Qq][Ll]ite' app demo-db -- "${builds[@]}"

look select-star '[Ss][Ee][Ll][Ee][Cc][Tt][[:space:]]+\*' core resources --

look printing-core '\b(std::(cout|cerr|clog)|f?printf[[:space:]]*\(|f?puts[[:space:]]*\(|q(Debug|Info|Warning|Critical)\b)' core -- "${sources[@]}"

# The event loop of the program itself is the one exec() there is.
breach modal-dialog "$(grep -rnE "${sources[@]}" \
    -e '(\.|->)exec[[:space:]]*\(' -e 'QMessageBox::(information|question|warning|critical|about)[[:space:]]*\(' \
    -e 'Q(Input|File|Color|Font)Dialog::get' app 2>/dev/null | grep -vE '\bapp(lication)?\.exec\(\)' || true)"

look style-sheet 'setStyleSheet|\.qss\b' app core demo-db --

look spin-box 'QDoubleSpinBox|QDoubleValidator' app core -- "${sources[@]}"

look unfinished-mark '\b(TO[D]O|FIX[M]E|XX[X]|HAC[K])\b' "${everywhere[@]}" --

look machine-path '(^|[^A-Za-z0-9_./}-])/(home|root|wor[k]|Users|tmp)/|[A-Z]:\\\\Users|(deb|security)\.debian\.org|npmjs\.|pypi\.' \
    "${everywhere[@]}" -- --exclude=rules.sh

folders=()
for folder in core app demo-db tests; do [[ -d $folder ]] && folders+=("$folder"); done
while read -r lines file; do
    if ((lines > 600)); then
        breach long-file "$file has $lines lines; is there a room inside that wants a door of its own?"
    elif ((lines > 500)); then
        printf 'close to the limit: %s has %s lines\n' "$file" "$lines"
    fi
done < <(((${#folders[@]})) && find "${folders[@]}" \( -name '*.h' -o -name '*.cpp' \) -print0 | xargs -0r wc -l | grep -v ' total$')

# What is larger than the rules allow, and why it may be. A line goes when what it names is mended.
long_functions_allowed=(
    core/words/error_words.cpp # one switch with a sentence for each kind of error: a kind without one does not compile
)
is_in() {
    local wanted=$1
    shift
    [[ " $* " == *" $wanted "* ]]
}

sources_of_code=()
for folder in core app demo-db; do [[ -d $folder ]] && sources_of_code+=("$folder"); done
code_files() { ((${#sources_of_code[@]})) && find "${sources_of_code[@]}" -name '*.cpp' -print0 | sort -z; }

# The house's form puts the brackets of a function alone at the left edge.
while IFS=: read -r file line lines; do
    is_in "$file" "${long_functions_allowed[@]}" || breach long-function "$file:$line: a function of $lines lines; what are its parts called?"
done < <(code_files | xargs -0r awk '
    FNR == 1 { begun = 0 }
    $0 == "{" { begun = FNR }
    $0 == "}" && begun { if (FNR - begun - 1 > 60) print FILENAME ":" begun ":" FNR - begun - 1; begun = 0 }')

# A class whose members are written in two files was split by its length, not by what it does.
while IFS=: read -r file class files; do
    breach scattered-class "$file: $class is one class in $files files"
done < <(code_files | xargs -0r awk '
    /^[A-Za-z]/ && !/;[ \t]*$/ && match($0, /^[^(=]*\(/) {
        head = substr($0, 1, RLENGTH - 1)
        if (!match(head, /[A-Z][A-Za-z0-9]*::~?[A-Za-z0-9_]+$/))
            next
        class = substr(head, RSTART)
        sub(/::.*/, "", class)
        if ((class, FILENAME) in seen)
            next
        seen[class, FILENAME] = 1
        ++count[class]
    }
    END {
        for (pair in seen) {
            split(pair, part, SUBSEP)
            if (count[part[1]] > 1)
                print part[2] ":" part[1] ":" count[part[1]]
        }
    }' | sort)

for script in app/run tests/run .ci/run scripts/*; do
    [[ ! -e $script || -x $script ]] || breach run-bit "$script cannot be run as it is"
done

if ((breaches)); then
    printf '%s breaches of the rules of the house\n' "$breaches"
    exit 1
fi
echo 'no breach'
