"""Shortest times in ms of psd-tools, as JSON: the tree of a file, and decoding and flipping some of its layers.

Arguments: the file, and the layers' numbers (1 is the front-most of the flattened tree), separated by commas."""
import json
import logging
import sys
import time
import warnings

import numpy
from psd_tools import PSDImage

logging.disable(logging.CRITICAL)
warnings.simplefilter("ignore")


def timed(work):
    start = time.perf_counter()
    work()
    return 1000 * (time.perf_counter() - start)


def flatten(group):
    for layer in reversed(list(group)):
        yield layer
        if layer.is_group():
            yield from flatten(layer)


def read_tree(path):
    return sum(1 for _ in flatten(PSDImage.open(path)))


def decode_and_flip(psd, layers):
    for layer in layers:
        record = layer._record
        for info, data in zip(record.channel_info, layer._channels):
            place = record.mask_data if info.id.value < -1 else record
            width, height = place.right - place.left, place.bottom - place.top
            if width <= 0 or height <= 0:
                continue
            samples = numpy.frombuffer(data.get_data(width, height, psd.depth, psd.version), dtype=f"V{psd.depth // 8}")
            numpy.ascontiguousarray(samples.reshape(height, width)[:, ::-1])


path, numbers = sys.argv[1], {int(number) for number in sys.argv[2].split(",") if number}
read_tree(path)
tree = min(timed(lambda: read_tree(path)) for _ in range(10))
psd = PSDImage.open(path)
chosen = [layer for number, layer in enumerate(flatten(psd), 1) if number in numbers]
mirror = min(timed(lambda: decode_and_flip(psd, chosen)) for _ in range(5))
json.dump({"treeMs": tree, "mirrorMs": mirror, "layers": len(chosen)}, sys.stdout)
