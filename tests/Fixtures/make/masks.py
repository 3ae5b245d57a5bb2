"""User masks, vector masks, and layers without pixels."""
import struct
from catalogue import save
from figure import coverage, drawing, layer, rows
from psd_bytes import Layer, PACKBITS, RAW, block, channel, luni

RECT = (4, 11, 12, 21)


def mask_channel(rect=RECT, compression=RAW, number=-2):
    return number, channel(rows(coverage(rect, True)), compression)


def mask_data(rect=RECT, colour=0, flags=0, rest=b""):
    return struct.pack(">4iBB", *rect, colour, flags) + rest


def masked(mask, channels, **more):
    return drawing((), [layer("Backdrop"), layer("Head", mask=mask, more_channels=channels, **more)])


one = [mask_channel()]
save("mask-20-bytes.psd", "user mask", "20 bytes: rectangle, colour 0, flags, 2 of padding; the mask's own rectangle",
     masked(mask_data(rest=b"\0\0"), one))
save("mask-packbits.psd", "user mask in PackBits", "row counts follow the mask's height, not the layer's",
     masked(mask_data(rest=b"\0\0"), [mask_channel(compression=PACKBITS)], compression=PACKBITS))
save("mask-disabled.psd", "disabled mask", "flag 2", masked(mask_data(flags=2, rest=b"\0\0"), one))
save("mask-inverted.psd", "inverted mask", "flag 4", masked(mask_data(flags=4, rest=b"\0\0"), one))
save("mask-relative.psd", "mask position relative to the layer", "flag 1", masked(mask_data(flags=1, rest=b"\0\0"), one))
save("mask-default-255.psd", "mask with default colour 255", "everything outside the mask's rectangle shows",
     masked(mask_data(colour=255, rest=b"\0\0"), one))
save("mask-empty-rectangle.psd", "mask of 0 x 0", "hides all: default colour 0, channel -2 of 2 bytes",
     masked(mask_data((0, 0, 0, 0), rest=b"\0\0"), [(-2, b"\0\0")]))
save("mask-outside.psd", "mask beyond the canvas", "negative coordinates, larger than the layer",
     masked(mask_data((-6, -6, 40, 40), rest=b"\0\0"), [mask_channel((-6, -6, 40, 40), PACKBITS)]))
real = struct.pack(">BB4i", 0, 255, *RECT)
save("mask-36-bytes.psd", "real user mask", "36 bytes and channel -3 beside -2; flags 8 (from rendering)",
     masked(mask_data((2, 9, 14, 23), flags=8, rest=real), [mask_channel((2, 9, 14, 23)), mask_channel(number=-3)]))
density = struct.pack(">BBd", 0b0011, 128, 2.5)
save("mask-parameters.psd", "mask density and feather", "flag 16; user density 128, user feather 2.5 px; 28 bytes, no channel -3",
     masked(mask_data(flags=16, rest=density), one))
both = struct.pack(">BBdBd", 0b1111, 200, 1.5, 100, 3.0)
save("mask-parameters-all.psd", "all four mask parameters", "user and vector, density and feather; 40 bytes, and still no real mask",
     masked(mask_data(flags=16, rest=both + bytes(3)), one))
save("mask-real-and-parameters.psd", "real mask and parameters", "channel -3 and flag 16 together: the real part stands before the parameters; 46 bytes",
     masked(mask_data((2, 9, 14, 23), flags=24, rest=real + density),
            [mask_channel((2, 9, 14, 23)), mask_channel(number=-3)]))


def knot(selector, *points):
    """A path record of 26 bytes; points are (y, x) as fractions of the canvas, stored 8.24."""
    return struct.pack(f">H{len(points) * 2}i", selector, *(round(v * (1 << 24)) for p in points for v in p))


def triangle(flags=0):
    corners = [(0.1, 0.5), (0.4, 0.7), (0.4, 0.3)]
    path = struct.pack(">II", 3, flags) + struct.pack(">H24x", 6) + struct.pack(">HH22x", 8, 0)
    path += struct.pack(">HHhHHH14x", 0, 3, 1, 1, 0, 0)
    for number, (y, x) in enumerate(corners):
        path += knot(2 if number else 1, (y - 0.02, x), (y, x), (y + 0.02, x + 0.01))
    return path


for key in (b"vmsk", b"vsms"):
    save(f"vector-mask-{key.decode()}.psd", f"vector mask, key {key.decode()}",
         "closed path of three knots, one linked, with handles apart from their anchors",
         drawing((), [layer("Head", blocks=[luni("Head"), block(key, triangle(), align=4)])]))
save("vector-mask-disabled.psd", "disabled and inverted vector mask", "flags 1 (invert) and 4 (disable)",
     drawing((), [layer("Head", blocks=[luni("Head"), block(b"vmsk", triangle(5), align=4)])]))
save("layer-empty-length-2.psd", "empty layer, channels of length 2", "rectangle 0 x 0, compression words alone",
     drawing((), [layer("Head"), Layer("Arm L", channels=[(n, b"\0\0") for n in (-1, 0, 1, 2)])]))
save("layer-empty-length-0.psd", "empty layer, channels of length 0", "rectangle 0 x 0, not even a compression word",
     drawing((), [layer("Head"), Layer("Arm L", channels=[(n, b"") for n in (-1, 0, 1, 2)])]))
save("layer-no-height.psd", "layer 5 px wide and 0 high", "not 0 x 0, and still without pixels",
     drawing((), [layer("Head"), Layer("Arm L", (9, 3, 9, 8), [(n, b"\0\0") for n in (-1, 0, 1, 2)])]))
no_alpha = layer("Backdrop")
del no_alpha.channels[0]
save("layer-no-transparency.psd", "layer without channel -1", "three colour channels: opaque",
     drawing((), [no_alpha, layer("Head")]))
reordered = layer("Head", mask=mask_data(rest=b"\0\0"))
reordered.channels = [mask_channel(), *reversed(reordered.channels)]
save("layer-channels-reordered.psd", "channels in an unusual order", "-2, 2, 1, 0, -1", drawing((), [reordered]))
ranges = bytes(range(8)) * 5
save("layer-blending-ranges.psd", "blending ranges", "40 bytes: grey and four channels, two pairs each; invented values",
     drawing((), [layer("Head", ranges=ranges)]))
