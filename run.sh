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

if [ ! -d "$data" ]; then
    mkdir -p "$data"
    for car in samples/*.car.json; do
        # The faulty one shows what faults look like; it is no car of the workshop.
        [ "$car" = samples/faulty.car.json ] || cp "$car" "$data/$(basename "$car" .car.json).json"
    done
    echo "Demo cars of an invented workshop copied to $data."
fi

if compgen -G "$data/*.json" >/dev/null; then
    ./tickover check --brief "$data"/*.json || true
    echo
    echo "What the mixture says, computed from the documents, not fitted to readings:"
    for car in "$data"/*.json; do
        finding=$(./tickover mixture "$car" 2>/dev/null | sed -n 's/^Look first/look first/p' | head -1) || true
        echo "  $(basename "$car" .json): ${finding:-no point off target, or the document has faults}"
    done
    echo
fi
exec ./tickover serve "${args[@]}"
