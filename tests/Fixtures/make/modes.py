"""Colour modes, depths, PSD and PSB, channel compression, sizes and paddings."""
import struct
from catalogue import save
from figure import MODES, coverage, drawing, layer, merge
from psd_bytes import PACKBITS, RAW, ZIP, ZIP_PREDICTION, block, document

save("rgb-8.psd", "RGB, 8 bit", "two layers; the plainest file here", drawing())
save("rgb-8-merged-alpha.psd", "merged picture with transparency",
     "layer count is negative; fourth merged plane; colours matted with white",
     drawing(("Head", "Eye L"), merged_alpha=True))
save("grey-8.psd", "grey, 8 bit", "", drawing(mode="grey"))
for mode in ("rgb", "grey"):
    for depth in (16, 32):
        save(f"{mode}-{depth}.psd", f"{mode.upper() if mode == 'rgb' else mode}, {depth} bit",
             f"layers in an Lr{depth} global block, standard section empty",
             drawing(mode=mode, depth=depth, inside=b"Lr%d" % depth, compression=ZIP_PREDICTION))
save("rgb-16-merged-alpha.psd", "RGB, 16 bit, merged transparency", "the negative count stands inside Lr16",
     drawing(("Head", "Eye R"), depth=16, inside=b"Lr16", merged_alpha=True, compression=PACKBITS))
save("cmyk-8.psd", "CMYK, 8 bit", "stored inverted; black plane all 255", drawing(mode="cmyk"))
save("lab-8.psd", "Lab, 8 bit", "", drawing(mode="lab"))

grey = merge(("Backdrop", "Head", "Eye L", "Eye R"), mode="grey")[0]
levels = sorted({value for row in grey for value in row})
palette = bytes(levels) + bytes(256 - len(levels))
save("indexed.psd", "indexed colour", "palette of 768 bytes, plane after plane; flat",
     document(32, 32, [], [[bytes(levels.index(v) for v in row) for row in grey]], mode=MODES["indexed"],
              colour_data=palette * 3, merged_compression=PACKBITS))
bits = [int("".join("1" if v > 0.5 else "0" for v in row).ljust(24, "0"), 2).to_bytes(3, "big")
        for row in coverage((0, 0, 20, 20), True)]
save("bitmap-1.psd", "bitmap, 1 bit", "20 px wide: a dark disc (1 is black), rows padded to whole bytes; flat",
     document(20, 20, [], [bits], mode=MODES["bitmap"], depth=1))
save("duotone.psd", "duotone header", "the colour data is invented and opaque: keep it, show the picture as grey",
     drawing(mode="duotone", colour_data=bytes(range(64)) * 8))
save("multichannel.psd", "multichannel", "three planes without a meaning as colour; flat",
     drawing((), [], shown=("Head",), mode="multichannel"))

save("psb-8.psb", "PSB, 8 bit", "8-byte section and channel lengths", drawing(psb=True))
save("psb-packbits.psb", "PSB with PackBits", "4-byte row counts, in the layers and in the merged picture",
     drawing(psb=True, compression=PACKBITS, merged_compression=PACKBITS))
save("psb-16.psb", "PSB, 16 bit", "Lr16 with an 8-byte length under signature 8BIM",
     drawing(psb=True, depth=16, inside=b"Lr16", compression=ZIP))
save("psb-16-8b64.psb", "PSB, 16 bit, Lr16 under signature 8B64", "as psb-16.psb but for the signature",
     drawing(psb=True, depth=16, inside=b"Lr16", signature=b"8B64", compression=ZIP))
save("rgb-16-blocks-around.psd", "global blocks before and behind Lr16", "Patt of 0 bytes, Lr16, an invented block",
     drawing(depth=16, inside=b"Lr16", before=block(b"Patt", b""), global_blocks=block(b"zzGl", b"behind", align=4)))
long_blocks = [layer("Head", psb=True)]
long_blocks[0].blocks = [block(b"luni", struct.pack(">I", 4) + "Head".encode("utf-16-be"), align=4),
                         block(b"zzLo", b"invented long", signature=b"8B64"),
                         block(b"FMsk", bytes(12), psb=True)]
