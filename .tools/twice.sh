#!/usr/bin/env bash
# Builds the commit that stands here once more, in a folder and with a target folder of its
# own, and compares both sites byte for byte.
set -euo pipefail
source "$(dirname "$0")/env.sh"
cd "$here"

[ -z "$(git status --porcelain)" ] || die "commit first: the clone has the last commit alone"
other=$(mktemp -d); trap 'rm -rf "$other"' EXIT
git clone --quiet . "$other/clone"
CARGO_TARGET_DIR=${TWICE_TARGET_DIR:-$other/target} "$other/clone/.tools/run" trunk build
diff --recursive dist "$other/clone/dist"
echo "twice the same: $(find dist -type f | wc -l) files"
