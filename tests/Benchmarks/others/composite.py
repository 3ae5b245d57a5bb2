"""Time in ms that psd-tools takes to draw a file from its layers, as JSON. Once: it takes long enough not to depend on chance.

Argument: the file."""
import json
import logging
import sys
import time
import warnings

from psd_tools import PSDImage

logging.disable(logging.CRITICAL)
warnings.simplefilter("ignore")

psd = PSDImage.open(sys.argv[1])
start = time.perf_counter()
picture = psd.composite(force=True)
json.dump({"compositeMs": 1000 * (time.perf_counter() - start), "width": picture.width}, sys.stdout)
