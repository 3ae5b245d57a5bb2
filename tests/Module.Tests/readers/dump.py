"""Prints as JSON what psd-tools reads from each file named on the command line: the layers front to back, and a hash of every channel's samples."""
import hashlib
import json
import logging
import sys
import warnings

from psd_tools import PSDImage

CHANNEL_NUMBERS = {"CHANNEL_0": 0, "CHANNEL_1": 1, "CHANNEL_2": 2, "CHANNEL_3": 3, "TRANSPARENCY_MASK": -1, "USER_LAYER_MASK": -2, "REAL_USER_LAYER_MASK": -3}


def digest(data):
    return hashlib.sha256(data).hexdigest()


def flip_rows(data, width, sample):
    row = width * sample
    pieces = []
    for start in range(0, len(data), row):
        for x in range(width - 1, -1, -1):
            pieces.append(data[start + x * sample:start + (x + 1) * sample])
    return b"".join(pieces)


def rectangle(record):
    return record.left, record.top, record.right, record.bottom


def channels(layer, psd, want_flipped):
    record = layer._record
    found = {}
    for info, data in zip(record.channel_info, layer._channels):
        number = CHANNEL_NUMBERS.get(info.id.name)
        if number is None:
            continue
        place = rectangle(record)
        if number == -2:
            place = rectangle(record.mask_data)
        elif number == -3:
            mask = record.mask_data
            place = (mask.real_left, mask.real_top, mask.real_right, mask.real_bottom)
        width, height = place[2] - place[0], place[3] - place[1]
        if width <= 0 or height <= 0:
            continue
        samples = data.get_data(width, height, psd.depth, psd.version)
        found[str(number)] = {"hash": digest(samples), "bounds": list(place)}
        if want_flipped and psd.depth >= 8:
            found[str(number)]["flipped"] = digest(flip_rows(samples, width, psd.depth // 8))
    return found


def walk(group, depth, psd, want_flipped, found):
    for layer in reversed(list(group)):
        is_group = layer.is_group()
        found.append({
            "name": layer.name,
            "depth": depth,
            "group": is_group,
            "bounds": None if is_group else list(rectangle(layer._record)),
            "visible": layer.visible,
            "opacity": layer.opacity,
            "clipped": bool(layer._record.clipping),
            "channels": {} if is_group else channels(layer, psd, want_flipped),
        })
        if is_group:
            walk(layer, depth + 1, psd, want_flipped, found)


def read(path, want_flipped):
    try:
        psd = PSDImage.open(path)
        found = []
        walk(psd, 0, psd, want_flipped, found)
        return {"path": path, "width": psd.width, "height": psd.height, "layers": found, "error": None}
    except Exception as error:  # the caller decides which files must be readable
        return {"path": path, "error": f"{type(error).__name__}: {error}"}


# It warns of every block it does not know; the fixtures are full of them.
logging.disable(logging.CRITICAL)
warnings.simplefilter("ignore")

arguments = sys.argv[1:]
flipped = "--flipped" in arguments
json.dump([read(path, flipped) for path in arguments if path != "--flipped"], sys.stdout)
