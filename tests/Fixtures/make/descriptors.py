"""Descriptors: the nested key and value structures of newer blocks."""
import struct
from psd_bytes import u32, unicode_text


def key(name):
    return (u32(0) if len(name) == 4 else u32(len(name))) + name


def descriptor(class_name, **items):
    body = unicode_text("", nul=True) + key(class_name) + u32(len(items))
    return body + b"".join(key(k.encode().ljust(4)) + v for k, v in items.items())


def number(value):
    return b"doub" + struct.pack(">d", value)
