#!/usr/bin/env bash
# Installs the Debian packages listed in the files named, and nothing else; does nothing where all are there.
#   tools/install_packages.sh tools/packages.build.txt [more lists]
set -euo pipefail

wanted=$(cat -- "$@" | sed -e 's/#.*//' -e '/^[[:space:]]*$/d')
missing=()
for package in $wanted; do
  status=$(dpkg-query -W -f='${db:Status-Status}' -- "$package" 2>/dev/null || true)
  if [[ $status != installed ]]; then missing+=("$package"); fi
done
if ((${#missing[@]} == 0)); then
  echo "packages: all there"
  exit 0
fi

as_root=()
if ((EUID != 0)); then
  if ! command -v sudo >/dev/null; then
    echo "These packages are missing, and installing them needs root or sudo: ${missing[*]}" >&2
    exit 1
  fi
  as_root=(sudo)
fi
echo "packages: installing ${missing[*]}"
"${as_root[@]}" apt-get update -q
"${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends "${missing[@]}"
