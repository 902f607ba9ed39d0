#!/usr/bin/env bash
# The scorecard: builds the bare counter that the page is held against, runs the engine's
# kernels natively, and prints both tables (tests/browser/scorecard.mjs).
set -euo pipefail
source "$(dirname "$0")/env.sh"
cd "$here"

counter=tests/browser/bench/counter
out=$(mktemp -d); trap 'rm -rf "$out"' EXIT
say "the bare counter"
cargo build --release --locked --target $wasm_target --manifest-path $counter/Cargo.toml --target-dir "${CARGO_TARGET_DIR:-$here/target}/counter"
wasm-bindgen --target web --no-typescript --out-dir "$out" --out-name counter \
  "${CARGO_TARGET_DIR:-$here/target}/counter/$wasm_target/release/counter.wasm"
wasm-opt -Oz --enable-bulk-memory --enable-nontrapping-float-to-int --enable-sign-ext --enable-mutable-globals \
  --enable-reference-types --enable-multivalue "$out/counter_bg.wasm" -o "$out/counter_bg.wasm"
esbuild --log-level=error --minify --allow-overwrite "$out/counter.js" --outfile="$out/counter.js"
cp $counter/index.html "$out/"
say "the page"
LIGHTHOUSE=$lighthouse_dir node tests/browser/scorecard.mjs "$out"
say "the engine's kernels, natively"
cargo bench --bench day --bench day_questions
