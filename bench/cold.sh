#!/usr/bin/env bash
# Start to finish of a command that computes a whole map, as typed: five runs, seconds each. Builds first, so that the build is not counted.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
car=${1:-samples/osprey-v8.car.json}
./tickover --version >/dev/null
for _ in 1 2 3 4 5; do
    begin=$(date +%s.%N)
    ./tickover mixture "$car" >/dev/null 2>&1
    awk -v a="$begin" -v b="$(date +%s.%N)" 'BEGIN { printf "%.2f s\n", b - a }'
done
