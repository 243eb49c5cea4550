using System.Globalization;
using Academy.Modules.Pictures;
using Academy.Modules.Reading;
using Markdig.Extensions.Alerts;
using Markdig.Extensions.Tables;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace Academy.Modules.Lessons;

/// <summary>Looks through a parsed text, takes out what may not reach a page, and dresses the rest for it.</summary>
internal sealed class LessonTree(
    string module,
    IReadOnlyDictionary<string, Picture> pictures,
    IReadOnlySet<int> sources,
    Findings findings
)
{
    private readonly HashSet<string> _shown = new(StringComparer.Ordinal);
    private readonly HashSet<int> _cited = [];
    private readonly HashSet<string> _ids = new(StringComparer.Ordinal);
    private readonly List<Part> _parts = [];

    public IReadOnlySet<string> Shown => _shown;

    public IReadOnlySet<int> Cited => _cited;

    public IReadOnlyList<Part> Parts => _parts;

    public void Prepare(MarkdownDocument document)
    {
        foreach (var definition in document.Descendants<LinkReferenceDefinition>().ToArray())
            findings.Fault(
                definition.Line + 1,
                "A link is defined on a line of its own. Write it where it is used: [words](https://...)."
            );
        foreach (var heading in document.Descendants<HeadingBlock>())
            Name(heading);
        foreach (var table in document.Descendants<Table>())
            Align(table);
        foreach (
            var box in document.Descendants<AlertBlock>().Where(box => !CautionRenderer.Kinds.ContainsKey(box.Kind.ToString()))
        )
            findings.Fault(box.Line + 1, $"[!{box.Kind}] is not known. Write [!CAUTION] or [!NOTE].");
        foreach (var inline in document.Descendants<Inline>().ToArray())
            Prepare(inline);
    }

    private void Prepare(Inline inline)
    {
        switch (inline)
        {
            case LinkInline { IsImage: true } image:
                Show(image);
                break;
            case LinkInline link when !WebAddress.IsAllowed(link.Url ?? ""):
                findings.Fault(link.Line + 1, $"The link to \"{link.Url}\" is taken out. A link begins with https://, / or #.");
                link.ReplaceBy(new ContainerInline(), copyChildren: true);
                break;
            case LinkInline link:
                // Words that only a mouse can show belong into the text.
                link.Title = null;
                break;
            case AutolinkInline link when link.IsEmail || !WebAddress.IsPublic(link.Url):
                findings.Fault(link.Line + 1, $"The link to \"{link.Url}\" is taken out. A link begins with https://, / or #.");
                link.ReplaceBy(new LiteralInline(link.Url));
                break;
            case SourceMark mark:
                Cite(mark);
                break;
            case LiteralInline literal when literal.Content.AsSpan().Contains('['):
                findings.Fault(LineOf(literal), "A square bracket is left over. They are for [1], [common practice] and links.");
                break;
        }
    }

    // A bracket that came to nothing has lost its own line; its paragraph has not.
    private static int LineOf(Inline inline)
    {
        var root = inline.Parent;
        while (root is { Parent: { } parent })
            root = parent;
        return Math.Max(inline.Line, root?.ParentBlock?.Line ?? 0) + 1;
    }

    private void Show(LinkInline image)
    {
        var file = image.Url ?? "";
        var alternative = PlainText.Of(image);
        if (alternative.Length == 0)
            findings.Fault(
                image.Line + 1,
                $"The picture \"{file}\" has no words for those who cannot see it. Write them: ![words]({file})."
            );
        _shown.Add(file);
        if (pictures.TryGetValue(file, out var picture))
        {
            Dress(image, picture);
            return;
        }
        findings.Fault(
            image.Line + 1,
            $"The picture \"{file}\" is left out: no sound picture of that name lies beside the text."
        );
        image.ReplaceBy(new LiteralInline(alternative));
    }

    private void Dress(LinkInline image, Picture picture)
    {
        image.Url = $"/modules/{module}/{picture.File}";
        image.GetDynamicUrl = null;
        image.Title = null;
        var attributes = image.GetAttributes();
        attributes.AddClass("picture");
        attributes.AddProperty("width", picture.Width.ToString(CultureInfo.InvariantCulture));
        attributes.AddProperty("height", picture.Height.ToString(CultureInfo.InvariantCulture));
        attributes.AddProperty("loading", "lazy");
    }

    private void Cite(SourceMark mark)
    {
        _cited.Add(mark.Source);
        if (sources.Contains(mark.Source))
            return;
        findings.Fault(
            mark.Line + 1,
            $"Source [{mark.Source}] is not in the front matter. Add it under \"sources\" or correct the number."
        );
        mark.ReplaceBy(new LiteralInline(string.Create(CultureInfo.InvariantCulture, $"[{mark.Source}]")));
    }

    private void Name(HeadingBlock heading)
    {
        var title = PlainText.Of(heading.Inline);
        if (heading.Level is < 2 or > 3)
            findings.Fault(heading.Line + 1, "Headings inside a lesson have two or three number signs: \"## \" or \"### \".");
        heading.Level = Math.Clamp(heading.Level, 2, 3);
        var slug = $"part-{Slug.Of(title)}";
        var id = Enumerable.Range(1, _ids.Count + 1).Select(number => number == 1 ? slug : $"{slug}-{number}").First(_ids.Add);
        heading.GetAttributes().Id = id;
        if (heading.Level == 2)
            _parts.Add(new(id, title));
    }

    // Alignment would be written as a style, which no page of the portal lets through; a class says the same.
    private static void Align(Table table)
    {
        foreach (var row in table.OfType<TableRow>())
        {
            foreach (var (column, cell) in row.OfType<TableCell>().Index())
            {
                if (row.IsHeader)
                    cell.GetAttributes().AddProperty("scope", "col");
                if (
                    column < table.ColumnDefinitions.Count
                    && table.ColumnDefinitions[column].Alignment is { } side and not TableColumnAlign.Left
                )
                    cell.GetAttributes().AddClass(side == TableColumnAlign.Right ? "ta-right" : "ta-center");
            }
        }
        foreach (var column in table.ColumnDefinitions)
            column.Alignment = null;
    }
}
