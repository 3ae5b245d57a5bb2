using System.Management.Automation;
using LayerTools.Errors;
using LayerTools.Profiles;

namespace LayerTools.Binding;

/// <summary>Lets a profile be given as such, as the path of its file, or by the name of one that ships with the module.</summary>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class LayerProfileArgumentAttribute : ArgumentTransformationAttribute
{
    /// <inheritdoc/>
    public override object Transform(EngineIntrinsics engineIntrinsics, object inputData)
    {
        try
        {
            return (inputData is PSObject wrapped ? wrapped.BaseObject : inputData) switch
            {
                string reference => ProfileReference.Find(engineIntrinsics.SessionState, reference),
                FileInfo file => LayerProfiles.Read(file.FullName),
                // The shell refuses what is no profile in its own words.
                var other => other!,
            };
        }
        catch (LayeredFileException error)
        {
            throw new ArgumentTransformationMetadataException(error.Message, error);
        }
        catch (RefusedException refused)
        {
            throw new ArgumentTransformationMetadataException(refused.Message, refused.Record.Exception);
        }
    }
}
