# Sourced by every script here: where the tools are, and which Rust builds wasm.
#
# Nothing is installed by this file. It only decides, from what is on the
# machine, so that `make test` and a command typed by hand see the same world.

here=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
wasm_target=wasm32-unknown-unknown

# Tools are kept per user and per version, so that a second checkout (or CI in
# a fresh clone) does not build them again. TILL_MORNING_TOOLS moves them.
tools=${TILL_MORNING_TOOLS:-${XDG_CACHE_HOME:-$HOME/.cache}/till-morning}

trunk_version=0.21.14
binaryen_version=132.0.0
esbuild_version=0.28.2
# Of one make with wasm_split_helpers in Cargo.toml, and it goes by wasm-bindgen's inside.
split_version=0.2.4
types_version=16.0.0
lighthouse_version=12.2.3
deny_version=0.20.2
# One source for the wasm-bindgen version: the lock file. The command line tool
# must be of exactly the crate's version.
bindgen_version=$(awk '/^name = "wasm-bindgen"$/ { getline; gsub(/[^0-9.]/, ""); print; exit }' "$here/Cargo.lock")

bindgen_dir=$tools/wasm-bindgen-$bindgen_version
trunk_dir=$tools/trunk-$trunk_version
binaryen_dir=$tools/binaryen-$binaryen_version
esbuild_dir=$tools/esbuild-$esbuild_version
types_dir=$tools/json2ts-$types_version
lighthouse_dir=$tools/lighthouse-$lighthouse_version
split_dir=$tools/wasm-split-$split_version
deny_dir=$tools/cargo-deny-$deny_version
export PATH="$deny_dir/bin:$split_dir/bin:$bindgen_dir/bin:$trunk_dir/bin:$binaryen_dir/node_modules/.bin:$esbuild_dir/node_modules/.bin:$types_dir/node_modules/.bin:$PATH"

say() { printf '\n== %s\n' "$*"; }
have() { command -v "$1" >/dev/null 2>&1; }
die() { printf 'set-up: %s\n' "$*" >&2; exit 1; }

# Is the wasm standard library there for toolchain $1 (empty: the default)?
# Looked for by libcore: the distribution's std may have a plain name.
wasm_std_there() {
  local dir
  dir=$(RUSTUP_TOOLCHAIN=${1:-${RUSTUP_TOOLCHAIN:-}} rustc_quiet --print target-libdir --target $wasm_target) || return 1
  compgen -G "$dir/libcore-*.rlib" >/dev/null
}
rustc_quiet() {
  [ -n "${RUSTUP_TOOLCHAIN:-}" ] || unset RUSTUP_TOOLCHAIN
  rustc "$@" 2>/dev/null
}

# The user's own toolchain where it has the target; else the distribution's,
# linked under the name `distro`, for this shell only. One toolchain for native
# and wasm, so that both see the same lints and the same compiler.
if [ -z "${RUSTUP_TOOLCHAIN:-}" ] && ! wasm_std_there && wasm_std_there distro; then
  export RUSTUP_TOOLCHAIN=distro
fi

# The in-browser tests: wasm-bindgen's runner, driving the system's Chromium.
export CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUNNER=wasm-bindgen-test-runner
if [ -z "${CHROMEDRIVER:-}" ] && have chromedriver; then
  CHROMEDRIVER=$(command -v chromedriver); export CHROMEDRIVER
fi
export WASM_BINDGEN_TEST_TIMEOUT=${WASM_BINDGEN_TEST_TIMEOUT:-120}

# The page must not tell who built it, nor differ by it: paths of the
# dependencies, which panic messages carry, go by a fixed name. The checkout's
# own are relative already; naming it here would give every clone other flags,
# and a full build. Leptos compiles each kind of view once under `erase_components`,
# and not each view of the page by itself: a sixth off the page's weight.
export CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUSTFLAGS="${CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUSTFLAGS---remap-path-prefix=${CARGO_HOME:-$HOME/.cargo}=/cargo --cfg erase_components}"
