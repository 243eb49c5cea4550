using System.Globalization;
using System.Text;
using Academy.Competence;
using Academy.Competence.Salons;

namespace Academy.Web.Features.Thresholds;

/// <summary>Makes the stable code of a new skill from its name.</summary>
internal static class SkillCodes
{
    /// <summary>Words that are addresses of their own and so no skill's code.</summary>
    private static readonly string[] Addresses = ["new", "suggested"];

    /// <summary>The name in small letters with dashes; with a number behind it where it is taken.</summary>
    public static SkillCode For(string name, SalonBook book)
    {
        var plain = Plain(name);
        return Enumerable
            .Range(1, int.MaxValue)
            .Select(number => new SkillCode(number == 1 ? plain : $"{plain}-{number.ToString(CultureInfo.InvariantCulture)}"))
            .First(code => !Addresses.Contains(code.Value, StringComparer.Ordinal) && book.Find(code) is null);
    }

    private static string Plain(string name)
    {
        var letters = name.Normalize(NormalizationForm.FormD)
            .Where(letter => CharUnicodeInfo.GetUnicodeCategory(letter) != UnicodeCategory.NonSpacingMark)
            .Select(letter => char.IsAsciiLetterOrDigit(letter) ? char.ToLowerInvariant(letter) : ' ');
        var words = string.Concat(letters).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words.Length == 0 ? "skill" : string.Join('-', words);
    }
}
