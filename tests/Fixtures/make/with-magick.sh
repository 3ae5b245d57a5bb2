#!/bin/bash
# Fixtures written by ImageMagick (its own permissive licence). The first image becomes the merged picture.
set -eu
cd "$(dirname "$0")/.."
maker="ImageMagick $(convert -version | sed -n '1s/.*ImageMagick \([0-9.-]*\).*/\1/p')"
backdrop=('(' -size 32x32 xc:'#777777' -set label Backdrop ')')
head=('(' -size 14x12 xc:none -fill '#f2bf99' -draw 'ellipse 7,6 6.5,5.5 0,360' -set page +9+2 -set label Head ')')
arm=('(' -size 5x10 xc:'#e69973' -set page +21+12 -set label 'Arm L' ')')
layers=("${backdrop[@]}" "${backdrop[@]}" "${head[@]}" "${arm[@]}")

written() { # file, feature, what is special, arguments of convert
    local file=$1 feature=$2 special=$3
    shift 3
    convert "$@" "$file"
    printf '%s\t%s\t%s\t%s\n' "${file#psb:}" "$feature" "$maker" "$special" >> "$FIXTURE_NOTES"
}

colour=(-type TrueColorAlpha -depth 8 -strip)
written magick-raw.psd 'layers, raw channels' '' "${layers[@]}" "${colour[@]}" -endian MSB -compress None
written magick-packbits.psd 'layers, PackBits' '' "${layers[@]}" "${colour[@]}" -endian MSB -compress RLE
written magick-reversed-blend-key.psd 'blend mode keys written backwards' 'mron: what this writer leaves when no byte order is given' "${layers[@]}" "${colour[@]}" -compress RLE
written magick-packbits.psb 'PSB with layers' '' "${layers[@]}" "${colour[@]}" -endian MSB -compress RLE
written magick-flat-16.psd 'flat, 16 bit' '' "${backdrop[@]}" -depth 16 -strip -compress None
written magick-cmyk.psd 'flat, CMYK' '' "${backdrop[@]}" -colorspace CMYK -strip -compress RLE
