#!/usr/bin/env bash
# The parts that pages are made of, on a page of their own in target/parts: builds it, goes through its journeys, and takes its pictures.
source "$(dirname "${BASH_SOURCE[0]}")/setup.sh"

need_build
need_browser

rm -rf target/parts
mkdir -p target/parts
cargo build --locked --profile start --target wasm32-unknown-unknown --example parts
wasm-bindgen target/wasm32-unknown-unknown/start/examples/parts.wasm --target web --no-typescript --out-dir target/parts
{ cat style/base.css; find style -name '*.css' ! -name base.css | LC_ALL=C sort | xargs cat; } >target/parts/haulm.css
cp tests/example/parts/index.html target/parts/
echo 'import start from "./parts.js"; await start();' >target/parts/start.js
node --test --test-reporter=spec tests/browser/parts/parts.test.mjs
