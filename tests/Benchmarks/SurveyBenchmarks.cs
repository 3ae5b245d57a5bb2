using BenchmarkDotNet.Attributes;

namespace LayerTools.Benchmarks;

[MemoryDiagnoser]
public class SurveyBenchmarks
{
    private string path = string.Empty;

    [Params(100, 400)]
    public int Layers { get; set; }

    [GlobalSetup]
    public void Setup() => path = FigureFiles.Find(Layers);

    [Benchmark]
    public int Survey() => Work.Survey(Work.ReadTree(path)).Parts.Count;

    [Benchmark]
    public int AllChecks() => Work.Check(path).Count;
}
