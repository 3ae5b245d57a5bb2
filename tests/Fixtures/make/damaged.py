"""Damaged files, one error each."""
import struct
import zlib
from catalogue import save
from descriptors import descriptor, number
from dividers import divider, end
from figure import MODES, drawing, layer, merge
from psd_bytes import (PACKBITS, ZIP, ZIP_PREDICTION, block, document, header, layer_info, layer_section, luni,
                       merged, resource, section, size_field)

WHITE = merge((), 32, 32)
SOUND = drawing(("Head", "Eye L"), compression=PACKBITS, resources=[resource(1005, struct.pack(">IHHIHH", 300 << 16, 1, 1, 300 << 16, 1, 1))])
RECORDS_AT = 26 + 4 + 4 + 28 + 4 + 4  # header, colour data, one resource, two lengths: where the layer count stands


def damaged(name, when, where, kind, wrong, data):
    save(f"damaged/{name}", f"{when} / {where} / {kind}", wrong, data)


def with_layers(*layers, **more):
    return document(32, 32, list(layers), WHITE, **more)


def with_info(info, tail=b"", **more):
    return header(32, 32, 3, 8, MODES["rgb"]) + bytes(8) + layer_section(info, **more) + tail + merged(WHITE)


def one_channel(part, number, data, declared=None, **more):
    """The part with the stored bytes of one channel replaced."""
    changed = layer(part, **more)
    changed.channels = [(n, data if n == number else stored) for n, stored in changed.channels]
    changed.declared = {number: declared} if declared is not None else {}
    return changed


def moved(part, rect, **more):
    changed = layer(part, **more)
    changed.rect = rect
    return changed


# Not a file of this kind at all.
damaged("not-layered.psd", "tree", "header", "NotALayeredFile", "text in a file with the right extension", b"This is a note about the left arm, and no picture.\n")
damaged("empty.psd", "tree", "header", "NotALayeredFile", "0 bytes", b"")
damaged("wrong-version.psd", "tree", "header", "NotALayeredFile", "version 3", header(32, 32, 3, 8, 3, version=3) + SOUND[26:])
damaged("header-reserved.psd", "never", "header", "warning at most", "the six reserved bytes are not zero: read it all the same", SOUND[:6] + b"fixtur" + SOUND[12:])
damaged("zero-channels.psd", "tree", "header", "Damaged", "0 channels", header(32, 32, 0, 8, 3) + SOUND[26:])
damaged("channels-57.psd", "tree", "header", "Damaged", "57 channels, the format has 56", header(32, 32, 57, 8, 3) + SOUND[26:])
damaged("depth-7.psd", "tree", "header", "NotSupported", "depth 7", header(32, 32, 3, 7, 3) + SOUND[26:])
damaged("mode-12.psd", "tree", "header", "NotSupported", "colour mode 12", header(32, 32, 3, 8, 12) + SOUND[26:])
damaged("zero-size.psd", "tree", "header", "Damaged", "width 0", header(0, 32, 3, 8, 3) + SOUND[26:])
damaged("size-beyond-psd.psd", "tree", "header", "Damaged", "30,001 px wide: more than PSD has", header(30001, 32, 3, 8, 3) + SOUND[26:])
damaged("size-beyond-psb.psb", "tree", "header", "Damaged", "300,001 px high: more than PSB has",
        header(32, 300001, 3, 8, 3, psb=True) + bytes(8) + size_field(0, True) + b"\0\0")
damaged("size-negative.psd", "tree", "header", "Damaged", "height 0x80000000", header(32, 0x80000000, 3, 8, 3) + SOUND[26:])

# Ended too early.
records = layer_info([layer(p, compression=PACKBITS) for p in ("Head", "Eye L")])
channels_at = RECORDS_AT + 2 + sum(len(layer(p, compression=PACKBITS).record(False)) for p in ("Head", "Eye L"))
damaged("truncated-header.psd", "tree", "header", "Truncated", "ends in the 20th of 26 bytes", SOUND[:20])
damaged("truncated-colour-data.psd", "tree", "colour mode data", "Truncated", "768 bytes declared, 100 there",
        header(32, 32, 1, 8, MODES["indexed"]) + struct.pack(">I", 768) + bytes(100))
