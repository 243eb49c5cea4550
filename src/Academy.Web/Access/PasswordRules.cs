using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Academy.Web.Access;

/// <summary>
/// Says why a password is one that somebody would try: too short, or made of little else than words, runs and repetitions that
/// anybody would begin with, among them the names of the salon and of the person. No mix of kinds of characters is asked for.
/// </summary>
/// <remarks>
/// Length and block list after NIST SP 800-63B-4 and OWASP ASVS 5.0.0, V6.2; each code point counts one. The list is our own:
/// instead of naming whole passwords it names their parts, and a password must have something of its own beside them.
/// </remarks>
public static partial class PasswordRules
{
    /// <summary>So many characters must be left when everything that anybody would try is taken away.</summary>
    public const int OwnCharacters = 8;

    private const int ShortestRun = 4;
    private const int ShortestWord = 3;
    private const int FewCharacters = 5;
    private const string Disguises = "0134578@$!|€";
    private const string Meant = "oieastbasiie";

    private static readonly string[] Rows =
    [
        "abcdefghijklmnopqrstuvwxyz",
        "01234567890",
        "qwertyuiop",
        "asdfghjkl",
        "zxcvbnm",
        "qwertzuiop",
        "yxcvbnm",
        "azertyuiop",
        "qsdfghjklm",
        "wxcvbn",
        "1qaz2wsx3edc4rfv5tgb6yhn7ujm",
        "!@#$%^&*()+",
        "!\"£$%^&*()+",
        "!\"§$%&/()=",
    ];

    private static readonly string[] Runs = [.. Rows, .. Rows.Select(Reversed)];

    private static readonly string[] Blocked = Read();

    /// <summary>What is against this password, each as a sentence; nothing when it may be taken.</summary>
    /// <param name="password">Exactly as typed.</param>
    /// <param name="about">Names that somebody would try: of the salon, of the person, to sign in with.</param>
    public static IEnumerable<string> Against(string password, params IEnumerable<string> about)
    {
        var length = password.EnumerateRunes().Count();
        if (length < Passwords.Shortest)
            yield return $"Password: at least {Passwords.Shortest} characters, this one has {length}. A few words in a row do well";
        else if (password.Length > Passwords.Longest)
            yield return $"Password: at most {Passwords.Longest} characters";
        else if (password.EnumerateRunes().Distinct().Count() < FewCharacters || Repeats(Folded(password)))
            yield return "Password: this one says the same few characters again and again. Take words of your own";
        else if (Own(password, about) < OwnCharacters)
            yield return "Password: this one is made of names, words or rows of keys that anybody would try first. Add words of your own";
    }

    private static bool Repeats(string folded) =>
        Enumerable
            .Range(1, Math.Min(folded.Length / 2, 2 * OwnCharacters))
            .Any(unit => folded.Where((c, at) => c != folded[at % unit]).Count() <= unit / 4);

    private static int Own(string password, IEnumerable<string> about)
    {
        var words = about
            .SelectMany(Words)
            .Concat(Blocked)
            .Distinct(StringComparer.Ordinal)
            .OrderByDescending(word => word.Length)
            .ToList();
        return new[] { Folded(password), DigitsAsLetters(Folded(password)) }.Min(folded => Left(folded, words));
    }

    // How much is left when days, words and runs are cut out, the longest words first.
    private static int Left(string folded, List<string> words)
    {
        var rest = words.Aggregate(
            Days().Replace(folded, " "),
            (text, word) => text.Replace(word, " ", StringComparison.Ordinal)
        );
        return WithoutRuns(rest).EnumerateRunes().Count(rune => rune.Value != ' ');
    }

    private static string WithoutRuns(string text)
    {
        var left = new StringBuilder();
        for (var at = 0; at < text.Length; )
        {
            var run = RunAt(text, at);
            left.Append(run < ShortestRun ? text[at] : ' ');
            at += run < ShortestRun ? 1 : run;
        }
        return left.ToString();
    }

    private static int RunAt(string text, int at) =>
        Enumerable
            .Range(ShortestRun, Math.Max(0, Math.Min(text.Length - at, 26) - ShortestRun + 1))
            .TakeWhile(length => IsRun(text.AsSpan(at, length)))
            .LastOrDefault();

    private static bool IsRun(ReadOnlySpan<char> part)
    {
        if (!part.ContainsAnyExcept(part[0]))
            return true;
        foreach (var run in Runs)
            if (run.AsSpan().IndexOf(part, StringComparison.Ordinal) >= 0)
                return true;
        return false;
    }

    private static IEnumerable<string> Words(string name) =>
        name.Split([' ', '-', '_', '.', ',', '@', '\'', '’'], StringSplitOptions.RemoveEmptyEntries)
            .Append(name)
            .Select(Folded)
            .Where(word => word.Length >= ShortestWord);

    // Lower case, no accents, and nothing of what people put between words.
    private static string Folded(string text) =>
        string.Concat(
            text.Normalize(NormalizationForm.FormKD)
                .Where(c => CharUnicodeInfo.GetUnicodeCategory(c) is not UnicodeCategory.NonSpacingMark)
                .Where(c => !char.IsWhiteSpace(c) && !"-_.,'".Contains(c))
                .Select(char.ToLowerInvariant)
        );

    private static string DigitsAsLetters(string folded) =>
        string.Concat(folded.Select(c => Disguises.IndexOf(c) is >= 0 and var at ? Meant[at] : c));

    [GeneratedRegex(
        "(0[1-9]|[12][0-9]|3[01])?(0[1-9]|1[0-2])?(19|20)[0-9]{2}(0[1-9]|1[0-2])?(0[1-9]|[12][0-9]|3[01])?",
        RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Days();

    private static string Reversed(string row) => string.Concat(row.Reverse());

    private static string[] Read()
    {
        using var file = typeof(PasswordRules).Assembly.GetManifestResourceStream("blocked-passwords.txt")!;
        using var lines = new StreamReader(file);
        return
        [
            .. lines
                .ReadToEnd()
                .Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
                .Where(line => !line.StartsWith('#'))
                .SelectMany(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
                .Select(Folded),
        ];
    }
}
