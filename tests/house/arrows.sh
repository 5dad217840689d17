#!/usr/bin/env bash
# arrows.sh COMPILER FLAGS may|must-not HEADER...: preprocesses one line, #include <HEADER>, with a room's own include directories.
# "may" wants it and all it includes to be found; "must-not" wants the compiler to say that there is no such file, and nothing else.
set -euo pipefail
export LC_ALL=C

compiler=$1 flags=$2 rule=$3
shift 3
wrong=0
for header in "$@"; do
    said=$(printf '#include <%s>\n' "$header" | "$compiler" @"$flags" -E -x c++ -o /dev/null - 2>&1) && found=true || found=false
    case $rule in
    may)
        if ! $found; then
            printf '<%s> should be found from here, with all it includes:\n%s\n' "$header" "$said"
            wrong=1
        fi
        ;;
    must-not)
        if $found || [[ $said != *"fatal error: $header: No such file or directory"* ]]; then
            printf '<%s> should be out of reach from here, but was found\n%s\n' "$header" "$said"
            wrong=1
        fi
        ;;
    *) exit 2 ;;
    esac
done
exit "$wrong"
