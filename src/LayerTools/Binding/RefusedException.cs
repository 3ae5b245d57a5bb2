using System.Management.Automation;

namespace LayerTools.Binding;

/// <summary>Carries an error record up to the place that goes on with the next item.</summary>
internal sealed class RefusedException(ErrorRecord record) : Exception(record.Exception.Message, record.Exception)
{
    public ErrorRecord Record { get; } = record;
}
