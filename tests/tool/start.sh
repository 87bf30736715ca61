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

need_build
say "Building the app"
trunk build --release
say "Haulm is at http://127.0.0.1:$port/ (it is built anew when a source changes; Ctrl+C stops it)"
exec trunk --log error serve --release --port "$port"
