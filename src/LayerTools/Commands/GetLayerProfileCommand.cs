using System.Management.Automation;
using LayerTools.Binding;
using LayerTools.Completion;
using LayerTools.Profiles;

namespace LayerTools.Commands;

/// <summary>Reads profiles; without a choice, lists those that ship with the module.</summary>
[Cmdlet(VerbsCommon.Get, "LayerProfile")]
[OutputType(typeof(LayerProfile))]
public sealed class GetLayerProfileCommand : LayerToolsCommand
{
    /// <summary>Names of shipped profiles, paths of profiles' files, or files; wildcards are allowed.</summary>
    [Parameter(Position = 0, ValueFromPipeline = true)]
    [ValidateNotNullOrEmpty]
    [SupportsWildcards]
    [ArgumentCompleter(typeof(LayerProfileCompleter))]
    public object[]? Profile { get; set; }

    /// <inheritdoc/>
    protected override void ProcessRecord()
    {
        if (Profile is null)
        {
            WriteObject(LayerProfiles.Shipped, enumerateCollection: true);
            return;
        }

        foreach (var value in Profile)
        {
            Try(value, () =>
            {
                foreach (var reference in ProfileReference.FindAll(this, value)) Try(reference.Path, () => WriteObject(reference.Read()));
            });
        }
    }
}
