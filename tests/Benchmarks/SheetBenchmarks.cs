using BenchmarkDotNet.Attributes;
using LayerTools.Model;

namespace LayerTools.Benchmarks;

/// <summary>A sheet of all parts, drawing, encoding and writing included.</summary>
[MemoryDiagnoser]
public class SheetBenchmarks
{
    private LayerFile file = null!;

    [Params("sheet.png", "sheet.pdf", "sheet.html")]
    public string Name { get; set; } = string.Empty;

    [GlobalSetup]
    public void ReadTree() => file = Work.ReadTree(FigureFiles.Find(100));

    [Benchmark]
    public long Write() => Work.WriteSheet(file, Name);
}
