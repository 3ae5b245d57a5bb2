"""Writes a fixture and notes what its README line says. The notes go to the file that $FIXTURE_NOTES names."""
import os
from pathlib import Path

FOLDER = Path(__file__).resolve().parent.parent


def save(name, feature, special, data, maker="hand-built"):
    path = FOLDER / name
    path.parent.mkdir(exist_ok=True)
    path.write_bytes(data)
    note(name, feature, maker, special)


def note(name, feature, maker, special):
    with open(os.environ["FIXTURE_NOTES"], "a", encoding="utf-8") as notes:
        notes.write("\t".join((name, feature, maker, special)) + "\n")
