namespace LayerTools.Tests.Support;

/// <summary>A folder that vanishes with the test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Root { get; } = Directory.CreateTempSubdirectory("layertools-test-").FullName;

    public string this[string name] => Path.Combine(Root, name);

    public void Dispose() => Directory.Delete(Root, recursive: true);
}
