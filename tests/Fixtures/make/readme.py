"""Writes README.md and damaged/README.md from the notes and from what opens.py and opens.cjs said."""
import os
import sys
from catalogue import FOLDER

READERS = ("psd-tools", "ag-psd", "ImageMagick")
HEAD = """# Fixtures

Small layered files, each for one feature of the format. All content is invented: a figure of ellipses on 32 x 32 px with
parts such as Head, Eye L, Arm L, 左腕. None was written by LayerTools: the scripts in `make/` assemble them byte by byte
("hand-built"), or ask the named library. `make/all.sh` makes them all again and writes this page.

- Layers are listed back to front in the scripts, as files store them.
- The merged picture of a hand-built file shows its visible layers with normal blending; it knows nothing of masks, blend
  modes and opacity, so it is not a reference for compositing. For that see the other writers' files, or compare layers.
- "Opened by" is what was tried with psd-tools 1.9.24 (tree, and every channel decoded), ag-psd {ag} (tree and pixels) and
  ImageMagick 6.9.11 (merged picture).
- `damaged/` holds files that must be refused or warned about; it has a page of its own.
- `schemas/` holds published schemas that tests check our files against, with a page that names their origin.

{count} files.

| file | for | made by | special | opened by |
|---|---|---|---|---|
"""
DAMAGED_HEAD = """# Damaged fixtures

Each holds one error. "When" says what meets it: *tree* is reading header, resources and layer records, *pixels* is decoding
a layer, *merged* the merged picture, *never* nothing that has to: read on, perhaps with a warning. "Section" is where the
error lies, "kind" what is wrong. All are hand-built by `../make/damaged.py` from the same small figure; nothing but the named
error is wrong. None is a reason to crash, to hang, or to allocate what the file only claims.

{count} files.

| file | when | section | kind | what is wrong |
|---|---|---|---|---|
"""


def cell(text):
    return text.replace("|", "\\|")


def main(opens_path):
    opened = {}
    ag_version = "?"
    for line in open(opens_path, encoding="utf-8", errors="replace"):
        name, reader, answer, *_ = line.rstrip("\n").split("\t")
        opened.setdefault(name, {})[reader] = answer == "yes"
    good, damaged = [], []
    for line in open(os.environ["FIXTURE_NOTES"], encoding="utf-8"):
        name, *rest = line.rstrip("\n").split("\t")
        (damaged if name.startswith("damaged/") else good).append((name, *rest))
    for _, _, maker, _ in good:
        ag_version = maker[7:] if maker.startswith("ag-psd ") else ag_version
    lines = []
    for name, feature, maker, special in sorted(good):
        answers = opened[name]
        readers = [r for r in READERS if answers.get(r)]
        lines.append(f"| {name} | {cell(feature)} | {maker} | {cell(special)} | {'all three' if len(readers) == 3 else ', '.join(readers) or 'none'} |")
    (FOLDER / "README.md").write_text(HEAD.format(ag=ag_version, count=len(lines)) + "\n".join(lines) + "\n", encoding="utf-8")
    lines = [f"| {name[8:]} | {' | '.join(map(cell, feature.split(' / ')))} | {cell(special)} |" for name, feature, _, special in sorted(damaged)]
    (FOLDER / "damaged/README.md").write_text(DAMAGED_HEAD.format(count=len(lines)) + "\n".join(lines) + "\n", encoding="utf-8")


main(sys.argv[1])
