"""Image resources."""
import io
import struct
from PIL import Image, ImageCms
from catalogue import save
from figure import drawing, layer, merge
from psd_bytes import document, resource, unicode_text


def with_resources(*resources, **more):
    return drawing(resources=resources, **more)


def resolution(ppi, unit=1):
    return resource(1005, struct.pack(">IHHIHH", round(ppi * 65536), unit, 1, round(ppi * 65536), unit, 1))


def guides(*positions):
    """Positions are (px, 0 for vertical or 1 for horizontal)."""
    data = struct.pack(">IIII", 1, 576, 576, len(positions))
    return resource(1032, data + b"".join(struct.pack(">iB", round(px * 32), way) for px, way in positions))


save("resource-guides.psd", "guides", "vertical at 16 and 7.5, horizontal at 26, one at -4 outside", with_resources(
    guides((16, 0), (7.5, 0), (26, 1), (-4, 0))))
save("resource-guides-none.psd", "guides resource without guides", "count 0", with_resources(guides()))
for ppi in (72, 300, 600):
    save(f"resource-{ppi}-ppi.psd", f"resolution {ppi} ppi", "", with_resources(resolution(ppi)))
save("resource-ppi-fraction.psd", "resolution of 299.9994 ppi shown per cm", "16.16 fixed with a fraction, unit 2",
     with_resources(resolution(299.9994, 2)))
picture = io.BytesIO()
Image.new("RGB", (32, 32), (119, 119, 119)).save(picture, "JPEG", quality=60)
jpeg = picture.getvalue()
save("resource-thumbnail.psd", "thumbnail", "1036: JPEG 32 x 32, plain grey, encoded by Pillow", with_resources(
    resource(1036, struct.pack(">6IHH", 1, 32, 32, 96, 96 * 32, len(jpeg), 24, 1) + jpeg)))
profile = bytearray(ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes())
profile[24:36] = struct.pack(">6H", 2026, 1, 1, 0, 0, 0)  # the time of making, fixed so that the file stays the same
save("resource-icc.psd", "colour profile", "1039: the sRGB profile that Pillow's colour library makes", with_resources(
    resource(1039, bytes(profile))))
for real in (0, 1):
    text = unicode_text("fixture script")
    save(f"resource-merged-{'real' if real else 'not-real'}.psd", f"1057 says the merged picture is {'' if real else 'not '}real",
         "" if real else "the merged picture is white", with_resources(
             resource(1057, struct.pack(">IB", 1, real) + text * 2 + struct.pack(">I", 1)), shown=None if real else ()))
save("resource-signatures.psd", "resource signatures other than 8BIM", "MeSa, AgHg, PHUT and DCSR, each with a number in the private range", with_resources(
    resolution(72), *(resource(4000 + n, b"data" + bytes([n]), signature=s) for n, s in enumerate((b"MeSa", b"AgHg", b"PHUT", b"DCSR")))))
save("resource-names-and-padding.psd", "named resources, odd lengths", "names of 0, 1, 2 and 7 bytes (Shift-JIS), data of 0, 1, 2 and 3", with_resources(
    *(resource(4100 + n, bytes(range(n)), name) for n, name in enumerate((b"", b"a", b"ab", b"\x8d\xb6\x98r L!")))))
save("resource-duplicate-numbers.psd", "one resource number twice", "both are kept, in order", with_resources(
    resource(4200, b"first!"), resolution(300), resource(4200, b"second")))
extra = [bytes([10 * (n % 26)] * 32) for n in range(32)]
names = (b"\x06Shadow\x05Shade", unicode_text("影", nul=True) + unicode_text("Shade", nul=True))
save("resource-alpha-names.psd", "two further channels with names",
     "1006 and 1045 beside five merged planes; no transparency, so the layer count is positive", document(
         32, 32, [layer("Head")], merge(("Head",)) + [extra, extra], resources=[resource(1006, names[0]), resource(1045, names[1])]))
