namespace LayerTools.Formats.Psd;

/// <summary>A part of a file, put into words only when an error is told about it.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Number">Which of several, from 1; 0 where there is one.</param>
/// <param name="Count">How many there are.</param>
/// <param name="Key">The key of a block; 0 for others.</param>
internal readonly record struct PsdSection(string Name, int Number = 0, int Count = 0, uint Key = 0)
{
    public static implicit operator PsdSection(string name) => new(name);

    public override string ToString() => Key != 0
        ? $"{Name} '{PsdKey.Format(Key)}'"
        : Number == 0 ? Name : FormattableString.Invariant($"{Name} {Number} of {Count}");
}
