using System.Globalization;
using System.Text;

namespace Academy.Competence.Dogs;

/// <summary>Names as they are compared: lower case, without accents, words apart by one space.</summary>
internal static class SearchText
{
    /// <summary>The text without case, accents and punctuation: "St. Bernard" is "st bernard".</summary>
    public static string Folded(string text)
    {
        var letters = text.Normalize(NormalizationForm.FormD).Where(letter => !IsAccent(letter));
        var spaced = string.Concat(letters.Select(letter => char.IsLetterOrDigit(letter) ? char.ToLowerInvariant(letter) : ' '));
        return string.Join(' ', spaced.Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }

    private static bool IsAccent(char letter) => CharUnicodeInfo.GetUnicodeCategory(letter) == UnicodeCategory.NonSpacingMark;
}
