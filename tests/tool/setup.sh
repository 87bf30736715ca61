# Sourced by start.sh and check.sh: brings what is missing on this machine and leaves alone what fits.
#
# What it needs beforehand: rustup, and for check.sh Node.js 20 or newer. Tools of the build go to a cache folder of their own, so
# that a trunk of another version which somebody installed for other work stays as it is.

set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."

# Trunk stops at NO_COLOR=1, which is how most programs are told.
unset NO_COLOR

# Newer trunks need a newer compiler than rust-toolchain.toml names.
trunk_version=0.21.14
geckodriver_version=0.37.1
split_version=0.2.4
tools=${XDG_CACHE_HOME:-$HOME/.cache}/haulm

say() { printf '\n== %s\n' "$*"; }
die() {
  printf '\n%s\n' "$*" >&2
  exit 1
}
has() { command -v "$1" >/dev/null 2>&1; }

# locked NAME: the version of a package in Cargo.lock.
locked() { awk -v want="name = \"$1\"" '$0 == want { getline; gsub(/version = |"/, ""); print; exit }' Cargo.lock; }

# The compiler of rust-toolchain.toml with its browser target. Asked for in so many words: where rustup is told not to install by
# itself, the file alone brings nothing.
need_rust() {
  has rustup || die "rustup is missing: install it as your system does (Debian: apt-get install rustup) and start this again."
  local channel libs
  channel=$(sed -n 's/^channel = "\(.*\)"/\1/p' rust-toolchain.toml)
  toolchain=${RUSTUP_TOOLCHAIN:-$channel}
  if ! rustc --version >/dev/null 2>&1; then
    if [[ $(rustc +stable --version 2>/dev/null) == "rustc $channel "* ]]; then
      # The same compiler under its other name.
      toolchain=stable
    else
      say "Installing Rust $channel"
      rustup toolchain install "$channel" --profile minimal
    fi
    export RUSTUP_TOOLCHAIN=$toolchain
  fi
  libs=$(rustc --print target-libdir --target wasm32-unknown-unknown)
  if [[ ! -d $libs ]]; then
    say "Adding the browser target to Rust $channel"
    rustup target add wasm32-unknown-unknown --toolchain "$toolchain"
  fi
}

need_lints() {
  cargo fmt --version >/dev/null 2>&1 || rustup component add rustfmt --toolchain "$toolchain"
  cargo clippy --version >/dev/null 2>&1 || rustup component add clippy --toolchain "$toolchain"
}

# need_tool COMMAND PACKAGE VERSION OPTION...: a program from the package registry, unless the one at hand is of that version.
# Installed quickly rather than well optimised: it runs for a second and would compile for minutes. One folder for all tools, so
# that what they share compiles once; the same number of units for what runs in the build and what ends in the tool, so that this is
# one thing too.
need_tool() {
  local command=$1 package=$2 version=$3
  shift 3
  # Some tell more on further lines.
  [[ "$("$command" --version 2>/dev/null | head -n 1) " == "$command $version "* ]] && return
  install_tool "$package" "$version" "$@"
}

# install_tool PACKAGE VERSION OPTION...: into the folder of tools.
install_tool() {
  local package=$1 version=$2
  shift 2
  say "Installing $package $version into $tools"
  env -u CARGO_BUILD_TARGET -u RUSTFLAGS CARGO_TARGET_DIR="$tools/build" CARGO_PROFILE_RELEASE_OPT_LEVEL=0 CARGO_PROFILE_RELEASE_LTO=off \
    CARGO_PROFILE_RELEASE_CODEGEN_UNITS=16 CARGO_PROFILE_RELEASE_BUILD_OVERRIDE_CODEGEN_UNITS=16 \
    cargo install "$package" --version "=$version" --locked --root "$tools" --force "$@"
  hash -r
}

need_cc() { has cc || need_debian gcc libc6-dev; }

