#!/usr/bin/env bash
# Sets up what is missing and tests everything, each step even where an earlier one failed. Ends with a table of what passed.
source "$(dirname "${BASH_SOURCE[0]}")/setup.sh"

passed=0 failed=0 table=""

# step NAME COMMAND...: runs one step, keeps its outcome and its seconds.
step() {
  local name=$1 began=$SECONDS outcome=passed
  shift
  say "$name"
  if "$@"; then passed=$((passed + 1)); else outcome=FAILED failed=$((failed + 1)); fi
  table+=$(printf '%-38s %-7s %5d s' "$name" "$outcome" $((SECONDS - began)))$'\n'
}

# Nothing below means anything without these.
need_build
need_split
need_lints
need_browser
need_engines

# Two files of journeys at a time, a core each. They run in Chromium without its window where that is here: half the time goes there otherwise.
browser() { HAULM_WINDOWLESS=$windowless node --test --test-reporter=spec --test-concurrency=2 "$@"; }
# Time is measured in the browser that people have.
alone() { node --test --test-reporter=spec --test-concurrency=1 "$@"; }

# What an earlier build left must not pass for this one's.
rm -rf dist
# It takes one core most of the time, since the release profile has one unit of code; the native steps have the other.
mkdir -p target
trunk build --release --features split >target/browser-build.log 2>&1 &
building=$!
trap 'kill "$building" 2>/dev/null || true' EXIT
built() {
  local outcome=0
  wait "$building" || outcome=$?
  cat target/browser-build.log
  return "$outcome"
}

step "format" cargo fmt --check
step "lints, native" cargo clippy --locked --all-targets -- -D warnings
# In the profile of the build it would use the macros that this has compiled, but has to wait for it: 94 s longer in all.
step "lints, browser" cargo clippy --locked --target wasm32-unknown-unknown --features split --lib --bins --example parts -- -D warnings
step "native tests and doc tests" cargo test --locked --no-fail-fast
step "browser build, what is left of it" built
step "size budget" node tests/browser/size.mjs
step "browser tests, all engines" browser tests/browser/*.test.mjs
# By itself: nothing else runs while time is measured.
step "time budgets" alone tests/browser/budget/*.test.mjs

say "Summary"
printf '%s\nscreenshots: target/screenshots\ncheck: %d passed, %d failed\n' "$table" "$passed" "$failed"
((failed == 0))
