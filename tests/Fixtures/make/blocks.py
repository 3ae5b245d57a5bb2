"""Additional-information blocks of layers, and global ones."""
import struct
from catalogue import save
from descriptors import descriptor, number
from dividers import group
from figure import drawing, layer
from psd_bytes import block, luni, u32

BLEND_MODES = [b"norm", b"diss", b"dark", b"mul ", b"idiv", b"lbrn", b"dkCl", b"lite", b"scrn", b"div ", b"lddg", b"lgCl",
               b"over", b"sLit", b"hLit", b"vLit", b"lLit", b"pLit", b"hMix", b"diff", b"smud", b"fsub", b"fdiv",
               b"hue ", b"sat ", b"colr", b"lum "]


def with_blocks(*lists, parts=("Head", "Arm L", "Arm R", "Eye L", "Eye R"), **more):
    """One layer for each list of blocks."""
    layers = [layer(parts[i % 5], blocks=[luni(parts[i % 5]), *blocks]) for i, blocks in enumerate(lists)]
    return drawing((), layers, **more)


save("blend-modes.psd", "every blend mode a record stores", "27 layers, and a group with pass",
     drawing((), [layer("Eye L", name=f"Mode {key.decode().strip()}", blend=key) for key in BLEND_MODES]
             + group("Mode pass", layer("Eye R"))))
save("blend-mode-unknown.psd", "unknown blend mode key", "zzbm: keep it, show it as normal",
     drawing((), [layer("Head", blend=b"zzbm")]))
save("opacity-and-fill.psd", "opacity and fill opacity", "0, 1, 128, 254, 255 in the record; iOpa 255, 128, 0 in three",
     drawing((), [layer("Head", name=f"Opacity {o}", opacity=o, blocks=[luni(f"Opacity {o}"), *fill]) for o, fill in
                  ((0, []), (1, []), (128, [block(b"iOpa", b"\xff\0\0\0")]), (254, [block(b"iOpa", b"\x80\0\0\0")]),
                   (255, [block(b"iOpa", b"\0\0\0\0")]))]))
save("marks.psd", "lclr marks 0 to 7", "colour index and six zero bytes",
     with_blocks(*([block(b"lclr", struct.pack(">H6x", n))] for n in range(8))))
save("marks-above-7.psd", "lclr marks above 7", "8, 11 and 65535",
     with_blocks(*([block(b"lclr", struct.pack(">H6x", n))] for n in (8, 11, 65535))))
save("locks.psd", "lspf locks", "transparency 1, pixels 2, position 4, artboard 8, all four, 0x80000000, 0",
     with_blocks(*([block(b"lspf", u32(n))] for n in (1, 2, 4, 8, 15, 0x80000000, 0))))
save("hidden-layers.psd", "hidden layers and record flags",
     "flags 8, 10 (hidden), 9 (transparency protected), 24 (no effect on the picture), 0 and 2 of old files",
     drawing((), [layer(p, flags=f) for p, f in zip(("Backdrop", "Head", "Body", "Arm L", "Eye L", "Eye R"), (8, 10, 9, 24, 0, 2))]))
save("layer-ids.psd", "lyid, with a duplicate", "1, 7, 7, 2000000000 and a layer without",
     with_blocks(*([block(b"lyid", u32(n))] for n in (1, 7, 7, 2000000000)), []))
save("blending-options.psd", "clbl, infx, knko, tsly, lmgm, vmgm", "one byte and three of padding each; all off, then all on",
     with_blocks(*([block(k, bytes([v, 0, 0, 0])) for k in (b"clbl", b"infx", b"knko", b"tsly", b"lmgm", b"vmgm")] for v in (0, 1))))
save("blocks-duplicate-keys.psd", "one key twice in a layer", "two lclr and two unknown blocks of one key with different data",
     with_blocks([block(b"lclr", struct.pack(">H6x", 1)), block(b"zzAa", b"first!"), block(b"zzAa", b"second"),
                  block(b"lclr", struct.pack(">H6x", 4))]))
