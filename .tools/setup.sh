#!/usr/bin/env bash
# Installs what a step needs, says what it does, and skips what is there.
#   .tools/setup.sh build   the wasm target, trunk, wasm-bindgen, wasm-opt, wasm-split-cli, esbuild
#   .tools/setup.sh module  the same, and what makes types of JSON schemas
#   .tools/setup.sh test    all that, and Chromium, its driver, Firefox and WebKit, other
#                           readers of what we write (Python, Java for the HTML checker, a
#                           spreadsheet), the browser tests' packages
#   .tools/setup.sh bench   what the page is measured with
#   .tools/setup.sh deny    what reads the licences and sources of the crates
set -euo pipefail
source "$(dirname "$0")/env.sh"

# The distribution's packages need root; everything else is the user's own.
as_root() {
  if [ "$(id -u)" = 0 ]; then "$@"
  elif have sudo; then say "needs root: $*"; sudo "$@"
  else die "this step needs root, and there is no sudo: $*"
  fi
}
apt_updated=
apt_install() {
  have apt-get || die "please install by your own package manager: $*"
  if [ -z "$apt_updated" ]; then as_root apt-get update -qq || true; apt_updated=1; fi
  as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "$@" >/dev/null
}

ensure_basics() {
  have rustup && have cargo || die "Rust is not here: install it with rustup first"
  have cc || { say "C linker from the distribution"; apt_install gcc libc6-dev; }
  have node && have npm || { say "Node.js and npm from the distribution"; apt_install nodejs npm; }
}

# ---- the wasm standard library ---------------------------------------------

ensure_target() {
  if wasm_std_there; then echo "wasm target: there (${RUSTUP_TOOLCHAIN:-default toolchain})"; return; fi
  if [ "${WASM_STD:-}" != distro ]; then
    say "wasm target by rustup"
    if rustup target add $wasm_target; then return; fi
    echo "rustup could not bring it: falling back to the distribution's Rust"
  fi
  distro_target
  export RUSTUP_TOOLCHAIN=distro
  wasm_std_there || die "the wasm standard library is still not there"
}

