#if !NET8_0_OR_GREATER
#pragma warning disable IDE0130 // The compiler looks for these under these names.

// PolySharp leaves out what a referenced assembly offers, and NJsonSchema's build for netstandard2.0 offers these, under an alias that the compiler does not look behind.
namespace System.Runtime.CompilerServices;

/// <summary>Marks setters that only an initializer may call.</summary>
internal static class IsExternalInit
{
}

/// <summary>Marks members that an initializer has to set.</summary>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Struct | AttributeTargets.Field | AttributeTargets.Property, Inherited = false)]
internal sealed class RequiredMemberAttribute : Attribute
{
}

/// <summary>Keeps compilers away that do not know a feature.</summary>
[AttributeUsage(AttributeTargets.All, AllowMultiple = true, Inherited = false)]
internal sealed class CompilerFeatureRequiredAttribute(string featureName) : Attribute
{
    public string FeatureName { get; } = featureName;

    public bool IsOptional { get; init; }
}
#endif
