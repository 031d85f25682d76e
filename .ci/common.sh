# Set-up that the scripts beside this one share; they source it.
cd "$(dirname "${BASH_SOURCE[0]}")/.."
jobs="$(nproc)"
missing=()

have() { command -v "$1" >/dev/null 2>&1; }

# want <Debian package> <command that succeeds where it is there>
want() {
  local package=$1
  shift
  "$@" >/dev/null 2>&1 || missing+=("$package")
}

install_missing() {
  [ ${#missing[@]} -gt 0 ] || return 0
  if [ "$(id -u)" -ne 0 ] || ! have apt-get; then
    echo "missing: ${missing[*]} (names of Debian packages). Install them, or run this as root." >&2
    exit 1
  fi
  echo "installing ${missing[*]}"
  apt-get update -qq
  DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends \
    "${missing[@]}" >/dev/null
}

compiles() { printf '%s\n' "$1" | "${CXX:-g++}" -std=c++20 -fsyntax-only -Itests/cpp -x c++ -; }
python_has() { python3 -c "$1"; }

# What every build of the package needs: a C++20 compiler, and a Python >= 3.10 with headers.
want_build_tools() {
  want g++ compiles '#include <concepts>'
  want python3 python_has 'import sys; assert sys.version_info >= (3, 10)'
  want python3-venv python_has 'import ensurepip, venv'
  want python3-dev python_has 'import os, sysconfig
assert os.path.exists(os.path.join(sysconfig.get_path("include"), "Python.h"))'
  # Saves compiling the same sources again; not needed, so asked for only where it costs nothing.
  [ "$(id -u)" -ne 0 ] || want ccache have ccache
}

use_ccache() {
  if have ccache; then
    # Another build folder of this checkout finds what the first compiled.
    export CMAKE_CXX_COMPILER_LAUNCHER=ccache CCACHE_NOHASHDIR=1
    export CCACHE_SLOPPINESS=pch_defines,time_macros,locale
  fi
}

cmake_is_new_enough() {
  printf 'cmake_minimum_required(VERSION 3.20)\n' >build/version.cmake
  cmake -P build/version.cmake >/dev/null 2>&1
}

# make_venv <folder>: a virtual environment first on PATH; CMake and Ninja from PyPI where the
# machine has none.
make_venv() {
  mkdir -p build
  python3 -m venv "$1"
  PATH="$PWD/$1/bin:$PATH"
  export PATH
  cmake_is_new_enough || python -m pip install --quiet 'cmake>=3.20'
  ninja --version >/dev/null 2>&1 || python -m pip install --quiet ninja
}