save("blocks-unknown-keys.psd", "unknown block keys", "invented keys, one with bytes beyond ASCII; before and behind luni",
     drawing((), [layer("Head", blocks=[block(b"zzBe", b"before"), luni("Head"), block(b"z\xa5\x00z", bytes(range(256)))])]))
save("blocks-zero-length.psd", "blocks of 0 bytes", "between two others and at the end",
     with_blocks([block(b"zzNo", b""), block(b"lyid", u32(3)), block(b"zzNo", b"")]))
save("blocks-odd-length.psd", "blocks of odd length", "3 and 5 bytes with no padding between blocks",
     with_blocks([block(b"zzOd", b"abc", align=1), block(b"zzOd", b"defgh", align=1), block(b"lyid", u32(3))]))
save("extra-data-odd.psd", "extra data of odd length", "a block of 1 byte at its end, and no padding before the next record",
     drawing((), [layer("Head", blocks=[luni("Head"), block(b"zzOd", b"x", align=1)], extra_align=1), layer("Eye L")]))

colour = b"Objc" + descriptor(b"RGBC", Rd=number(51.0), Grn=number(102.0), Bl=number(178.5))
save("fill-solid.psd", "solid colour fill layer", "SoCo with a hand-built descriptor",
     with_blocks([], [block(b"SoCo", u32(16) + descriptor(b"null", Clr=colour), align=4)]))

levels = struct.pack(">H", 2) + b"".join(struct.pack(">5H", 0, 255, 0, 255, 100) for _ in range(29))
save("adjustment-levels.psd", "levels adjustment", "levl: version 2, 29 records", with_blocks([], [block(b"levl", levels, align=4)]))

hue = struct.pack(">HBx3h3h", 2, 0, 0, 25, 0, 10, -5, 0)
hue += b"".join(struct.pack(">7h", 315 + n if n == 0 else n * 60 - 45, n * 60 - 15, n * 60 + 15, n * 60 + 45, 0, 0, 0) for n in range(6))
save("adjustment-hue.psd", "hue and saturation adjustment", "hue2: version 2, six ranges", with_blocks([], [block(b"hue2", hue, align=4)]))

fill_effect = struct.pack(">I", 2) + b"8BIMnorm" + struct.pack(">H4H", 0, 65535, 0, 0, 0) + b"\xc0\x01" + struct.pack(">H4H", 0, 65535, 0, 0, 0)
effects = struct.pack(">HH", 0, 2) + b"8BIMcmnS" + struct.pack(">IIBH", 7, 0, 1, 0) + b"8BIMsofi" + u32(len(fill_effect)) + fill_effect
save("effects-lrfx.psd", "old effects block lrFX", "common state and one solid fill", with_blocks([block(b"lrFX", effects, align=4)]))

overlay = struct.pack(">H4HHB3x", 0, 65535, 0, 0, 0, 50, 128)
save("global-mask-info.psd", "global layer mask info", "overlay colour, opacity 50, kind 128; 16 bytes",
     drawing(global_mask=overlay))
save("global-unknown-blocks.psd", "unknown global blocks behind the layers", "invented keys, one twice, one of 0 bytes",
     drawing(global_blocks=block(b"zzGl", b"firstone", align=4) + block(b"zzGl", b"", align=4) + block(b"zzGl", bytes(12), align=4)))
unpadded = b"8BIMzzOd" + u32(5) + b"fifth" + bytes(3) + b"8BIMzzEn" + u32(4) + b"last"
save("global-block-padding.psd", "global block of 5 bytes", "three bytes of padding behind it that its length does not count",
     drawing(global_blocks=unpadded))
save("global-trailing-zeros.psd", "zeros behind the last global block", "two bytes that belong to the section and to no block",
     drawing(global_blocks=block(b"zzGl", b"data", align=4) + b"\0\0"))
save("global-mtrn.psd", "a global Mtrn block of 0 bytes", "says that the merged transparency is meant, beside the negative count",
     drawing(("Head",), merged_alpha=True, global_blocks=block(b"Mtrn", b"")))
