using System.Text.RegularExpressions;

namespace Academy.Web.Tests.Wording;

/// <summary>What no word of the portal says: a person is never failed, refused or praised by a machine, and has no gender to it.</summary>
internal static partial class Plain
{
    public static void Check(string words)
    {
        Assert.DoesNotMatch(Unwanted(), words);
        // The tongue is not a colour code: skin may be red, people may not.
        Assert.DoesNotMatch(Colours(), words.Replace("red or sore skin", "", StringComparison.OrdinalIgnoreCase));
        // A bare percentage says nothing of small numbers; humidity is measured in percent.
        Assert.DoesNotContain("%", words.Replace("100 % humidity", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [GeneratedRegex(
        @"\b(fail\w*|denied|unauthori[sz]ed|forbidden|insufficient|invalid|incompetent|error|sorry|oops|great|excellent|well done|congratulations|proud|he|she|his|her|hers|him|himself|herself|users?|rank\w*|stars?|expired|coming soon)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture
    )]
    private static partial Regex Unwanted();

    [GeneratedRegex(
        @"\b(red|amber|green)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture
    )]
    private static partial Regex Colours();
}