# The distribution ships the library's source, not the library for wasm: it is
# built once (about a minute) and put where its own rustc looks for it.
distro_target() {
  say "wasm target from the distribution (root): packages"
  apt_install rustc-web cargo-web rust-web-src rust-web-llvm lld-22 rust-web-clippy rustfmt-web
  say "wasm target from the distribution (root): building the standard library"
  local sysroot libdir out
  sysroot=$(/usr/bin/rustc --print sysroot)
  libdir=$(/usr/bin/rustc --print target-libdir --target $wasm_target)
  out=$(mktemp -d)
  # The flag marks the crates as the compiler's own; without it std does not compile.
  # The other keeps this machine's paths out of every page built with the library.
  RUSTC_BOOTSTRAP=1 RUSTC=/usr/bin/rustc \
    RUSTFLAGS="-Zforce-unstable-if-unmarked --remap-path-prefix=${CARGO_HOME:-$HOME/.cargo}=/cargo" \
    /usr/bin/cargo build --locked --profile dist --target $wasm_target \
    --manifest-path "$sysroot/lib/rustlib/src/rust/library/sysroot/Cargo.toml" --target-dir "$out"
  # An older build's files beside these would be taken for the same crates.
  as_root rm -rf "$libdir"
  as_root mkdir -p "$libdir"
  as_root cp "$out/$wasm_target"/dist/deps/*.rlib "$libdir/"
  rm -rf "$out"
  rustup toolchain link distro /usr
}

# ---- the crates ----------------------------------------------------------------

# Trunk builds without the network (Trunk.toml), so every crate of the lock file has
# to be on the machine before that. Where they are, this asks nobody.
ensure_crates() {
  cargo fetch --quiet --locked --manifest-path "$here/Cargo.toml" || die "the crates could not be fetched"
  echo "crates: there"
}

# ---- tools by version --------------------------------------------------------

ensure_trunk() {
  if [ "$(trunk --version 2>/dev/null)" = "trunk $trunk_version" ]; then echo "trunk: there"; return; fi
  say "trunk $trunk_version (5 to 8 minutes on two cores)"
  # An unoptimised trunk builds the page as fast and itself compiles in half the time.
  CARGO_PROFILE_DEV_DEBUG=0 CARGO_TARGET_DIR="$tools/build" \
    cargo install --quiet --locked --debug --no-default-features --root "$trunk_dir" "trunk@$trunk_version"
  rm -rf "$tools/build"
}

ensure_split() {
  if [ -x "$split_dir/bin/wasm-split-cli" ]; then echo "wasm-split-cli: there"; return; fi
  say "wasm-split-cli $split_version (1 to 2 minutes on two cores)"
  CARGO_PROFILE_DEV_DEBUG=0 CARGO_TARGET_DIR="$tools/build" \
    cargo install --quiet --locked --debug --features build-binary --root "$split_dir" "wasm_split_cli_support@$split_version"
  rm -rf "$tools/build"
}

ensure_deny() {
  if [ "$(cargo-deny --version 2>/dev/null)" = "cargo-deny $deny_version" ]; then echo "cargo-deny: there"; return; fi
  say "cargo-deny $deny_version (5 to 9 minutes on two cores)"
  CARGO_TARGET_DIR="$tools/build" \
    cargo install --quiet --locked --root "$deny_dir" "cargo-deny@$deny_version"
  rm -rf "$tools/build"
}

ensure_bindgen() {
  [ -n "$bindgen_version" ] || die "Cargo.lock names no wasm-bindgen"
  if [ "$(wasm-bindgen --version 2>/dev/null)" = "wasm-bindgen $bindgen_version" ]; then echo "wasm-bindgen: there"; return; fi
  say "wasm-bindgen-cli $bindgen_version (2 to 4 minutes on two cores)"
  # Not --locked: that fails for this crate.
  CARGO_PROFILE_DEV_DEBUG=0 CARGO_TARGET_DIR="$tools/build" \
    cargo install --quiet --debug --no-default-features --root "$bindgen_dir" "wasm-bindgen-cli@$bindgen_version"
  rm -rf "$tools/build"
}

ensure_wasm_opt() {
  if wasm-opt --version 2>/dev/null | grep -q "version ${binaryen_version%%.*}"; then echo "wasm-opt: there"; return; fi
  say "wasm-opt (binaryen $binaryen_version)"
  mkdir -p "$binaryen_dir"
  npm install --silent --no-audit --no-fund --prefix "$binaryen_dir" "binaryen@$binaryen_version"
}

ensure_esbuild() {
  if [ "$(esbuild --version 2>/dev/null)" = "$esbuild_version" ]; then echo "esbuild: there"; return; fi
  say "esbuild $esbuild_version"
  mkdir -p "$esbuild_dir"
  npm install --silent --no-audit --no-fund --prefix "$esbuild_dir" "esbuild@$esbuild_version"
}

ensure_types_tool() {
  if have json2ts; then echo "json2ts: there"; return; fi
  say "json-schema-to-typescript $types_version"
  mkdir -p "$types_dir"
  npm install --silent --no-audit --no-fund --prefix "$types_dir" "json-schema-to-typescript@$types_version"
}

# ---- what the browser tests need --------------------------------------------

ensure_browser() {
  if have chromium && have chromedriver; then echo "Chromium and its driver: there"; return; fi
  say "Chromium and its driver from the distribution (root)"
  apt_install chromium chromium-driver fonts-dejavu-core
}

# The core tasks run in the other two engines too: Firefox needs no driver, WebKit's
# small browser has its own and wants a display and a message bus.
ensure_engines() {
  if have firefox-esr && have WebKitWebDriver && have xvfb-run && have dbus-run-session; then echo "Firefox and WebKit: there"; return; fi
  say "Firefox and WebKit from the distribution (root)"
  apt_install firefox-esr webkit2gtk-driver xvfb xauth dbus
}

# Python's csv reads what we write; the Nu HTML checker runs on Java.
ensure_readers() {
  if have python3 && have java; then echo "Python and Java: there"; return; fi
  say "Python and Java from the distribution (root)"
  apt_install python3 default-jre-headless
}

# A spreadsheet with a command line: the second engine that opens our tables. It
# brings some 25 MB, a tenth of what the office suites do.
ensure_spreadsheet() {
  if have ssconvert; then echo "Gnumeric: there"; return; fi
  say "Gnumeric from the distribution (root)"
  apt_install gnumeric
}

ensure_node_packages() {
  local dir="$here/tests/browser"
  if [ "$dir/node_modules/.package-lock.json" -nt "$dir/package-lock.json" ]; then echo "browser test packages: there"; return; fi
  say "browser test packages (npm ci)"
  (cd "$dir" && npm ci --silent --no-audit --no-fund --ignore-scripts && touch node_modules/.package-lock.json)
}

ensure_lighthouse() {
  if [ -d "$lighthouse_dir/node_modules/lighthouse" ]; then echo "Lighthouse: there"; return; fi
  say "Lighthouse $lighthouse_version"
  mkdir -p "$lighthouse_dir"
  npm install --silent --no-audit --no-fund --ignore-scripts --prefix "$lighthouse_dir" "lighthouse@$lighthouse_version"
}

build_tools() {
  ensure_basics; ensure_target; ensure_crates
  ensure_trunk; ensure_bindgen; ensure_wasm_opt; ensure_split; ensure_esbuild
}

case "${1:-}" in
  build) build_tools ;;
  module) build_tools; ensure_types_tool ;;
  test) build_tools; ensure_types_tool; ensure_browser; ensure_engines; ensure_readers; ensure_spreadsheet; ensure_node_packages ;;
  bench) build_tools; ensure_browser; ensure_node_packages; ensure_lighthouse ;;
  deny) ensure_basics; ensure_crates; ensure_deny ;;
  *) die "usage: setup.sh build|module|test|bench|deny" ;;
esac
