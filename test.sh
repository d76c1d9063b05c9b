#!/usr/bin/env bash
# Everything that must hold before a change goes in. Installs what the tests need when it is missing (Debian, as root).
# ./test.sh          about fourteen minutes on two cores
# ./test.sh --full   with the slow tests (those marked [Trait("Speed", "slow")])
set -uo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"

full=no
for arg in "$@"; do
    case "$arg" in
        --full) full=yes ;;
        *) echo "test.sh knows --full only, not '$arg'." >&2; exit 2 ;;
    esac
done

# A test program ends before what it counts of its own calls pays: some seven per cent of the processor's time.
export DOTNET_TieredPGO=0

results=artifacts/test-results
failures=()
started=$SECONDS

step() { # title, command...
    local title=$1 t=$SECONDS
    shift
    echo "== $title"
    if "$@"; then
        echo "   $title: good, $((SECONDS - t)) s"
    else
        echo "   $title: FAILED, $((SECONDS - t)) s"
        failures+=("$title")
        return 1
    fi
}

name_failed() { # each failed test and the first line of what it said, at the end where they are read
    compgen -G "$results/*.trx" >/dev/null || return 0
    awk 'BEGIN { RS = "<UnitTestResult " } NR > 1 && /^[^>]*outcome="Failed"/ {
        match($0, /testName="[^"]*"/); name = substr($0, RSTART + 10, RLENGTH - 11)
        said = match($0, /<Message>[^<]*/) ? substr($0, RSTART + 9, RLENGTH - 9) : "no message"
        gsub(/(&#xD;)?[\r\n]+ */, " ", said)
        print "Failed test: " name ": " substr(said, 1, 300)
    }' "$results"/*.trx
}

finish() {
    local passed=0 failed=0 skipped=0
    if compgen -G "$results/*.trx" >/dev/null; then
        passed=$(cat "$results"/*.trx | grep -o '<UnitTestResult [^>]*outcome="Passed"' | wc -l)
        skipped=$(cat "$results"/*.trx | grep -o '<UnitTestResult [^>]*outcome="NotExecuted"' | wc -l)
        local all
        all=$(cat "$results"/*.trx | grep -o '<UnitTestResult ' | wc -l)
        failed=$((all - passed - skipped))
    fi
    # A step that is not a test (build, format, types) counts as one failure, so that the closing line never looks good alone.
    local other=0 f
    for f in ${failures[@]+"${failures[@]}"}; do
        [ "$f" = "Tests" ] || other=$((other + 1))
    done
    [ "$failed" -eq 0 ] && printf '%s\n' ${failures[@]+"${failures[@]}"} | grep -qx Tests && other=$((other + 1))
    failed=$((failed + other))
    if [ $((passed + failed + skipped)) -eq 0 ]; then
        failures+=("no test ran")
        failed=1
    fi
    echo
    for f in ${failures[@]+"${failures[@]}"}; do echo "Failed: $f"; done
    name_failed
    echo "Took $((SECONDS - started)) s."
    echo "$passed passed, $failed failed, $skipped skipped"
    [ "$failed" -eq 0 ]
    exit
}

install_missing() {
    local missing=()
    command -v chromium >/dev/null || missing+=(chromium)
    command -v fc-list >/dev/null && fc-list 2>/dev/null | grep -qi 'noto' || missing+=(fontconfig fonts-noto-core)
    command -v pdftotext >/dev/null || missing+=(poppler-utils)
    command -v zbarimg >/dev/null || missing+=(zbar-tools)
    command -v node >/dev/null || missing+=(nodejs)
    command -v npm >/dev/null || missing+=(npm)
    # The tests start a server of their own; nothing of the system's is used.
    compgen -G '/usr/lib/postgresql/*/bin/initdb' >/dev/null || missing+=(postgresql)
    [ ${#missing[@]} -eq 0 ] && return 0
    if ! command -v apt-get >/dev/null; then
        echo "The tests need: ${missing[*]}. This is no Debian, so install them by hand and run test.sh again." >&2
        return 1
    fi
    if [ "$(id -u)" -ne 0 ]; then
        echo "The tests need: ${missing[*]}. Run: sudo apt-get install -y ${missing[*]}   then test.sh again." >&2
        return 1
    fi
    echo "Installing ${missing[*]}."
    apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null
}

check_types() { # the web modules are shipped as written; their JSDoc types are checked here
    local dir=src/Tickover.Web
    [ -f "$dir/tsconfig.json" ] || { echo "There is no $dir/tsconfig.json to check." >&2; return 1; }
    (cd "$dir" && { [ -d node_modules ] || npm ci --no-audit --no-fund --silent; } && npx --no-install tsc --noEmit -p tsconfig.json)
}

check_format() { # IDE0055 in the build holds the layout of code; this holds line ends, last lines and tabs, and takes seconds
    dotnet format whitespace . --folder --verify-no-changes
}

test_modules() { # programs' names joined by ";"
    local filter=()
    [ "$full" = yes ] || filter=(--filter-not-trait "Speed=slow")
    dotnet test --test-modules "$1" --max-parallel-test-modules 1 \
        --results-directory "$results" --report-trx ${filter[@]+"${filter[@]}"}
}

run_tests() {
    # Two test programs at a time: the one with the browser, which mostly waits and takes longest, beside all others in turn. No test measures time.
    local others="" browser p name code=0
    for p in tests/*/*.csproj; do
        name=$(basename "$p" .csproj)
        p="artifacts/bin/$name/release/$name.dll"
        if [ "$name" = Tickover.Browser.Tests ]; then browser=$p; else others="$others;$p"; fi
    done
    test_modules "$browser" >"$results.browser" 2>&1 &
    test_modules "${others#;}" || code=$?
    wait $! || code=$?
    cat "$results.browser"
    for p in tests/*/*.csproj; do
        p=$(basename "$p" .csproj)
        grep -lq "$p" "$results"/*.trx 2>/dev/null || { echo "$p left no results." >&2; code=1; }
    done
    return $code
}

if ! command -v dotnet >/dev/null || ! dotnet --list-sdks | grep -q '^10\.'; then
    echo "test.sh needs the .NET 10 SDK, which was not found. Install it from https://dotnet.microsoft.com/download and run this again." >&2
    exit 2
fi

rm -rf "$results"
step "What the tests need" install_missing || finish
[ -f dotnet-tools.json ] && step "Tools" dotnet tool restore
step "Restore" dotnet restore Tickover.slnx --locked-mode || finish
step "Build" dotnet build Tickover.slnx -c Release --no-restore --nologo -v quiet -warnaserror || finish
step "Format" check_format
step "Types of the web modules" check_types
step "Tests" run_tests
finish
