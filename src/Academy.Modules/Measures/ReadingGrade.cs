using System.Globalization;
using System.Text.RegularExpressions;

namespace Academy.Modules.Measures;

/// <summary>How hard a text is to read, as a school grade.</summary>
/// <param name="Words">Runs of characters between white space that hold a letter or a digit; a hyphenated word is one.</param>
/// <param name="Sentences">A block of text has at least one; it ends with the block or with a full stop, question or exclamation mark.</param>
/// <param name="Syllables">Spoken syllables; a number counts one for each digit, a unit or sign one.</param>
/// <remarks>
/// Kincaid, Fishburne, Rogers and Chissom: "Derivation of new readability formulas for Navy enlisted personnel", Research Branch
/// Report 8-75, 1975: 0.39 x words per sentence + 11.8 x syllables per word - 15.59. It looks at lengths only and says nothing about
/// whether a text is clear or right.
/// </remarks>
public sealed partial record ReadingGrade(int Words, int Sentences, int Syllables)
{
    /// <summary>The grade; nought words have grade 0.</summary>
    public double Grade => Words == 0 ? 0 : (0.39 * Words / Sentences) + (11.8 * Syllables / Words) - 15.59;

    /// <summary>The measure of several blocks of text, each a paragraph or a list item.</summary>
    public static ReadingGrade Of(IEnumerable<string> blocks)
    {
        var words = 0;
        var sentences = 0;
        var syllables = 0;
        Dictionary<string, int> spoken = new(StringComparer.Ordinal);
        foreach (
            var found in blocks
                .Select(block => (Words: WordsOf(block), Sentences: SentencesOf(block)))
                .Where(found => found.Words is not [])
        )
        {
            words += found.Words.Count;
            sentences += found.Sentences;
            syllables += found.Words.Sum(Spoken);
        }
        return new(words, sentences, syllables);

        // Most words of a lesson come again and again.
        int Spoken(string word) => spoken.TryGetValue(word, out var known) ? known : spoken[word] = SyllablesOf(word);
    }

    /// <summary>The words of one block of text.</summary>
    public static IReadOnlyList<string> WordsOf(string block) =>
        [.. block.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Where(word => word.Any(char.IsLetterOrDigit))];

    /// <summary>The grade with one decimal, as findings print it.</summary>
    public override string ToString() => Grade.ToString("0.0", CultureInfo.InvariantCulture);

    private static int SentencesOf(string block) => Math.Max(1, SentenceEnd().Count(block));

    private static int SyllablesOf(string word) =>
        Math.Max(
            1,
            LettersOrDigit().Matches(word).Sum(part => char.IsDigit(part.Value[0]) ? 1 : Measures.Syllables.Of(part.Value))
        );

    // A full stop before a small letter belongs to an abbreviation.
    [GeneratedRegex("""[.!?…]+["'”’)\]*_]*(?=\s+[^\p{Ll}\s]|\s*$)""", RegexOptions.ExplicitCapture, Patience.Milliseconds)]
    private static partial Regex SentenceEnd();

    [GeneratedRegex("""\d|\p{L}+(['’]\p{L}+)*""", RegexOptions.ExplicitCapture, Patience.Milliseconds)]
    private static partial Regex LettersOrDigit();
}