damaged("truncated-resources.psd", "tree", "image resources", "Truncated", "ends within the data of a resource", SOUND[:26 + 4 + 4 + 20])
damaged("truncated-layer-records.psd", "tree", "layer records", "Truncated", "ends within the second record", SOUND[:channels_at - 30])
damaged("truncated-channel-data.psd", "tree or pixels", "channel data", "Truncated", "ends within the first layer's channels", SOUND[:channels_at + 40])
damaged("truncated-merged.psd", "merged", "merged picture", "Truncated", "half of the merged picture is missing", SOUND[:-1500])
damaged("no-merged.psd", "merged", "merged picture", "Truncated", "ends where the merged picture begins", SOUND[:-(2 + 3 * 1024)])

# Lengths that say too much.
whole = header(32, 32, 3, 8, MODES["rgb"])
damaged("resources-length.psd", "tree", "image resources", "Truncated", "section of 2,147,483,647 bytes declared", whole + bytes(4) + struct.pack(">I", 0x7FFFFFFF) + SOUND[34:])
damaged("resource-length.psd", "tree", "image resources", "Damaged", "a resource longer than its section",
        whole + bytes(4) + section(b"8BIM" + struct.pack(">HHI", 1005, 0, 5000) + bytes(16)) + bytes(4) + merged(WHITE))
damaged("resource-length-negative.psd", "tree", "image resources", "Damaged", "a resource of 0xFFFFFFFF bytes",
        whole + bytes(4) + section(b"8BIM" + struct.pack(">HHI", 1005, 0, 0xFFFFFFFF) + bytes(16)) + bytes(4) + merged(WHITE))
damaged("section-length.psd", "tree", "layer section", "Truncated", "layer and mask section declared 100,000,000 bytes long",
        whole + bytes(8) + struct.pack(">II", 100_000_000, len(records)) + records + bytes(4) + merged(WHITE))
damaged("section-length.psb", "tree", "layer section", "Damaged", "8-byte length 0xFFFFFFFFFFFFFFF0, negative as a signed number",
        header(32, 32, 3, 8, 3, psb=True) + bytes(8) + struct.pack(">Q", 0xFFFFFFFFFFFFFFF0) + records + merged(WHITE))
damaged("layer-info-length.psd", "tree", "layer section", "Damaged", "layer info declared longer than the section around it",
        whole + bytes(8) + section(struct.pack(">I", len(records) + 5000) + records + bytes(4)) + merged(WHITE))
damaged("layer-count.psd", "tree", "layer records", "Damaged", "65,535 layers (as a signed number: -1) in a section with room for none", with_info(struct.pack(">H", 65535)))
damaged("layer-count-32767.psd", "tree", "layer records", "LimitExceeded or Damaged", "32,767 layers declared, one there", with_info(layer_info([layer("Eye L")], count=32767)))
damaged("layer-count-minimum.psd", "tree", "layer records", "LimitExceeded or Damaged", "count -32,768, which has no positive counterpart", with_info(layer_info([layer("Eye L")], count=-32768)))
damaged("record-channel-count.psd", "tree", "layer records", "Damaged", "a record with 65,535 channels", with_info(struct.pack(">h4iH", 1, 6, 17, 9, 20, 65535) + bytes(200)))
record = layer_info([layer("Eye L")])
extra_at = 2 + 18 + 4 * 6 + 12
damaged("record-extra-length.psd", "tree", "layer records", "Damaged", "extra data of a record longer than the section",
        with_info(record[:extra_at] + struct.pack(">I", 90_000) + record[extra_at + 4:]))
damaged("record-signature.psd", "tree", "layer records", "Damaged", "8BIX in place of the blend mode's signature", with_info(record.replace(b"8BIMnorm", b"8BIXnorm")))
damaged("record-name-length.psd", "tree", "layer records", "Damaged", "legacy name of 250 bytes in extra data of 20",
        with_info(record[:extra_at] + struct.pack(">III", 20, 0, 0) + b"\xfaEye L" + bytes(6) + bytes(200)))
damaged("record-mask-length.psd", "tree", "layer records", "Damaged", "mask data of 5,000 bytes in extra data of 20",
        with_info(record[:extra_at] + struct.pack(">III", 20, 5000, 0) + bytes(12) + bytes(200)))
