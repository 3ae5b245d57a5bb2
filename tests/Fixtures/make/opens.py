"""Which readers open which fixture: one line a file and reader, to standard output. Arguments: the files.

psd-tools must give the tree and decode every channel, ImageMagick must give the merged picture and its size.
"""
import subprocess
import sys
from pathlib import Path
from psd_tools import PSDImage


def psd_tools(path):
    psd = PSDImage.open(path)
    names = [layer.name for layer in psd.descendants()]
    for record, channels in psd._record._iter_layers():
        for info, data in zip(record.channel_info, channels):
            masks = record.mask_data
            width, height = record.width, record.height
            if info.id == -2:
                width, height = masks.width, masks.height
            elif info.id == -3:
                width, height = masks.real_right - masks.real_left, masks.real_bottom - masks.real_top
            if len(data.data):
                got = data.get_data(width, height, psd.depth, psd._record.header.version)
                assert len(got) == width * height * psd.depth // 8, (record.name, info.id, len(got))
    return f"{psd.width}x{psd.height} {names}"


def magick(path):
    run = subprocess.run(["/usr/bin/convert", f"{path}[0]", "-format", "%wx%h %[mean]", "info:"], capture_output=True, text=True)
    if run.returncode or "convert" in run.stderr:
        raise ValueError(run.stderr.strip()[:200])
    return run.stdout


for path in map(Path, sys.argv[1:]):
    for name, reader in (("psd-tools", psd_tools), ("ImageMagick", magick)):
        try:
            print(path.name, name, "yes", reader(path), sep="\t")
        except Exception as error:
            print(path.name, name, "no", f"{type(error).__name__}: {str(error)[:160]!r}", sep="\t")
