# Every step may be run again at any time; it says what it does and skips what is
# there. On a machine without wasm for rustup's Rust: WASM_STD=distro make ...
SHELL := /bin/bash
.DEFAULT_GOAL := help
.PHONY: help setup build module serve test test-native test-page test-e2e test-engines check deny sizes measure bench twice icons
run := .tools/run

help: ## these lines
	@awk -F ':.*## ' '/^[a-z0-9-]+:.*## / { printf "  make %-12s %s\n", $$1, $$2 }' Makefile

setup: ## install what building and testing need, once
	@.tools/setup.sh test

build: ## dist/: the site, and dist/till-morning.html, the page as one file
	@.tools/setup.sh build
	@$(run) trunk build
	@echo "built: dist/ and dist/till-morning.html"

module: ## pkg/: the engine as a module for scripts of others, npm-shaped
	@.tools/setup.sh module
	@.tools/module.sh

serve: build ## build, then serve dist/ on this machine (PORT=8080)
	@$(run) node tests/browser/serve.mjs dist --compress --port $${PORT:-8080}

test: ## everything: engine natively, page in Chromium, the site end to end
	@.tools/setup.sh test
	@.tools/test.sh

test-native: ## the engine's tests; needs nothing but Rust
	@cargo test

test-page: ## the page's tests inside headless Chromium
	@.tools/setup.sh test
	@.tools/test.sh page

test-e2e: ## the built site in Chromium, from outside (ONLY=offline picks files)
	@.tools/setup.sh test
	@.tools/test.sh e2e

test-engines: ## the built site's core tasks in Chromium, Firefox and WebKit
	@.tools/setup.sh test
	@.tools/test.sh engines

check: ## format, lints for both targets, house rules, commit messages
	@.tools/setup.sh build
	@.tools/commits.sh
	$(run) cargo fmt --check
	$(run) cargo clippy --all-targets -- -D warnings
	$(run) cargo clippy --target wasm32-unknown-unknown --features split,module --bins --test page -- -D warnings
	$(run) cargo test --test house

deny: ## licences, doubles and sources of the crates (.cargo/deny.toml)
	@.tools/setup.sh deny
	@$(run) cargo deny --offline --config .cargo/deny.toml check licenses bans sources

sizes: ## what a visitor transfers, beside what was aimed at
	@node .tools/sizes.mjs dist

measure: ## what a visitor feels: paint, first answer, keys (a table, no test)
	@.tools/setup.sh test
	@node tests/browser/measure.mjs

bench: build ## the scorecard: this page against a bare counter and a page by hand
	@.tools/setup.sh bench
	@.tools/bench.sh

twice: build ## build once more, elsewhere and from nothing, and compare byte for byte
	@.tools/twice.sh

icons: ## draw style/icons/*.png anew from the SVGs
	@.tools/setup.sh test
	@node .tools/icons.mjs