damaged("mask-length-5.psd", "tree", "layer records", "Damaged or a warning", "mask data of 5 bytes: not even a rectangle", with_layers(layer("Head", mask=bytes(5))))
damaged("block-length.psd", "tree", "layer blocks", "Damaged", "a block longer than its layer's extra data",
        with_layers(layer("Eye L", blocks=[luni("Eye L"), b"8BIMzzLo" + struct.pack(">I", 60_000) + b"tiny"])))
damaged("block-signature.psd", "tree", "layer blocks", "Damaged or a warning", "rubbish where a block's signature should stand", with_layers(layer("Eye L", blocks=[luni("Eye L"), b"RUBBISH and more of it."])))
damaged("global-block-length.psd", "tree", "global blocks", "Damaged", "a global block longer than the section",
        with_layers(layer("Eye L"), global_blocks=b"8BIMzzGl" + struct.pack(">I", 60_000) + b"tiny"))
damaged("name-count.psd", "tree", "layer blocks", "Damaged or a warning", "luni says 0x40000000 units in a block of 12 bytes",
        with_layers(layer("Eye L", blocks=[block(b"luni", struct.pack(">I", 0x40000000) + "Eye ".encode("utf-16-be"))])))
damaged("section-divider-short.psd", "tree", "layer blocks", "Damaged or a warning", "lsct of 2 bytes", with_layers(layer("Eye L", blocks=[luni("Eye L"), block(b"lsct", b"\0\1")])))
damaged("section-divider-kind.psd", "never", "layer blocks", "warning at most", "lsct of kind 9: treat it as an ordinary layer", with_layers(layer("Eye L", blocks=[luni("Eye L"), block(b"lsct", struct.pack(">I", 9))])))
damaged("descriptor.psd", "never", "layer blocks", "Damaged where the descriptor is read", "SoCo whose descriptor announces 0x7FFFFFFF items and an odd type",
        with_layers(layer("Eye L", blocks=[luni("Eye L"), block(b"SoCo", struct.pack(">I", 16) + descriptor(b"null")[:-4] + struct.pack(">II", 0x7FFFFFFF, 0) + b"Clr zzzz")])))
nested = number(1.0)
for _ in range(200):
    nested = b"Objc" + descriptor(b"null", Deep=nested)
damaged("descriptor-deep.psd", "never", "layer blocks", "LimitExceeded where the descriptor is read", "200 descriptors inside each other",
        with_layers(layer("Eye L", blocks=[luni("Eye L"), block(b"SoCo", struct.pack(">I", 16) + nested[4:])])))

# Rectangles.
damaged("rectangle-negative.psd", "tree or pixels", "layer records", "Damaged", "right < left and bottom < top", with_layers(moved("Eye L", (9, 20, 6, 17))))
damaged("rectangle-overflow.psd", "tree or pixels", "layer records", "Damaged or LimitExceeded", "left = -2^31, right = 2^31 - 1: the width does not fit 32 bits",
        with_layers(moved("Eye L", (6, -0x80000000, 9, 0x7FFFFFFF))))
damaged("rectangle-huge.psd", "pixels", "layer records", "Damaged or LimitExceeded", "2,000,000 x 2,000,000 px with channels of 11 bytes", with_layers(moved("Eye L", (0, 0, 2_000_000, 2_000_000))))
huge = struct.pack(">4iBBxx", -0x80000000, -0x80000000, 0x7FFFFFFF, 0x7FFFFFFF, 0, 0)
damaged("mask-rectangle-overflow.psd", "tree or pixels", "layer records", "Damaged or LimitExceeded", "mask from -2^31 to 2^31 - 1",
        with_layers(layer("Head", mask=huge, more_channels=[(-2, b"\0\0" + bytes(8))])))
damaged("mask-rectangle-negative.psd", "tree or pixels", "layer records", "Damaged", "mask whose bottom is above its top",
        with_layers(layer("Head", mask=struct.pack(">4iBBxx", 12, 11, 4, 21, 0, 0), more_channels=[(-2, b"\0\0" + bytes(8))])))
damaged("mask-without-data.psd", "never", "layer records", "Damaged or a warning", "channel -2 without mask data", with_layers(layer("Head", more_channels=[(-2, b"\0\0" + bytes(80))])))

