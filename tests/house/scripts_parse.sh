#!/usr/bin/env bash
# scripts_parse.sh ROOT: every shell script of the house can be parsed.
set -euo pipefail
cd "$1"
count=0
while IFS= read -r -d '' file; do
    IFS= read -r first <"$file" 2>/dev/null || continue
    [[ $first =~ ^#!.*[/\ ](ba)?sh($|\ ) ]] || continue
    bash -n "$file"
    count=$((count + 1))
done < <(find . \( -path ./build -o -path ./.git -o -path ./.cache \) -prune -o -type f -size -200k \
    \( ! -name '*.*' -o -name '*.sh' \) -print0)
((count >= 3)) || { echo "only $count scripts were found"; exit 1; }
echo "$count scripts parse"
