#!/usr/bin/env bash
# Installs what the tests need, builds everything with warnings as errors, runs every test project, and ends on "N passed, N failed".
# May be run again and again; needs the .NET SDK, and root or sudo where packages are missing.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."

export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 DEBIAN_FRONTEND=noninteractive
results=artifacts/test-results
rm -rf "$results"
mkdir -p "$results"

say() { printf '\n== %s\n' "$*"; }

say "Packages: Chromium for the browser tests, poppler and qpdf for the papers"
missing=()
command -v chromium >/dev/null || missing+=(chromium)
command -v pdftoppm >/dev/null || missing+=(poppler-utils)
command -v qpdf >/dev/null || missing+=(qpdf)
if [ "${#missing[@]}" -gt 0 ]; then
    root=()
    [ "$(id -u)" = 0 ] || root=(sudo)
    # Package mirrors fail now and then; nothing of ours is repeated.
    for attempt in 1 2 3; do
        "${root[@]}" apt-get update -qq && "${root[@]}" apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null && break
        [ "$attempt" = 3 ] && { echo "Could not install: ${missing[*]}"; exit 1; }
        sleep 5
    done
fi

say "Build"
dotnet tool restore >/dev/null
dotnet restore ShopFit.sln --locked-mode
dotnet build ShopFit.sln --no-restore -c Release -nologo
# The browser tests walk through the program as a shop would run it.
dotnet publish src/ShopFit.Web --no-build -c Release -nologo -o artifacts/shop

# Each project reports in a file of its own; one that crashed, or ran nothing, counts as a failure. So does a skipped test.
passed=0 failed=0
for project in tests/*.Tests; do
    name=$(basename "$project")
    say "$name"
    report="$PWD/$results/$name.trx"
    status=0
    dotnet run --project "$project" -c Release --no-build -- -noLogo -noColor -failSkips -result-trx "$report" || status=$?
    count() { grep -o '<Counters [^>]*>' "$report" 2>/dev/null | sed -n "s/.* $1=\"\([0-9]*\)\".*/\1/p"; }
    here_passed=$(count passed) here_failed=$(count failed)
    here_passed=${here_passed:-0} here_failed=${here_failed:-0}
    if [ "$here_failed" = 0 ] && { [ "$status" != 0 ] || [ "$here_passed" = 0 ]; }; then here_failed=1; fi
    passed=$((passed + here_passed)) failed=$((failed + here_failed))
done

printf '\n%d passed, %d failed\n' "$passed" "$failed"
[ "$failed" = 0 ]
