using BenchmarkDotNet.Attributes;

namespace LayerTools.Benchmarks;

[MemoryDiagnoser]
public class MirrorBenchmarks
{
    private string path = string.Empty;

    [Params(100, 400)]
    public int Layers { get; set; }

    [GlobalSetup]
    public void Setup() => path = FigureFiles.Find(Layers);

    [Benchmark]
    public int Mirror() => Work.Mirror(Work.ReadTree(path)).Count;
}