save("psb-8b64.psb", "PSB with 8B64 signatures",
     "8-byte lengths: by signature (zzLo in the layer, zzGl global) and by key (FMsk under 8BIM)",
     drawing(("Head",), long_blocks, psb=True, global_blocks=block(b"zzGl", b"invented long global", signature=b"8B64", align=4)))

for name, compression in (("raw", RAW), ("packbits", PACKBITS), ("zip", ZIP)):
    save(f"channels-{name}.psd", f"channel compression {compression} ({name})", "",
         drawing(("Head", "Arm L"), compression=compression))
for depth in (8, 16, 32):
    save(f"channels-zip-prediction-{depth}.psd", f"channel compression 3 (ZIP with prediction), {depth} bit", "",
         drawing(("Head", "Arm L"), depth=depth, compression=ZIP_PREDICTION, inside=b"Lr%d" % depth if depth > 8 else None))
mixed = [layer("Arm R", compression=RAW), layer("Arm L", compression=PACKBITS), layer("Head", compression=ZIP)]
mixed[2].channels[0] = layer("Head", compression=ZIP_PREDICTION).channels[0]
save("channels-mixed.psd", "each layer compressed otherwise", "Head: transparency with prediction, colours without",
     drawing(("Arm R", "Arm L", "Head"), mixed))
noop = layer("Eye L")
noop.rect = (6, 17, 7, 20)
noop.channels = [(n, struct.pack(">HH", PACKBITS, 6) + b"\x80\xff" + bytes([v]) + b"\x80\x00" + bytes([v]))
                 for n, v in ((-1, 255), (0, 26), (1, 64), (2, 51))]
save("channels-packbits-no-op.psd", "PackBits header -128", "a no-op before and between the runs of a row",
     drawing(("Eye L",), [noop], shown=()))
save("merged-packbits.psd", "merged picture in PackBits", "the counts of all planes come first",
     drawing(merged_compression=PACKBITS))

save("flat-no-layers.psd", "no layers at all", "layer and mask section of length 0", drawing((), [], shown=("Backdrop", "Head")))
save("flat-empty-layer-info.psd", "no layers, section present", "layer info length 0 with a global block behind it",
     drawing((), [], shown=("Head",), global_blocks=block(b"Patt", b"", align=4)))
save("canvas-odd-width.psd", "17 px wide", "the centre line runs through a pixel column",
     drawing(("Eye L", "Eye R"), [layer("Eye R", offset=(-8, -4)), layer("Eye L", offset=(-8, -4))], size=(17, 9)))
save("canvas-1x1.psd", "1 x 1 px canvas", "the layer is larger than the canvas", drawing(("Head",), size=(1, 1)))
save("layers-outside.psd", "layers outside the canvas",
     "wholly outside on each side, one across the edge; negative coordinates",
     drawing((), [layer("Head", name="Head out left", offset=(-60, 0)), layer("Head", name="Head out right", offset=(60, 0)),
                  layer("Head", name="Head above", offset=(0, -60)), layer("Head", name="Head below", offset=(0, 60)),
                  layer("Head", name="Head across", offset=(-15, 0))]))
save("layers-larger.psd", "a layer larger than the canvas", "Backdrop is 32 x 32 from (-8, -8) on a 16 x 16 canvas",
     drawing((), [layer("Backdrop", offset=(-8, -8))], size=(16, 16)))
odd = [layer("Eye L", compression=ZIP)]
while sum(len(data) for _, data in odd[0].channels) % 2 == 0:
    odd[0].channels[-1] = (2, odd[0].channels[-1][1] + b"\0")
for align in (1, 2, 4):
    save(f"layer-info-padded-to-{align}.psd", f"layer info length padded to {align}",
         "the content has an odd length: one ZIP channel has a zero behind its stream" + (", and so has the section" if align == 1 else ""),
         drawing(("Eye L",), odd, align=align))
many = merge(("Eye L",), 8, 8) + [[bytes([n] * 8)] * 8 for n in range(53)]
save("channels-56.psd", "56 channels, the format's most", "three colours and 53 further planes; flat, PackBits",
     document(8, 8, [], many, merged_compression=PACKBITS))
many_ids = layer("Eye L")
many_ids.channels += [(n, many_ids.channels[1][1]) for n in range(3, 56)]
save("layer-channels-57.psd", "a layer with ids -1 to 55", "as many as 56 planes and transparency allow",
     document(8, 8, [many_ids], many, merged_compression=PACKBITS))
