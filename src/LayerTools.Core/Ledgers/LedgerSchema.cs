using LayerTools.Json;

namespace LayerTools.Ledgers;

/// <summary>Compares ledgers with their schema.</summary>
internal static class LedgerSchema
{
    /// <summary>Ledgers as a kind of JSON file. A part takes some 600 bytes and 29 values; the schema holds 10,000 parts.</summary>
    public static readonly JsonFormat Format = new("ledger", LayerLedger.Extension, "urn:layertools:layerledger:1", "layerledger.schema.json")
    {
        LargestFile = 16 << 20,
        MostItems = 310_000,
    };

    private static readonly FormatSchema Schema = new(Format);

    /// <summary>What does not follow the schema.</summary>
    public static IEnumerable<JsonFault> Check(PlacedJson json) => Schema.Check(json);

    /// <summary>Whether the ledger says that it follows another schema.</summary>
    public static JsonFault? CheckReference(PlacedJson json) => Schema.CheckReference(json);
}
