"""Records that mark where a group begins and ends."""
import struct
from psd_bytes import Layer, block, luni

EMPTY = [(n, b"\0\0") for n in (-1, 0, 1, 2)]


def divider(kind, name, blend=None, subtype=None, key=b"lsct", **more):
    """A record with a section divider: kind 1 open, 2 closed, 3 the hidden end marker."""
    data = struct.pack(">I", kind)
    if blend:
        data += b"8BIM" + blend
    if subtype is not None:
        data += struct.pack(">I", subtype)
    more.setdefault("channels", EMPTY)
    return Layer(name, blocks=[luni(name), block(key, data)], **more)


def end(**more):
    return divider(3, "</Layer group>", **more)


def group(name, *children, kind=1, blend=b"pass", **more):
    """Back to front: the end marker, the children, the record with the name."""
    flat = [c for child in children for c in (child if isinstance(child, list) else [child])]
    return [end(), *flat, divider(kind, name, blend, **more)]
