#!/usr/bin/env bash
# A gate that cannot fail is no gate: lays a small house that keeps every rule, then breaks one rule after the other in it and
# requires rules.sh to name exactly that one. Offending words are written in two halves, since this file is under the rules too.
set -euo pipefail

rules=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)/rules.sh
house=$(mktemp -d)
trap 'rm -rf "$house" "$house.planted"' EXIT
failures=0
tried=()

complain() {
    printf '%s\n' "$1"
    failures=$((failures + 1))
}

lines() { for ((i = 0; i < $1; i++)); do echo "// line $i"; done; }

# passes WHAT: the house as it stands keeps every rule.
passes() {
    local said
    said=$(bash "$rules" "$house") || complain "$1 was refused: $said"
}

planted_rules=() planted_files=() planted_texts=()

# refuses RULE FILE TEXT: with TEXT added to FILE, RULE is broken, in that file. Noted down, and tried with others at the next look().
refuses() {
    tried+=("$1")
    planted_rules+=("$1") planted_files+=("$2") planted_texts+=("$3")
}

# look: tries what was noted down, one breach of each rule at a time, each in a file of its own: exactly these are named, where they are.
look() {
    local at said named wanted left_rules left_files left_texts
    while ((${#planted_rules[@]})); do
        left_rules=() left_files=() left_texts=() wanted=()
        cp -a "$house" "$house.planted"
        for at in "${!planted_rules[@]}"; do
            local rule=${planted_rules[at]} file=${planted_files[at]} text=${planted_texts[at]}
            if [[ " ${wanted[*]} " == *" $rule: "* || " ${wanted[*]} " == *": $file "* ]]; then
                left_rules+=("$rule") left_files+=("$file") left_texts+=("$text")
                continue
            fi
            wanted+=("$rule: $file")
            mkdir -p "$(dirname "$house.planted/$file")"
            printf '%s\n' "$text" >>"$house.planted/$file"
        done
        if said=$(bash "$rules" "$house.planted"); then
            complain "nothing was noticed of: ${wanted[*]}"
        fi
        named=$(grep -oE '^[a-z-]+: ' <<<"$said" | sort -u | tr -d '\n')
        [[ $named == "$(printf '%s\n' "${wanted[@]}" | grep -oE '^[a-z-]+: ' | sort -u | tr -d '\n')" ]] ||
            complain "\"$named\" were broken instead of: ${wanted[*]}"
        for at in "${wanted[@]}"; do
            grep -qF "$at" <<<"$said" || complain "$at was not noticed"
        done
        rm -rf "$house.planted"
        planted_rules=("${left_rules[@]}") planted_files=("${left_files[@]}") planted_texts=("${left_texts[@]}")
    done
}

mkdir -p "$house"/{core/{base,store,work},app,demo-db,tests,scripts}
cat >"$house/core/base/uid.h" <<'H'
#include <base/error.h>
#include <core/shop/door.h>
// prints nothing; selects nothing: "Select one from the list"
int snprintf_free();
H
cat >"$house/core/store/rows.cpp" <<'H'
const char *text = "SELECT id, name FROM vehicle";
QSqlQuery query;
H
cat >"$house/app/main.cpp" <<'H'
return app.exec();
return QApplication::exec();
const char *label = "Update the list, or select a spec from the manual";
H
lines 500 >"$house/app/page.cpp"
printf '#!/usr/bin/env bash\n' >"$house/app/run"
chmod +x "$house/app/run"
passes 'a house that keeps the rules'

lines 550 >"$house/app/page.cpp"
passes 'a file close to the limit'

refuses upward-include core/shop/a.cpp '#include "../store/rows.h"'
refuses upward-include app/a.h '# include "../page.h"'
refuses widgets-in-core core/base/a.h '#include <QtWidgets/QWidget>'
refuses widgets-in-core core/shop/a.cpp '#include <QMessageBox>'
refuses widgets-in-core core/CMakeLists.txt 'asleft_room(show SEES Qt6::Widgets)'
refuses sql-outside-store app/a.cpp 'QSqlQuery query;'
refuses sql-outside-store app/main.cpp 'query("UPDATE vehicle SET name = ?");'
refuses sql-outside-store core/shop/a.cpp 'auto text = "select id from vehicle";'
refuses sql-outside-store core/base/a.h '#include <sqlite3.h>'
refuses sql-outside-store demo-db/a.cpp '"INSERT INTO vehicle(id) VALUES(1)"'
refuses sql-outside-store app/store/a.cpp '"PRAGMA user_version"'
refuses sql-outside-store app/CMakeLists.txt 'target_link_libraries(app PRIVATE Qt6::Sql)'
refuses select-star core/store/a.cpp '"SELECT * FROM act"'
refuses printing-core core/base/a.cpp 'std::cerr << 1;'
refuses printing-core core/shop/a.cpp 'qWarning() << 1;'
refuses printing-core core/shop/a.cpp 'printf("%d", 1);'
refuses modal-dialog app/a.cpp 'dialog.exec();'
refuses modal-dialog app/a.cpp 'menu->exec(here);'
refuses modal-dialog app/a.cpp 'QMessageBox::question(this, title, text);'
refuses modal-dialog app/a.cpp 'QFileDialog::getOpenFileName(this);'
refuses style-sheet app/a.cpp 'button->setStyleSheet(text);'
refuses spin-box app/a.h 'QDoubleSpinBox *value;'
refuses spin-box app/a.h 'QDoubleValidator check;'
refuses unfinished-mark core/base/a.h "// TO""DO: later"
refuses unfinished-mark tests/notes.txt "# FIX""ME"
refuses machine-path tests/a.cpp "\"/ho""me/someone/demo.asleft\""
refuses machine-path app/run "cd /wo""rk/main"
refuses long-file core/base/a.cpp "$(lines 601)"
refuses long-file tests/a.h "$(lines 601)"
function_of() { printf 'void %s()\n{\n%s\n}\n' "$1" "$(lines "$2")"; }
refuses long-function core/shop/a.cpp "$(function_of fold 61)"
refuses long-function app/a.cpp "$(function_of Page::build 61)"
refuses long-function demo-db/a.cpp "$(function_of build 61)"
look
function_of build 60 >"$house/app/whole.cpp"
passes 'a function that is as long as it may be'
rm "$house/app/whole.cpp"
function_of Page::build 3 >"$house/app/a_page.cpp"
refuses scattered-class app/b_page.cpp "$(function_of Page::wire 3)"
refuses scattered-class core/shop/a.cpp 'Page::Page(Page::Kind kind) : m_kind(kind)'
look
passes 'a class that is whole in one file'
printf 'void print(const Page::Kind &kind)\n{\n    Page::show();\n}\n' >"$house/app/c_page.cpp"
passes 'another file that only speaks of a class'
rm "$house/app/a_page.cpp" "$house/app/c_page.cpp"
chmod -x "$house/app/run"
refuses run-bit app/run '# cannot be run'
look
chmod +x "$house/app/run"

passes 'the house once everything was mended'

while IFS= read -r rule; do
    [[ " ${tried[*]} " == *" $rule "* ]] || complain "no breach of $rule was tried"
done < <(bash "$rules" --names)

if ((failures)); then
    exit 1
fi
echo "${#tried[@]} breaches noticed"