# Channel data.
damaged("channel-length.psd", "tree or pixels", "channel data", "Damaged", "a channel declared longer than the section", with_layers(one_channel("Eye L", 2, b"\0\0" + bytes(9), declared=70_000)))
damaged("channel-length-negative.psd", "tree or pixels", "channel data", "Damaged", "a channel of 0xFFFFFFFE bytes", with_layers(one_channel("Eye L", 0, b"\0\0" + bytes(9), declared=0xFFFFFFFE)))
damaged("channel-length-1.psd", "pixels", "channel data", "Damaged", "a channel of 1 byte: half a compression word", with_layers(one_channel("Eye L", 0, b"\0")))
damaged("channel-short-raw.psd", "pixels", "channel data", "Damaged", "raw, 4 of 9 bytes there", with_layers(one_channel("Eye L", 0, b"\0\0" + bytes(4))))
damaged("channel-compression-9.psd", "pixels", "channel data", "NotSupported", "compression 9", with_layers(one_channel("Eye L", 0, struct.pack(">H", 9) + bytes(9))))
damaged("rle-counts.psd", "pixels", "channel data", "Damaged", "PackBits row counts of 65,535 in a channel of 20 bytes", with_layers(one_channel("Eye L", 0, struct.pack(">4H", PACKBITS, *[65535] * 3) + bytes(12))))
damaged("rle-counts-missing.psd", "pixels", "channel data", "Damaged", "the channel ends within the row counts", with_layers(one_channel("Eye L", 0, struct.pack(">2H", PACKBITS, 2))))
damaged("rle-row-long.psd", "pixels", "channel data", "Damaged", "a packed row unpacks to 128 bytes where 3 are expected", with_layers(one_channel("Eye L", 0, struct.pack(">4H", PACKBITS, 2, 2, 2) + b"\x81\x40" * 3)))
damaged("rle-row-short.psd", "pixels", "channel data", "Damaged or a warning", "a packed row unpacks to 2 bytes where 3 are expected", with_layers(one_channel("Eye L", 0, struct.pack(">4H", PACKBITS, 2, 2, 2) + b"\xff\x40" * 3)))
damaged("rle-literal-cut.psd", "pixels", "channel data", "Damaged", "a literal of 100 bytes is announced, the row has one", with_layers(one_channel("Eye L", 0, struct.pack(">4H", PACKBITS, 2, 2, 2) + b"\x63\x40" * 3)))
bomb = zlib.compress(bytes(20_000_000), 9)
for name, compression in (("zip-bomb", ZIP), ("zip-bomb-prediction", ZIP_PREDICTION)):
    damaged(f"{name}.psd", "pixels", "channel data", "Damaged", f"compression {compression}: 9 bytes expected, 20,000,000 inflate; must stop at the ninth or the tenth",
            with_layers(one_channel("Eye L", 0, struct.pack(">H", compression) + bomb)))
damaged("zip-short.psd", "pixels", "channel data", "Damaged", "inflates to 5 bytes where 9 are expected", with_layers(one_channel("Eye L", 0, struct.pack(">H", ZIP) + zlib.compress(bytes(5)))))
damaged("zip-cut.psd", "pixels", "channel data", "Damaged", "the stream ends in its middle", with_layers(one_channel("Backdrop", 0, struct.pack(">H", ZIP) + zlib.compress(bytes(range(256)) * 4)[:150])))
damaged("zip-garbage.psd", "pixels", "channel data", "Damaged", "no ZIP stream at all", with_layers(one_channel("Eye L", 0, struct.pack(">H", ZIP) + b"not zipped at all")))
damaged("zip-checksum.psd", "pixels", "channel data", "Damaged or a warning", "the checksum behind the stream is wrong", with_layers(one_channel("Eye L", 0, struct.pack(">H", ZIP) + zlib.compress(bytes(9))[:-4] + b"sum!")))
damaged("merged-rle-counts.psd", "tree", "merged picture", "Truncated", "row counts of 65,535", SOUND[:-(2 + 3 * 1024)] + struct.pack(">97H", PACKBITS, *[65535] * 96) + bytes(100))
damaged("merged-compression-9.psd", "merged", "merged picture", "NotSupported", "compression 9", SOUND[:-(2 + 3 * 1024)] + struct.pack(">H", 9) + bytes(100))
damaged("groups-120-deep.psd", "tree", "layer records", "LimitExceeded", "120 groups inside each other; the usual limit is 100",
        with_layers(*[end(channels=[]) for _ in range(120)], *[divider(1, f"Level {n}", channels=[]) for n in range(120, 0, -1)]))
