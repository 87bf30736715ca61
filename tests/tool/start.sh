#!/usr/bin/env bash
# Sets up what is missing, builds the app and serves it on this machine. `start.sh 9000` takes another port than the first free one.
source "$(dirname "${BASH_SOURCE[0]}")/setup.sh"

taken() { (exec 3<>"/dev/tcp/127.0.0.1/$1") 2>/dev/null; }

port=${1:-8080}
if [[ $# == 0 ]]; then
  while taken "$port"; do port=$((port + 1)); done
elif taken "$port"; then
  die "Port $port is in use: name another one, or none to get a free one."
fi

need_rust
need_cc
# The app compiles while the tools are installed: either alone leaves a core idle towards its end. What the build says is said by
# trunk below, which finds it done.
cargo build --quiet --locked --profile start --target wasm32-unknown-unknown --bin haulm >/dev/null 2>&1 &
app=$!
trap 'kill "$app" 2>/dev/null || true' EXIT
need_build
wait "$app" || true
trap - EXIT
say "Building the app"
trunk build --cargo-profile start
say "Haulm is at http://127.0.0.1:$port/ (it is built anew when a source changes; Ctrl+C stops it)"
exec trunk --log error serve --cargo-profile start --port "$port"
