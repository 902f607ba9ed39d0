#!/usr/bin/env bash
# pkg/: the engine as a module for scripts of others, in an npm-shaped folder.
set -euo pipefail
source "$(dirname "$0")/env.sh"
cd "$here"

staged=$(mktemp -d); trap 'rm -rf "$staged"' EXIT
cargo build --release --locked --target $wasm_target --features module --bin till-morning-module
built=${CARGO_TARGET_DIR:-target}/$wasm_target/release/till-morning-module.wasm
wasm-bindgen --target web --no-typescript --remove-name-section --remove-producers-section \
  --out-dir "$staged" --out-name glue "$built"
# What the loader looks for if it is given nothing: it always is.
sed -i 's/glue_bg\.wasm/till-morning.wasm/' "$staged/glue.js"
wasm-opt -Oz "$staged/glue_bg.wasm" -o "$staged/till-morning.wasm"
node .tools/module/pack.mjs "$staged"
