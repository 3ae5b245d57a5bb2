#!/bin/bash
# Makes every fixture again, asks the other readers to open them, and writes README.md.
# Needs: python3 with psd-tools, node, imagemagick, and ag-psd where NODE_PATH finds it.
set -eu
cd "$(dirname "$0")"
work=$(mktemp -d)
trap 'rm -r "$work"' EXIT
export FIXTURE_NOTES="$work/notes" PYTHONDONTWRITEBYTECODE=1
python=${PYTHON:-/usr/bin/python3}
for script in modes groups masks names blocks resources damaged with-psd-tools; do "$python" "$script.py"; done
node with-ag-psd.cjs
bash with-magick.sh
"$python" opens.py ../*.ps[db] > "$work/opens" 2> /dev/null
node opens.cjs ../*.ps[db] >> "$work/opens"
"$python" readme.py "$work/opens"
cp "$work/opens" "${OPENS_LOG:-/dev/null}"
