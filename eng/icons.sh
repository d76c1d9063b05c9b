#!/usr/bin/env bash
# Draws the icons of the installed app from wwwroot/icon.svg by Chromium. Run it when the icon changes, and commit what it makes.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../src/Tickover.Web/wwwroot"
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir -p icons

draw() { # name, size, the part of the icon a mask is sure to leave (W3C manifest: a circle of 40 % of the width), in percent
    # A masked icon fills its square and keeps the picture within the safe circle.
    local ground="transparent" part=$3
    [ "$part" = 100 ] || ground="#2a2e9a"
    {
        printf '<!DOCTYPE html><style>html,body{margin:0;background:%s}svg{position:absolute;width:%s%%;left:calc((100%% - %s%%)/2);top:calc((100%% - %s%%)/2)}</style>' \
            "$ground" "$part" "$part" "$part"
        cat icon.svg
    } >"$work/$1.html"
    timeout 60 chromium --headless --no-sandbox --disable-gpu --no-first-run --disable-background-networking --user-data-dir="$work/profile" \
        --default-background-color=00000000 --force-device-scale-factor=1 --window-size="$2,$2" --screenshot="icons/$1.png" "file://$work/$1.html" 2>/dev/null
}

for size in 192 512; do
    draw "icon-$size" "$size" 100
    draw "maskable-$size" "$size" 76
done
