using BenchmarkDotNet.Running;
using LayerTools.Benchmarks;

if (args is ["compare", var path]) Comparison.Print(Path.GetFullPath(path));
else BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
