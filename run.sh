#!/usr/bin/env bash
# Builds Tickover, lays out the demo workshop on the first run, says what the samples hold, and serves the pages.
# Needs the .NET 10 SDK and nothing else. Options go to `tickover serve`: ./run.sh --port 5080 --data folder
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"

if ! command -v dotnet >/dev/null || ! dotnet --list-sdks | grep -q '^10\.'; then
    echo "run.sh needs the .NET 10 SDK, which was not found. Install it from https://dotnet.microsoft.com/download and run this again." >&2
    exit 2
fi

data=tickover-data
args=("$@")
for ((i = 0; i < ${#args[@]}; i++)); do
    case "${args[i]}" in
        --data) data=${args[i + 1]:-$data} ;;
        --data=*) data=${args[i]#--data=} ;;
    esac
done
case " $* " in *" --data"*) ;; *) args+=(--data "$data") ;; esac

./tickover --version >/dev/null

# A folder that is not there, or has nothing in it, gets the invented workshop; anything else is left as it is.
if [ -z "$(ls -A "$data" 2>/dev/null)" ]; then
    ./tickover demo --data "$data"
    ./tickover record --data "$data"
    echo
    echo "What the mixture of its cars says, computed from the documents, not fitted to readings:"
    for car in samples/*.car.json; do
        # The faulty one shows what faults look like; it is no car of the workshop.
        [ "$car" = samples/faulty.car.json ] && continue
        finding=$(./tickover mixture "$car" 2>/dev/null | sed -n 's/^Look first/look first/p' | head -1) || true
        echo "  $(basename "$car" .car.json): ${finding:-no point off target, or the document has faults}"
    done
    echo
fi
exec ./tickover serve "${args[@]}"
