#!/usr/bin/env bash
# Runs the test runners named (native, page, e2e, engines; none: all four), each to its
# end even when one before it fails, and closes with the last line of each.
set -uo pipefail
source "$(dirname "$0")/env.sh"
cd "$here"

native() { cargo test; }
page() { cargo test --target $wasm_target --features page --test page; }
# After e2e, which builds the site.
engines() { node tests/browser/engines/run.mjs; }
e2e() { trunk build && .tools/module.sh && node tests/browser/run.mjs ${ONLY:-}; }

logs=$(mktemp -d); trap 'rm -rf "$logs"' EXIT
status=0
runners=${*:-native page e2e engines}
for runner in $runners; do
  say "tests: $runner"
  $runner 2>&1 | tee "$logs/$runner" || status=1
done
say "last lines"
for runner in $runners; do
  # cargo ends each test program with such a line; the browser runs end with their count
  grep -E '^test result:|^error|^[0-9]+ passed' "$logs/$runner" | sed "s/^/$runner: /"
done
exit $status
