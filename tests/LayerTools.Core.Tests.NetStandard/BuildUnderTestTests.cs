using System.Reflection;
using System.Runtime.Versioning;
using LayerTools.Model;
using Xunit;

namespace LayerTools.Tests;

public sealed class BuildUnderTestTests
{
    [Fact]
    public void TheseTestsRunAgainstTheNetStandardBuild() =>
        Assert.Equal(".NETStandard,Version=v2.0", typeof(Layer).Assembly.GetCustomAttribute<TargetFrameworkAttribute>()!.FrameworkName);
}
