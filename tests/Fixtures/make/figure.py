"""The invented figure that the fixtures show: ellipses and boxes with soft edges on a 32 x 32 canvas."""
import struct
from psd_bytes import Layer, RAW, channel, document

PARTS = {  # name: (top, left, bottom, right), RGB in 0..1, round
    "Backdrop": ((0, 0, 32, 32), (0.467, 0.467, 0.467), False),
    "Arm R": ((12, 6, 22, 11), (0.90, 0.60, 0.45), True),
    "Arm L": ((12, 21, 22, 26), (0.90, 0.60, 0.45), True),
    "Body": ((12, 10, 26, 22), (0.20, 0.40, 0.70), True),
    "Head": ((2, 9, 14, 23), (0.95, 0.75, 0.60), True),
    "Eye R": ((6, 12, 9, 15), (0.10, 0.25, 0.20), True),
    "Eye L": ((6, 17, 9, 20), (0.10, 0.25, 0.20), True),
}
MODES = {"bitmap": 0, "grey": 1, "indexed": 2, "rgb": 3, "cmyk": 4, "multichannel": 7, "duotone": 8, "lab": 9}


def sample(value, depth):
    """One sample, 0..1, as stored."""
    if depth == 32:
        return struct.pack(">f", value)
    return struct.pack(">H", round(value * 65535)) if depth == 16 else bytes([round(value * 255)])


def rows(grid, depth=8):
    return [b"".join(sample(v, depth) for v in line) for line in grid]


def coverage(rect, is_round):
    """How much of each pixel the part covers, from 4 x 4 samples."""
    height, width = rect[2] - rect[0], rect[3] - rect[1]
    if not is_round:
        return [[1.0] * width for _ in range(height)]

    def inside(x, y):
        return (2 * x / width - 1) ** 2 + (2 * y / height - 1) ** 2 <= 1

    steps = [(i + 0.5) / 4 for i in range(4)]
    return [[sum(inside(x + i, y + j) for i in steps for j in steps) / 16 for x in range(width)] for y in range(height)]


def components(rgb, mode):
    """The colour in the file's own mode, as stored (CMYK inverted). A plain formula, not colour management."""
    red, green, blue = rgb
    luma = 0.3 * red + 0.59 * green + 0.11 * blue
    return {"rgb": rgb, "grey": (luma,), "duotone": (luma,), "cmyk": (red, green, blue, 1.0),
            "multichannel": (red, green, blue), "lab": (luma, 0.5 + (red - green) / 4, 0.5 + (green - blue) / 4)}[mode]


def layer(part, *, name=None, mode="rgb", depth=8, compression=RAW, psb=False, offset=(0, 0), **more):
    """The part as a layer record with its channels. `more` goes to Layer."""
    rect, rgb, is_round = PARTS[part]
    alpha = coverage(rect, is_round)
    flat = [[[c] * len(alpha[0]) for _ in alpha] for c in components(rgb, mode)]
    stored = [(number, channel(rows(grid, depth), compression, depth, psb))
              for number, grid in [(-1, alpha), *enumerate(flat)]]
    top, left, bottom, right = rect
    moved = (top + offset[1], left + offset[0], bottom + offset[1], right + offset[0])
    return Layer(part if name is None else name, moved, stored + more.pop("more_channels", []), shows=(part, offset), **more)


def merge(parts, width=32, height=32, mode="rgb", depth=8, with_alpha=False):
    """The parts over each other with normal blending, matted with white; the last plane is the transparency.

    A part may be given as (name, (dx, dy)).
    """
    count = len(components((0, 0, 0), mode))
    white = components((1, 1, 1), mode)
    planes = [[[white[c]] * width for _ in range(height)] for c in range(count)]
    alpha = [[0.0] * width for _ in range(height)]
    for part in parts:
        part, (right, down) = (part, (0, 0)) if isinstance(part, str) else part
        rect, rgb, is_round = PARTS[part]
        top, left = rect[0] + down, rect[1] + right
        colour = components(rgb, mode)
        for y, line in enumerate(coverage(rect, is_round)):
            for x, cover in enumerate(line):
                if not (0 <= y + top < height and 0 <= x + left < width):
                    continue
                for c in range(count):
                    planes[c][y + top][x + left] += (colour[c] - planes[c][y + top][x + left]) * cover
                alpha[y + top][x + left] += (1 - alpha[y + top][x + left]) * cover
    return [rows(plane, depth) for plane in planes + ([alpha] if with_alpha else [])]


def drawing(parts=("Backdrop", "Head"), layers=None, *, size=(32, 32), mode="rgb", depth=8, compression=RAW,
            psb=False, merged_alpha=False, shown=None, **more):
    """A file that shows the parts. `layers` replaces the layer records, `shown` what the merged picture shows:
    without it, every layer that is not hidden itself.
    """
    if layers is None:
        layers = [layer(p, mode=mode, depth=depth, compression=compression, psb=psb) for p in parts]
    if shown is None:
        shown = [each.shows for each in layers if each.shows and not each.flags & 2]
    planes = merge(shown, *size, mode, depth, merged_alpha)
    return document(*size, layers, planes, mode=MODES[mode], depth=depth, psb=psb, merged_alpha=merged_alpha, **more)
