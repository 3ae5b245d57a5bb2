using BenchmarkDotNet.Attributes;

namespace LayerTools.Benchmarks;

[MemoryDiagnoser]
public class TreeBenchmarks
{
    private string path = string.Empty;

    [Params(100, 400)]
    public int Layers { get; set; }

    [GlobalSetup]
    public void Setup() => path = FigureFiles.Find(Layers);

    [Benchmark]
    public int ReadTree() => Work.ReadTree(path).LayerCount;
}
