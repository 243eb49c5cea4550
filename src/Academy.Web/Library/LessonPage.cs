using System.Text.Encodings.Web;
using System.Text.RegularExpressions;
using Academy.Modules;

namespace Academy.Web.Library;

/// <summary>Puts a lesson's HTML into a page: its own addresses where the portal is mounted, pictures by their edition.</summary>
public static partial class LessonPage
{
    private const int LettersOfVersion = 16;

    /// <summary>What is added to the address of a picture, so that a browser may keep it for as long as it likes.</summary>
    public static string VersionOf(Lesson lesson) => lesson.Module.Hash[..LettersOfVersion];

    public static string Of(Lesson lesson, PathString mounted) => Put(lesson.Html, lesson, mounted);

    /// <summary>A lesson that is being written: each of its pictures is the one that lies beside the draft now.</summary>
    public static string OfDraft(string html, PathString mounted, Func<string, string> addressOf) =>
        Picture()
            .Replace(
                Mounted(html, mounted),
                picture =>
                    $" src=\"{HtmlEncoder.Default.Encode(mounted + addressOf(picture.Value[(picture.Value.LastIndexOf('/') + 1)..^1]))}\""
            );

    public static string Sources(Lesson lesson, PathString mounted) => Put(lesson.SourcesHtml, lesson, mounted);

    public static string Explanation(Lesson lesson, string question, PathString mounted) =>
        lesson.Explanations.TryGetValue(question, out var html) ? Put(html, lesson, mounted) : "";

    // The HTML was written by the gate, which quotes and escapes: an attribute looks like this and text never does.
    private static string Put(string html, Lesson lesson, PathString mounted) =>
        Picture().Replace(Mounted(html, mounted), picture => $"{picture.Value[..^1]}?v={VersionOf(lesson)}\"");

    private static string Mounted(string html, PathString mounted) =>
        OwnAddress().Replace(html, address => $"{address.Groups["name"].Value}\"{mounted}/");

    [GeneratedRegex(
        """(?<name> (?:href|src)=)"/(?!/)""",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000
    )]
    private static partial Regex OwnAddress();

    [GeneratedRegex(
        """ src="[^"?]*/modules/[^"?]*"(?= )""",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 1000
    )]
    private static partial Regex Picture();
}
