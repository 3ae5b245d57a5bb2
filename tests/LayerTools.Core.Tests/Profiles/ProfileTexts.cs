using Xunit;

namespace LayerTools.Tests.Profiles;

/// <summary>Invented profiles, right and wrong, and what is said of the wrong ones: path, line, column, part of the sentence, part of the remedy.</summary>
public static class ProfileTexts
{
    public static TheoryData<string> Good { get; } =
    [
        """{ "name": "bare" }""",
        """{ "name": "any canvas", "canvas": { "width": null, "height": null, "ppi": null, "evenWidth": false } }""",
        """{ "name": "ours", "$schema": "urn:layertools:layerprofile:1" }""",
        """{ "name": "ours", "$schema": "..\\schemas\\layerprofile.schema.json" }""",
        """{ "name": "one word", "naming": { "vocabulary": { "extends": false, "parts": [ { "key": "fin", "english": "fin", "japanese": "ひれ", "zone": "fin" } ] } }, "stack": ["fin"] }""",
        """{ "name": "rules", "rules": { "OddCanvasWidth": "note" } }""",
        """{ "name": "rules", "rules": { "OddCanvasWidth": { "severity": "none", "limit": null } } }""",
    ];

    public static TheoryData<string, string, int, int, string, string> BadForm { get; } = new()
    {
        { "{ }", "$", 1, 1, "has no 'name'", "Add it: what the profile is called." },
        { "[ ]", "$", 1, 1, "has to be an object", "Correct it" },
        { "{ \"name\": \"a\",\n  \"canvas\": { \"widht\": 3 } }", "$.canvas.widht", 2, 15, "no property 'widht'", "Write 'width'" },
        { "{ \"name\": \"a\",\r\n  \"canvas\": { \"height\": \"tall\" } }", "$.canvas.height", 2, 25, "'height' is \"tall\", and has to be a whole number from 1 to 300000, or null", "rows, px" },
        { """{ "name": "線", "canvas": { "ppi": 0.5 } }""", "$.canvas.ppi", 1, 35, "is 0.5, and has to be a number from 1 to 32767, or null", "pixels per inch" },
        { """{ "name": "a", "canvas": { "evenWidth": null } }""", "$.canvas.evenWidth", 1, 41, "is null, and has to be true or false", "" },
        { """{ "name": "a", "sides": { "place": "middle" } }""", "$.sides.place", 1, 36, "one of \"start\" and \"end\"", "" },
        { """{ "name": "a", "sides": { "left": "" } }""", "$.sides.left", 1, 35, "a text of 1 to 20 characters", "" },
        { """{ "name": "a", "stack": ["head", "neck", "head"] }""", "$.stack[2]", 1, 42, "\"head\" is there twice", "Leave one" },
        { """{ "name": "a", "stack": ["Head front"] }""", "$.stack[0]", 1, 26, "Item 1 of 'stack' is \"Head front\"", "lower case with hyphens" },
        { """{ "name": "a", "marks": { "pink": "done" } }""", "$.marks.pink", 1, 27, "no property 'pink'", "Known are red, orange" },
        { """{ "name": "a", "screens": [] }""", "$.screens", 1, 27, "is empty, and has to be a list of 1 to 50 items", "" },
        { """{ "name": "a", "textures": { "pageSize": 3000 } }""", "$.textures.pageSize", 1, 42, "one of 1024, 2048, 4096, 8192 and 16384", "a power of two" },
        { """{ "name": "a", "naming": { "vocabulary": { "parts": [ { "key": "fin", "english": "fin", "japanese": "ひれ" } ] } } }""", "$.naming.vocabulary.parts[0]", 1, 55, "Item 1 of 'parts' has no 'zone'", "" },
        { """{ "name": "a", "rules": { "OddCanvasWidth": "bad" } }""", "$.rules.OddCanvasWidth", 1, 45, "one of \"none\", \"note\", \"warning\" and \"error\"", "" },
        { """{ "name": "a", "rules": { "OddCanvasWidth": 5 } }""", "$.rules.OddCanvasWidth", 1, 45, "is 5, and has to be one of \"none\", \"note\", \"warning\" and \"error\" or an object", "" },
        { """{ "name": "a", "rules": { "OddCanvasWidth": { "limit": -1 } } }""", "$.rules.OddCanvasWidth.limit", 1, 56, "from 0 to", "" },
        { """{ "name": "a", "rules": { "OddCanvasWidth": { "lmit": 1 } } }""", "$.rules.OddCanvasWidth.lmit", 1, 47, "no property 'lmit'", "Write 'limit'" },
        { """{ "name": "a", "rules": { "OddCanvasWidth": { } } }""", "$.rules.OddCanvasWidth", 1, 45, "is empty", "" },
    };

    public static TheoryData<string, string, int, int, string, string> BadText { get; } = new()
    {
        { "", "$", 1, 1, "not JSON", "Correct the text" },
        { "{ \"name\": \"a\",\n  }", "$", 2, 3, "not JSON", "Correct the text" },
        { "{ \"name\": 'a' }", "$.name", 1, 11, "not JSON", "" },
        { "{ \"name\": \"a\" } // note", "$", 1, 17, "not JSON", "" },
        { "{ \"name\": \"a\" } { }", "$", 1, 17, "not JSON", "" },
        { "{ \"name\": \"a\",\n\n \"線\": \"😀\", \"name\": \"b\" }", "$.name", 3, 13, "'name' is there twice", "Leave one" },
        { """{ "name": "a", "canvas": { "width": 1e300 } }""", "$.canvas.width", 1, 37, "larger than any", "" },
        { """{ "name": "a", "canvas": { "width": 123456789012345678901234567890 } }""", "$.canvas.width", 1, 37, "larger than any", "" },
        { """{ "name": "half \ud83d" }""", "$.name", 1, 11, "surrogate", "" },
        { """{ "name": "a", "a b": { "c'd": 1e99 } }""", "$['a b']['c\\'d']", 1, 32, "larger than any", "" },
        { $$"""{ "{{new string('n', 201)}}": 1 }""", "$", 1, 3, "201 characters", "" },
    };

