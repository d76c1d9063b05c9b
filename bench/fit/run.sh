#!/usr/bin/env bash
# A fit of three hundred readings by our solver and by SciPy's least_squares driving the same model. Needs Debian's python3-scipy.
# Exit 1 where SciPy finds a lower cost by more than a thousandth.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
dotnet build bench/Tickover.Bench -c Release -v quiet --nologo >/dev/null
/usr/bin/python3 bench/fit/peer.py artifacts/bin/Tickover.Bench/release/Tickover.Bench.dll
