using BenchmarkDotNet.Attributes;

namespace LayerTools.Benchmarks;

/// <summary>The symmetry of the figure of 5000 x 6000 px and of all its parts.</summary>
[MemoryDiagnoser]
public class SymmetryBenchmarks
{
    private string path = string.Empty;

    [Params(100, 400)]
    public int Layers { get; set; }

    [GlobalSetup]
    public void Setup() => path = FigureFiles.Find(Layers);

    [Benchmark]
    public int Measure() => Work.MeasureSymmetry(Work.ReadTree(path)).Count;
}
