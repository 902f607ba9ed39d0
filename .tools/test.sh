#!/usr/bin/env bash
# Runs the test runners named (native, page, e2e; none: all three), each to its
# end even when one before it fails, and closes with the last line of each.
set -uo pipefail
source "$(dirname "$0")/env.sh"
cd "$here"

native() { cargo test; }
page() { cargo test --target $wasm_target --features page --test page; }
e2e() { trunk build && .tools/module.sh && node tests/browser/run.mjs ${ONLY:-}; }

logs=$(mktemp -d); trap 'rm -rf "$logs"' EXIT
status=0
runners=${*:-native page e2e}
for runner in $runners; do
  say "tests: $runner"
  $runner 2>&1 | tee "$logs/$runner" || status=1
done
say "last lines"
for runner in $runners; do
  # cargo ends each test program with such a line; the browser run ends with its count
  grep -E '^test result:|^error' "$logs/$runner" | sed "s/^/$runner: /"
done
case " $runners " in *" e2e "*) tail -n 1 "$logs/e2e" ;; esac
exit $status
