using BenchmarkDotNet.Attributes;

namespace LayerTools.Benchmarks;

[MemoryDiagnoser]
public class SaveBenchmarks
{
    private string path = string.Empty;
    private string destination = string.Empty;

    [Params(100, 400)]
    public int Layers { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        path = FigureFiles.Find(Layers);
        destination = Path.ChangeExtension(path, ".benchmark.psd");
    }

    [GlobalCleanup]
    public void Cleanup() => File.Delete(destination);

    [Benchmark(Baseline = true)]
    public void CopyWithFlush() => Work.CopyWithFlush(path, destination);

    [Benchmark]
    public void RenameAllAndSave() => Work.RenameAllAndSave(path, destination);
}
