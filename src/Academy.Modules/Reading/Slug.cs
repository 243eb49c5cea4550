using System.Text;
using System.Text.RegularExpressions;

namespace Academy.Modules.Reading;

/// <summary>Short stable names: small letters, digits and single hyphens.</summary>
internal static partial class Slug
{
    public const string Words = "small letters a to z, digits and single hyphens, such as heat-stroke";

    public static bool Is(string text) => text.Length <= 60 && Pattern().IsMatch(text);

    /// <summary>A slug made of a heading's words.</summary>
    public static string Of(string text)
    {
        StringBuilder slug = new();
        foreach (var letter in text.ToLowerInvariant().Normalize(NormalizationForm.FormD))
        {
            if (char.IsAsciiLetterOrDigit(letter))
                slug.Append(letter);
            else if (char.IsWhiteSpace(letter) && slug.Length > 0 && slug[^1] != '-')
                slug.Append('-');
        }
        return slug.ToString().Trim('-');
    }

    [GeneratedRegex(@"^[a-z0-9]+(-[a-z0-9]+)*\z", RegexOptions.ExplicitCapture, Patience.Milliseconds)]
    private static partial Regex Pattern();
}
