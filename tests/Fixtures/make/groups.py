"""Groups: dividers, nesting, blend modes of groups, clipping and other relations between layers."""
from catalogue import save
from dividers import divider, end, group
from figure import drawing, layer


def figure_groups():
    return group("Figure", layer("Body"), group("Head", layer("Head"), group("Eye L", layer("Eye L")), kind=2),
                 group("Arm L", layer("Arm L"), flags=10))


save("groups-nested.psd", "nested groups", "three deep; Head is closed, Arm L hidden; lsct of 4 and 12 bytes",
     drawing((), figure_groups(), shown=("Body", "Head", "Eye L")))
save("groups-pass-and-isolated.psd", "pass-through and isolated groups",
     "the record says norm while lsct says pass; one lsct says mul, one has 4 bytes only",
     drawing((), group("Pass", layer("Arm L")) + group("Isolated", layer("Arm R"), blend=b"norm")
             + group("Multiplied", layer("Head"), blend=b"mul ") + group("Short", layer("Eye L"), blend=None)))
save("groups-lsct-16.psd", "lsct of 16 bytes", "with a subtype: 0 (scene group 1 in the second)",
     drawing((), group("Plain", layer("Head"), subtype=0) + group("Scene", layer("Eye L"), subtype=1)))
deep = layer("Eye L")
for level in range(12, 0, -1):
    key = b"lsdk" if level > 5 else b"lsct"
    deep = [end(key=key), *(deep if isinstance(deep, list) else [deep]), divider(1, f"Level {level}", b"pass", key=key)]
save("groups-lsdk.psd", "lsdk, deep nesting", "twelve deep; from level 6 on lsdk stands in place of lsct",
     drawing((), deep))
save("groups-missing-opener.psd", "an end marker without its group", "the outer group's own record is missing: warn",
     drawing((), [end(), layer("Body"), *group("Head", layer("Head"))]))
save("groups-missing-closer.psd", "a group without its end marker", "the end marker of Head is missing: warn",
     drawing((), [layer("Body"), layer("Head"), divider(1, "Head", b"pass")]))
save("groups-only.psd", "groups only, no pixel layer", "one group in another, and an empty one",
     drawing((), group("Figure", group("Head")) + group("Arm L")))
save("groups-no-channels.psd", "groups whose records have no channels", "channel count 0",
     drawing((), [end(channels=[]), layer("Head"), divider(1, "Head", b"pass", channels=[])]))
save("groups-hidden.psd", "hidden group", "Arm L inside is visible itself but not effectively",
     drawing((), [layer("Body")] + group("Arm L", layer("Arm L"), flags=10), shown=("Body",)))
save("clipping-run.psd", "clipping run", "two layers clipped to Head, a free layer, then a run on a group's base",
     drawing((), [layer("Head"), layer("Eye R", clipping=1), layer("Eye L", clipping=1), layer("Body"),
                  *group("Arm L", layer("Arm L")), layer("Arm R", name="Shade", clipping=1)]))
save("clipping-without-base.psd", "clipped layer at the bottom", "nothing stands below it to be clipped to",
     drawing((), [layer("Head", clipping=1), layer("Eye L")]))
save("mirror-arms.psd", "a figure to reflect",
     "parts on the left only, one pair complete, a group with the opposite group present; canvas centre is x = 16",
     drawing((), [layer("Backdrop"), *group("Arm R", layer("Arm R", name="Upper arm R")),
                  *group("Arm L", layer("Arm L", name="Upper arm L"), layer("Arm L", name="Hand L")),
                  layer("Body"), layer("Head"), layer("Eye L"), layer("Eye L", name="Iris L", clipping=1)]))
