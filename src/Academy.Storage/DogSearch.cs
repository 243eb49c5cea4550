using System.Globalization;
using System.Text;

namespace Academy.Storage;

/// <summary>Names as a search compares them: lower case, no accents, one space between words.</summary>
public static class DogSearch
{
    public static string Folded(string text)
    {
        var plain = text.Normalize(NormalizationForm.FormD)
            .Where(letter => CharUnicodeInfo.GetUnicodeCategory(letter) != UnicodeCategory.NonSpacingMark)
            .Select(letter => char.IsLetterOrDigit(letter) ? char.ToLowerInvariant(letter) : ' ');
        return string.Join(' ', string.Concat(plain).Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }
}