    public static TheoryData<string, string, int, int, string, string> BadSense { get; } = new()
    {
        { """{ "name": " " }""", "$.name", 1, 11, "blank", "" },
        { """{ "name": "a", "$schema": "layerprofile.schema.v2.json" }""", "$['$schema']", 1, 27, "not known here", "urn:layertools:layerprofile:1" },
        { """{ "name": "a", "$schema": "invented://somewhere/layerprofile.schema.json" }""", "$['$schema']", 1, 27, "never fetched", "" },
        { """{ "name": "a", "canvas": { "width": 5001 } }""", "$.canvas.width", 1, 37, "5001 px is odd", "Write 5002" },
        { """{ "name": "a", "sides": { "leftTokens": ["links", "R"] } }""", "$.sides.leftTokens[1]", 1, 51, "'R' stands for left here, and is read as right", "" },
        { """{ "name": "a", "sides": { "right": "左" } }""", "$.sides.right", 1, 36, "'左' stands for right here, and is read as left", "" },
        { """{ "name": "a", "sides": { "leftTokens": ["A"], "rightTokens": ["a"] } }""", "$.sides.rightTokens[0]", 1, 64, "'a' stands for left and for right", "" },
        { """{ "name": "a", "sides": { "left": "-" } }""", "$.sides.left", 1, 35, "nothing in it but", "" },
        { """{ "name": "a", "naming": { "separator": "x" } }""", "$.naming.separator", 1, 41, "cannot be told", "" },
        { """{ "name": "a", "naming": { "separator": "", "case": "title" } }""", "$.naming.separator", 1, 41, "title case run into each other", "pascal" },
        { """{ "name": "a", "naming": { "vocabulary": { "extends": false } } }""", "$.naming.vocabulary", 1, 42, "no words", "" },
        { Parts("""{ "key": "fin", "english": "fin", "japanese": "ひれ", "zone": "leg" }, { "key": "fin", "english": "gill", "japanese": "えら", "zone": "leg" }"""),
            "$.naming.vocabulary.parts[1].key", 1, 133, "Two parts have the key 'fin'", "" },
        { Parts("""{ "key": "gauche", "english": "left", "japanese": "ひれ", "zone": "leg" }"""), "$.naming.vocabulary.parts[0].english", 1, 85, "read as left in every file", "" },
        { Parts("""{ "key": "dash", "english": "--", "japanese": "ひれ", "zone": "leg" }"""), "$.naming.vocabulary.parts[0].english", 1, 83, "nothing in it but", "" },
        { """{ "name": "a", "screens": [ { "name": "Wall", "width": 3000, "height": 2000 }, { "name": "wall", "width": 10, "height": 20 } ] }""", "$.screens[1].name", 1, 90, "Two screens", "" },
        { """{ "name": "a", "rules": { "OddCanvasWidht": "note" } }""", "$.rules.OddCanvasWidht", 1, 27, "no rule 'OddCanvasWidht'", "Write 'OddCanvasWidth'" },
        { """{ "name": "a", "rules": { "Elephants": "note" } }""", "$.rules.Elephants", 1, 27, "no rule 'Elephants'", "Leave it out" },
        { """{ "name": "a", "rules": { "OddCanvasWidth": { "limit": 3 } } }""", "$.rules.OddCanvasWidth.limit", 1, 56, "has no limit", "" },
    };

    public static TheoryData<string, string, int, int, string, string> Doubtful { get; } = new()
    {
        { """{ "name": "a", "sides": { "left": "port", "right": "R" } }""", "$.sides.left", 1, 35, "'port' is written for left, but pairs and mirroring do not know it", "such as 'L'" },
        { """{ "name": "a", "stack": ["hair-frnt", "head"] }""", "$.stack[0]", 1, 26, "No part of the vocabulary is in the zone 'hair-frnt'", "Write 'hair-front'" },
        { Parts("""{ "key": "fin", "english": "fin", "japanese": "ひれ", "zone": "legg" }""", "\"stack\": [\"leg\"]"), "$.naming.vocabulary.parts[0].zone", 1, 133, "The zone 'legg' is not in the stack", "Write 'leg'" },
        { Parts("""{ "key": "fin", "english": "fin", "japanese": "ひれ", "zone": "leg" }, { "key": "gill", "english": "gill", "japanese": "ヒレ", "zone": "leg" }"""),
            "$.naming.vocabulary.parts[1].japanese", 1, 172, "'ヒレ' is a word for 'fin' too", "" },
        { """{ "name": "a", "naming": { "separator": "'" } }""", "$.naming.separator", 1, 41, "and that is not read as such again", "another separator" },
        { """{ "name": "a", "naming": { "longestName": 5 } }""", "$.naming.longestName", 1, 43, "Names may have 5 characters", "" },
    };

    private static string Parts(string parts, string? more = null) =>
        $$"""{ "name": "a", {{(more is null ? string.Empty : more + ", ")}}"naming": { "vocabulary": { "parts": [ {{parts}} ] } } }""";
}
