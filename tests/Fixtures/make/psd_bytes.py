"""Assembles PSD and PSB files from their parts, byte by byte, with nothing but struct and zlib.

It writes what it is told, also what no sensible writer would: the fixtures need that. It shares no code
with LayerTools, so a mistake in one is not hidden by the same mistake in the other.
"""
import struct
import zlib
from dataclasses import dataclass, field

LONG_KEYS = {b"LMsk", b"Lr16", b"Lr32", b"Layr", b"Mt16", b"Mt32", b"Mtrn", b"Alph",
             b"FMsk", b"lnk2", b"lnkE", b"FEid", b"FXid", b"PxSD"}  # 8-byte lengths in PSB
RAW, PACKBITS, ZIP, ZIP_PREDICTION = range(4)


def pad(data, multiple):
    return data + bytes(-len(data) % multiple)


def u32(*values):
    return struct.pack(f">{len(values)}I", *values)


def size_field(value, psb):
    return struct.pack(">Q" if psb else ">I", value)


def block(key, data, *, signature=b"8BIM", align=2, psb=False):
    """One additional-information block. The padding counts as its data."""
    data = pad(data, align)
    long = signature == b"8B64" or (psb and key in LONG_KEYS)
    return signature + key + size_field(len(data), long) + data


def unicode_text(text, nul=False):
    units = (text + "\0" if nul else text).encode("utf-16-be")
    return struct.pack(">I", len(units) // 2) + units


def luni(text, nul=False):
    return block(b"luni", unicode_text(text, nul), align=4)


def pascal(data, multiple):
    return pad(bytes([len(data)]) + data, multiple)


def resource(number, data, name=b"", signature=b"8BIM"):
    return signature + struct.pack(">H", number) + pascal(name, 2) + struct.pack(">I", len(data)) + pad(data, 2)


@dataclass
class Layer:
    name: str
    rect: tuple = (0, 0, 0, 0)  # top, left, bottom, right
    channels: list = field(default_factory=list)  # (id, stored bytes with the compression word)
    blend: bytes = b"norm"
    opacity: int = 255
    clipping: int = 0
    flags: int = 8
    mask: bytes = b""
    ranges: bytes = b""
    legacy: bytes = None  # the Pascal name, when it is not simply the ASCII of the name
    blocks: list = None  # encoded blocks; None means a luni block with the name
    extra_align: int = 2
    shows: tuple = None  # what the merged picture shows of it; not stored
    declared: dict = field(default_factory=dict)  # channel id -> a length that is not the true one

    def record(self, psb):
        legacy = self.name.encode("ascii", "replace")[:255] if self.legacy is None else self.legacy
        blocks = [luni(self.name)] if self.blocks is None else self.blocks
        out = struct.pack(">4iH", *self.rect, len(self.channels))
        for number, data in self.channels:
            out += struct.pack(">h", number) + size_field(self.declared.get(number, len(data)), psb)
        extra = (struct.pack(">I", len(self.mask)) + self.mask + struct.pack(">I", len(self.ranges)) + self.ranges
                 + pascal(legacy, 4) + b"".join(blocks))
        extra = pad(extra, self.extra_align)
        return (out + b"8BIM" + self.blend + bytes([self.opacity, self.clipping, self.flags, 0])
                + struct.pack(">I", len(extra)) + extra)


def pack_bits(row):
    """Runs of three or more are packed; the rest is stored as literals."""
    out, literal, i = bytearray(), bytearray(), 0

    def flush():
        while literal:
            piece = literal[:128]
            out.append(len(piece) - 1)
            out.extend(piece)
            del literal[:128]

    while i < len(row):
        run = 1
        while run < 128 and i + run < len(row) and row[i + run] == row[i]:
            run += 1
        if run >= 3:
            flush()
            out.extend((257 - run, row[i]))
        else:
            literal.extend(row[i:i + run])
        i += run
    flush()
    return bytes(out)


def predict(row, depth):
    if depth == 32:  # bytes of equal weight together, then differences along the whole row
        row = b"".join(row[plane::4] for plane in range(4))
    if depth == 16:
        values = struct.unpack(f">{len(row) // 2}H", row)
        return struct.pack(f">{len(values)}H", *((v - p) & 0xFFFF for v, p in zip(values, (0,) + values)))
    return bytes((v - p) & 0xFF for v, p in zip(row, b"\0" + row))


def channel(rows, compression=RAW, depth=8, psb=False):
    """Stored bytes of one channel: the compression word and the data."""
    word = struct.pack(">H", compression)
    if compression == PACKBITS:
        packed = [pack_bits(row) for row in rows]
        return word + b"".join(struct.pack(">I" if psb else ">H", len(p)) for p in packed) + b"".join(packed)
    if compression == ZIP:
        return word + zlib.compress(b"".join(rows), 9)
    if compression == ZIP_PREDICTION:
        return word + zlib.compress(b"".join(predict(row, depth) for row in rows), 9)
    return word + b"".join(rows)


def merged(planes, compression=RAW, psb=False):
    """The merged picture: one compression word, and with PackBits the counts of all channels first."""
    if compression == RAW:
        return struct.pack(">H", RAW) + b"".join(row for plane in planes for row in plane)
    return channel([row for plane in planes for row in plane], compression, psb=psb)


def header(width, height, channels, depth, mode, psb=False, version=None):
    return b"8BPS" + struct.pack(">H6xHIIHH", version or (2 if psb else 1), channels, height, width, depth, mode)


def layer_info(layers, psb=False, merged_alpha=False, count=None):
    """What stands behind the layer info length, without padding."""
    count = len(layers) * (-1 if merged_alpha else 1) if count is None else count
    return (struct.pack(">h", count) + b"".join(layer.record(psb) for layer in layers)
            + b"".join(data for layer in layers for _, data in layer.channels))


def layer_section(info, psb=False, align=4, global_mask=b"", global_blocks=b""):
    """Layer and mask information, with its own length in front."""
    info = pad(info, align)
    body = size_field(len(info), psb) + info + struct.pack(">I", len(global_mask)) + global_mask + global_blocks
    return size_field(len(body), psb) + body


def section(data):
    return struct.pack(">I", len(data)) + data


def document(width, height, layers, planes, *, mode=3, depth=8, psb=False, colour_data=b"", resources=(),
             merged_alpha=False, align=4, inside=None, signature=b"8BIM", before=b"", global_mask=b"", global_blocks=b"", merged_compression=RAW):
    """A whole file.

    `inside` puts the layers into a global block (Lr16, Lr32) instead of the standard section: with that signature, and
    with `before` in front of it.
    """
    info = layer_info(layers, psb, merged_alpha) if layers else b""
    if inside:
        global_blocks = before + block(inside, info, signature=signature, align=4, psb=psb) + global_blocks
        info = b""
    empty = not (info or global_mask or global_blocks)
    return (header(width, height, len(planes), depth, mode, psb) + section(colour_data) + section(b"".join(resources))
            + (size_field(0, psb) if empty else layer_section(info, psb, align, global_mask, global_blocks))
            + merged(planes, merged_compression, psb))
