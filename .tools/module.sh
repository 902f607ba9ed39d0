#!/usr/bin/env bash
# pkg/: the engine as a module for scripts of others, in an npm-shaped folder.
set -euo pipefail
source "$(dirname "$0")/env.sh"
cd "$here"

staged=$(mktemp -d); trap 'rm -rf "$staged"' EXIT
# The first two questions alone, and the whole engine: the same three calls, one glue.
for kind in module-night module; do
  cargo build --release --locked --target $wasm_target --features $kind --bin till-morning-module
  built=${CARGO_TARGET_DIR:-target}/$wasm_target/release/till-morning-module.wasm
  wasm-bindgen --target web --no-typescript --remove-name-section --remove-producers-section \
    --out-dir "$staged/$kind" --out-name glue "$built"
  # Which features it uses is known by its code; nothing reads the list after this.
  wasm-opt -Oz --converge --strip-target-features "$staged/$kind/glue_bg.wasm" -o "$staged/$kind.wasm"
done
cmp "$staged/module/glue.js" "$staged/module-night/glue.js"
# What the loader looks for if it is given nothing: it always is.
sed 's/glue_bg\.wasm/till-morning.wasm/' "$staged/module/glue.js" > "$staged/glue.js"
mv "$staged/module-night.wasm" "$staged/till-morning.wasm"
mv "$staged/module.wasm" "$staged/till-morning-whole.wasm"
node .tools/module/pack.mjs "$staged"
