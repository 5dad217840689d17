#!/usr/bin/env bash
# arrows.sh COMPILER FLAGS may|must-not HEADER...: preprocesses one line, #include <HEADER>, with a room's own include directories.
# "may" wants all of them, with what they include, to be found; "must-not" wants the compiler to say of each that there is no such file, and
# nothing else.
set -euo pipefail
export LC_ALL=C

compiler=$1 flags=$2 rule=$3
shift 3
wrong=0

# looks HEADER...: what the compiler says of a file that includes them.
looks() { printf '#include <%s>\n' "$@" | "$compiler" @"$flags" -E -x c++ -o /dev/null - 2>&1; }

case $rule in
may)
    if ! said=$(looks "$@"); then
        printf 'These should be found from here, with all they include: %s\n%s\n' "$*" "$said"
        wrong=1
    fi
    ;;
must-not)
    for header in "$@"; do
        said=$(looks "$header") && found=true || found=false
        if $found || [[ $said != *"fatal error: $header: No such file or directory"* ]]; then
            printf '<%s> should be out of reach from here, but was found\n%s\n' "$header" "$said"
            wrong=1
        fi
    done
    ;;
*) exit 2 ;;
esac
exit "$wrong"