need_build() {
  need_rust
  need_cc
  export PATH="$tools/bin:$PATH"
  # The lock file's own version: a bindgen of another one refuses to read what the compiler made. Neither tool is to fetch anything,
  # so neither needs the encryption that it comes with.
  need_tool wasm-bindgen wasm-bindgen-cli "$(locked wasm-bindgen)" --no-default-features
  need_tool trunk trunk "$trunk_version" --no-default-features
  rm -rf "$tools/build"
}

# What a release build cuts the program in parts with. It does not tell its version; cargo's list of what it installed does.
need_split() {
  has wasm-split-cli && grep -qs "\"wasm_split_cli_support $split_version " "$tools/.crates.toml" && return
  install_tool wasm_split_cli_support "$split_version" --features build-binary
  rm -rf "$tools/build"
}

# Quiet but for errors: trunk warns on each build that it cannot shorten the generated script, which it then copies as it is.
trunk() { command trunk --log error "$@"; }

# need_debian PACKAGE...: from the system's own packages, as root or by sudo.
need_debian() {
  has apt-get || die "Missing here: $*. Install what your system calls these and start this again."
  local root=()
  if [[ $(id -u) != 0 ]]; then
    has sudo || die "Missing here: $*. Install them as root (apt-get install $*) and start this again."
    root=(sudo)
  fi
  say "Installing $*"
  "${root[@]}" apt-get update
  "${root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends "$@"
}

# major COMMAND: the first number of its version; nothing where there is none.
major() { { "$1" --version 2>/dev/null || true; } | grep -oE '[0-9]+' | head -n 1; }

# A browser with its driver, and the modules that drive it. CHROMIUM and CHROMEDRIVER name others than the system's.
need_browser() {
  has node || die "Node.js 20 or newer is missing: install it as your system does (Debian: apt-get install nodejs npm) and start this again."
  (($(node -p 'parseInt(process.versions.node)') >= 20)) || die "Node.js $(node --version) is too old for the browser tests: 20 or newer is needed."
  local missing=()
  has "${CHROMIUM:-chromium}" || missing+=(chromium)
  has "${CHROMEDRIVER:-chromedriver}" || missing+=(chromium-driver)
  has fc-list && [[ -n $(fc-list) ]] || missing+=(fontconfig fonts-dejavu-core)
  # Reads printed pages: text, sizes, and pictures of them.
  has pdftotext || missing+=(poppler-utils)
  ((${#missing[@]} == 0)) || need_debian "${missing[@]}"
  # The whole browser does as well, only slower: where the system has no such package, or none that the driver fits. Not the script of
  # that name in /usr/bin: a driver that ends it leaves the browser behind.
  windowless=/usr/lib/chromium/chromium-headless-shell
  has "$windowless" || (need_debian chromium-headless-shell) || true
  [[ $(major "$windowless") == $(major "${CHROMEDRIVER:-chromedriver}") ]] || windowless=
  if ! cmp -s tests/browser/package-lock.json tests/browser/node_modules/.installed; then
    say "Installing the modules of the browser tests"
    (cd tests/browser && npm ci --ignore-scripts --no-audit --no-fund && cp package-lock.json node_modules/.installed)
  fi
}

# The two other engines. FIREFOX, GECKODRIVER, WEBKIT (its MiniBrowser), WEBKITWEBDRIVER and XVFB name others than the system's.
need_engines() {
  local missing=()
  has "${FIREFOX:-firefox-esr}" || missing+=(firefox-esr)
  has "${WEBKITWEBDRIVER:-WebKitWebDriver}" || missing+=(webkit2gtk-driver)
  has "${XVFB:-Xvfb}" || missing+=(xvfb)
  ((${#missing[@]} == 0)) || need_debian "${missing[@]}"
  [[ -n ${GECKODRIVER:-} ]] || need_tool geckodriver geckodriver "$geckodriver_version"
  rm -rf "$tools/build"
}
