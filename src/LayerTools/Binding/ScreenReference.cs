using System.Globalization;
using System.Text.RegularExpressions;
using LayerTools.Profiles;

namespace LayerTools.Binding;

/// <summary>Finds the screen that a user means.</summary>
internal static class ScreenReference
{
    private const int LargestSide = 16384;

    private static readonly Regex Size = new(@"^\s*(\d{1,5})\s*[x×]\s*(\d{1,5})\s*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase, TimeSpan.FromSeconds(1));

    /// <summary>The screens that are named, or those of the profile.</summary>
    /// <param name="texts">Names of the profile's screens, or sizes such as 1920x1080; null for all screens of the profile.</param>
    /// <param name="profile">The profile.</param>
    /// <exception cref="RefusedException">There is no such screen.</exception>
    public static IReadOnlyList<ScreenSize> FindAll(string[]? texts, LayerProfile profile) => texts is null ? profile.Screens : texts.Select(text => Find(text, profile)).ToList();

    private static ScreenSize Find(string text, LayerProfile profile)
    {
        if (profile.Screens.FirstOrDefault(screen => string.Equals(screen.Name, text.Trim(), StringComparison.OrdinalIgnoreCase)) is { } named) return named;
        var match = Size.Match(text);
        if (match.Success && ToSide(match.Groups[1].Value) is { } width && ToSide(match.Groups[2].Value) is { } height) return new ScreenSize(Views.DescribeSize(width, height), width, height);
        var names = string.Join(", ", profile.Screens.Select(screen => $"'{screen.Name}'"));
        throw new RefusedException(ErrorRecords.BadArgument("NoSuchScreen",
            $"'{text}' is no screen. Give a size of at most {LargestSide.ToString(CultureInfo.InvariantCulture)} px a side, such as 1920x1080, or the name of a screen of the profile '{profile.Name}': {names}.", text));
    }

    private static int? ToSide(string digits) => int.Parse(digits, CultureInfo.InvariantCulture) is var side and >= 1 and <= LargestSide ? side : null;
}
