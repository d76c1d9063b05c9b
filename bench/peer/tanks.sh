#!/usr/bin/env bash
# Two tanks over an hour of road against the same equations in C on SUNDIALS CVODE: error of both, and the ratio of times.
# Needs a C compiler and libsundials-dev. Ends with 1 where the march is off by more than is allowed, or the ratio at the same tolerance is under 20.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"
root=$(cd ../.. && pwd)

if ! echo '#include <cvode/cvode.h>' | cc -E - >/dev/null 2>&1; then
    echo "This needs cc and SUNDIALS. On Debian: apt-get install gcc libc6-dev libsundials-dev" >&2
    exit 2
fi

mkdir -p build
cc -O3 -march=native -std=gnu11 -Wall -Wextra -Werror -o build/tanks tanks.c \
    -lsundials_cvode -lsundials_nvecserial -lsundials_sunlinsoldense -lsundials_sunmatrixdense -lsundials_sunnonlinsolfixedpoint -lm
dotnet build "$root/bench/Tickover.Bench" -c Release --nologo -v quiet
exec dotnet "$root/artifacts/bin/Tickover.Bench/release/Tickover.Bench.dll" gauge-peer build/tanks build/tanks.txt
