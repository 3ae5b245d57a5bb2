using LayerTools.Errors;
using LayerTools.Names;
using Xunit;

namespace LayerTools.Tests.Names;

public sealed class PrintableTextTests
{
    [Theory]
    [InlineData("Arm L", "Arm L")]
    [InlineData("左腕 é 😀", "左腕 é 😀")]
    [InlineData("\u001b[31mred", "␛[31mred")]
    [InlineData("a\tb\r\nc\0", "a␉b␍␊c␀")]
    [InlineData("\u007f\u009b", "␡\ufffd")]
    [InlineData("evil\u202egpj", "evil\ufffdgpj")]
    [InlineData("עין שמאל", "עין שמאל")]
    [InlineData(null, "")]
    public void Nothing_in_a_name_steers_a_terminal(string? text, string expected) => Assert.Equal(expected, PrintableText.Of(text));

    [Fact]
    public void Errors_are_printable_whatever_a_layer_is_called()
    {
        var error = new LayeredFileException(LayeredFileErrorKind.Damaged, "a.psd", "layer '\u001b]0;x\u0007'", 5, "It is damaged.", "Restore it.");
        Assert.DoesNotContain(error.Message, char.IsControl);
    }
}
