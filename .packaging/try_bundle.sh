#!/usr/bin/env bash
# Starts a bundle as on a machine without Python, on a screen of its own, and keeps a picture.
#   .packaging/try_bundle.sh BUNDLE OUT.png [PAGE.md]
# Says how large it is and how long the window takes; with PAGE.md also there, in the line that
# begins with "The bundle takes". Fails when no window comes, it ends, or anything is in its log.
# Needs Xvfb and ImageMagick, and the libraries a desktop has (libegl1, libxcb-cursor0,
# libxkbcommon-x11-0, libxcb-icccm4, libxcb-keysyms1, libxcb-image0, libxcb-render-util0,
# libxcb-shape0, libxcb-xinerama0, libdbus-1-3, libfontconfig1, libgl1).
set -euo pipefail
[ $# -ge 2 ] || { sed -n '3s/^#  *//p' "$0" >&2; exit 2; }
bundle=$(realpath "$1") out=$2 page=${3-}
work=$(mktemp -d)
trap 'kill $(jobs -p) 2>/dev/null || true; wait; rm -rf "$work"' EXIT

mkfifo "$work/number"
Xvfb -displayfd 7 -screen 0 1280x800x24 -nolisten tcp 7> "$work/number" 2> /dev/null &
read -r number < "$work/number"
export DISPLAY=:$number

colours() { import -window root "$work/now.png" && identify -format %k "$work/now.png"; }

start() { # starts it once, and says how many milliseconds the window took
  local began=$(date +%s%N)
  env -i PATH= DISPLAY="$DISPLAY" HOME="$work" XDG_RUNTIME_DIR="$work" LC_ALL=C.UTF-8 \
    IDKEY_DATA="$work/data" QT_QPA_PLATFORM=xcb "$bundle/idkey" > "$work/said" 2>&1 &
  program=$!
  for _ in $(seq 300); do # the window stands once the screen is no longer of one colour
    kill -0 "$program" 2> /dev/null || { cat "$work/said" >&2; exit 1; }
    if [ "$(colours)" -gt 20 ]; then
      took=$(( ($(date +%s%N) - began) / 1000000 ))
      return
    fi
    sleep 0.05
  done
  echo "no window came" >&2
  cat "$work/said" >&2
  exit 1
}

cold= # whether the machine let us forget the files it had read
sync && echo 3 2> /dev/null > /proc/sys/vm/drop_caches && cold=yes || true
start
first=$took
sleep 5 # records, keys and drawings come behind the frame
import -window root "$out"
kill "$program"
wait "$program" || true
for _ in 1 2 3; do # the files are in the memory of the machine now
  start
  again=$(( ${again:-$took} < took ? ${again:-$took} : took ))
  sleep 6 # a start that is cut short counts as one that failed
  kill "$program"
  wait "$program" || true
done
if [ -s "$work/data/log/idkey.log" ]; then cat "$work/data/log/idkey.log" >&2; exit 1; fi

size=$(du -sm "$bundle" | cut -f1)
seconds() { printf '%d.%d s' $(($1 / 1000)) $(($1 % 1000 / 100)); }
told="The bundle takes $size MB; its window stands after $(seconds "$again")"
[ -z "$cold" ] || told="$told, from a cold disk after $(seconds "$first")"
told="$told ($(nproc) cores, measured by \`.packaging/try_bundle.sh\`)."
[ -z "$page" ] || sed -i "s|^The bundle takes .*|$told|" "$page"
echo "$told"
