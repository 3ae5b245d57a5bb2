"""Fixtures written by psd-tools (MIT)."""
import io
from PIL import Image, ImageDraw
from psd_tools import PSDImage
from catalogue import FOLDER, note
from figure import drawing

MAKER = "psd-tools 1.9.24"


def written(name, feature, special, psd):
    psd.save(str(FOLDER / name))
    note(name, feature, MAKER, special)


face = Image.new("RGB", (32, 32), (119, 119, 119))
ImageDraw.Draw(face).ellipse((9, 2, 22, 13), fill=(242, 191, 153))
written("psd-tools-flat.psd", "flat file from an image", "no layers; its own defaults for resources", PSDImage.frompil(face))
written("psd-tools-grey.psd", "flat grey file from an image", "", PSDImage.frompil(face.convert("L")))
named = PSDImage.open(io.BytesIO(drawing(("Head", "Arm L", "Eye L"))))
for layer, name in zip(named, ("頭", "左腕", "Eye L")):
    layer.name = name
named[1].visible = False
named[2].opacity = 100
written("psd-tools-resaved.psd", "hand-built file renamed and saved by psd-tools",
        "Japanese names with the legacy name psd-tools chooses; one hidden, one at opacity 100", named)
