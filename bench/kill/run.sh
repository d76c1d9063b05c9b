#!/usr/bin/env bash
# Kills a program that writes to a record (SIGKILL), 100 times or as often as asked, and looks each time at what the record holds.
# Exit 1 where anything acknowledged was lost, anything is half kept, or a record was not healthy within 2 s.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
kills=${1:-100}
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
dotnet build bench/Tickover.Kill -c Release -v quiet --nologo >/dev/null
dotnet artifacts/bin/Tickover.Kill/release/Tickover.Kill.dll run "$folder" "$kills"
