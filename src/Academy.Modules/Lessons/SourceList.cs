using System.Globalization;
using System.Net;
using Academy.Competence;
using Academy.Competence.Quizzes;

namespace Academy.Modules.Lessons;

/// <summary>Writes the numbered sources that the marks of a lesson point at.</summary>
internal static class SourceList
{
    public static string IdOf(int source) => string.Create(CultureInfo.InvariantCulture, $"source-{source}");

    public static string Html(Listed<Source> sources) =>
        $"""<h2 id="sources">Sources</h2><ol class="sources">{string.Concat(sources.OrderBy(source => source.Id).Select(Item))}</ol>""";

    private static string Item(Source source) => $"""<li id="{IdOf(source.Id)}" value="{source.Id}">{Words(source)}</li>""";

    private static string Words(Source source) =>
        $"""{Encoded(source.Organisation)}: <cite>{Encoded(source.Title)}</cite>, {source.Year}. <a href="{Encoded(source.Link)}">{Encoded(Shown(source.Link))}</a>""";

    private static string Shown(string link) => link[(link.IndexOf("://", StringComparison.Ordinal) + 3)..].TrimEnd('/');

    private static string Encoded(string text) => WebUtility.HtmlEncode(text);
}
