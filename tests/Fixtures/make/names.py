"""Layer names: Unicode and legacy, long, odd, doubled."""
import struct
from catalogue import save
from figure import drawing, layer
from psd_bytes import block, luni, unicode_text


def named(*layers):
    return drawing((), list(layers))


def part(name, part="Head", **more):
    return layer(part, name=name, **more)


save("names-japanese.psd", "Japanese names, legacy name in Shift-JIS", "頭, 左腕, 右腕, 目 左; one with a half-width kana",
     named(*(part(n, p, legacy=n.encode("shift_jis")) for n, p in
             (("頭", "Head"), ("左腕", "Arm L"), ("右腕", "Arm R"), ("目 左", "Eye L"), ("ﾏｳｽ", "Eye R")))))
save("names-japanese-question-marks.psd", "Japanese names, legacy name unable to say them", "legacy names are ?? and ??",
     named(part("左腕", "Arm L", legacy=b"??"), part("右腕", "Arm R", legacy=b"??")))
save("names-accents.psd", "accented names, legacy name in a one-byte code page",
     "mac_roman in the first two, cp1252 in the third",
     named(part("Étoile à gauche", legacy="Étoile à gauche".encode("mac_roman")),
           part("Größe", "Arm L", legacy="Größe".encode("mac_roman")), part("Größe", "Arm R", legacy="Größe".encode("cp1252"))))
save("names-emoji.psd", "names outside the basic plane", "surrogate pairs, a joined sequence, a combining accent",
     named(part("😀 Head"), part("👩‍🎨 Arm L", "Arm L"), part("e\u0301clair", "Arm R")))
save("names-lone-surrogate.psd", "name with half a surrogate pair", "luni holds D83D alone: keep it through a round trip",
     named(part("Head", legacy=b"Head", blocks=[block(b"luni", struct.pack(">IHHH", 3, 0x41, 0xD83D, 0x42), align=4)])))
save("names-255.psd", "names of 255 units", "legacy name of 255 bytes: the most its length byte can say",
     named(part("Arm L " + "x" * 249), part("腕" * 255, "Arm L", legacy=b"?" * 255)))
save("names-legacy-cut-at-31.psd", "legacy name cut at 31 bytes", "luni says all of it, as in old files",
     named(part("Upper arm with the long sleeve L", "Arm L", legacy=b"Upper arm with the long sleeve ")))
save("names-without-luni.psd", "no luni block", "the legacy name is all there is: ASCII, Shift-JIS, mac_roman",
     named(part("Head", blocks=[]), part("左腕", "Arm L", legacy="左腕".encode("shift_jis"), blocks=[]),
           part("Œil", "Eye L", legacy="Œil".encode("mac_roman"), blocks=[])))
odd = struct.pack(">I", 5) + "Arm L".encode("utf-16-be") + b"\0"
save("names-luni-odd-length.psd", "luni block of odd length", "15 bytes: count, five units, one byte more; the next block follows at once",
     named(part("Arm L", "Arm L", blocks=[block(b"luni", odd, align=1), block(b"lyid", struct.pack(">I", 4))])))
save("names-luni-unpadded.psd", "luni block padded to 2", "14 bytes, not a multiple of 4",
     named(part("Arm L", "Arm L", blocks=[block(b"luni", unicode_text("Arm L")), block(b"lyid", struct.pack(">I", 4))])))
save("names-luni-trailing-nul.psd", "luni with a trailing NUL", "counted in the first layer; in the second it is padding only",
     named(part("Arm L", "Arm L", blocks=[luni("Arm L", nul=True)]),
           part("Arm R", "Arm R", blocks=[block(b"luni", unicode_text("Arm R") + b"\0\0", align=4)])))
save("names-slash.psd", "names with slashes and backslashes", "Eye/L, Arm\\L, \\/ and one that ends in a slash",
     named(part("Eye/L", "Eye L"), part("Arm\\L", "Arm L"), part("\\/"), part("Head/")))
save("names-duplicate.psd", "siblings of one name", "three times Eye L, twice Head",
     named(part("Head"), part("Eye L", "Eye L"), part("Eye L", "Eye R"), part("Head"), part("Eye L", "Eye L")))
save("names-empty-and-spaces.psd", "empty and blank names", "an empty name, one blank, blanks at both ends, a line break, a wildcard",
     named(part(""), part(" "), part(" Arm L ", "Arm L"), part("Head\nback"), part("Arm [L]*", "Arm L")))
save("names-legacy-differs.psd", "legacy name that says something else", "luni says Arm L, the legacy name Layer 37",
     named(part("Arm L", "Arm L", legacy=b"Layer 37")))
save("names-legacy-lengths.psd", "legacy names of 0 to 8 bytes", "every padding of the Pascal name",
     named(*(part("12345678"[:n]) for n in range(9))))
