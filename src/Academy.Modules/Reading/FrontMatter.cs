using Academy.Competence;
using Academy.Competence.Quizzes;
using YamlDotNet.RepresentationModel;

namespace Academy.Modules.Reading;

/// <summary>What the front matter of a module file says, with the lines that later checks point at.</summary>
internal sealed record FrontMatter(
    Module Module,
    IReadOnlyDictionary<string, int> AimLines,
    IReadOnlyDictionary<int, int> SourceLines,
    int TitleLine
)
{
    /// <summary>The front matter, or null where it is broken; hash and questions are still empty.</summary>
    public static FrontMatter? Of(string block, string folder, Findings findings)
    {
        if (YamlBlock.Of(block, findings) is not { } keys)
            return null;
        Fields fields = new(keys, findings);
        Dictionary<string, int> aimLines = new(StringComparer.Ordinal);
        Dictionary<int, int> sourceLines = [];
        Module module = new()
        {
            Name = new(Name(fields, folder, findings)),
            Title = fields.Text("title"),
            Summary = fields.Text("summary"),
            Minutes = fields.Number("minutes", 1, 90),
            Edition = fields.Number("edition", 1, 9999),
            SafetyCriticalSince = fields.Number("safety-critical-since", 1, 9999),
            Hash = "",
            Opens = [.. fields.List("opens").Select(skill => Skill(skill, findings))],
            ReviewedOn = fields.Day("reviewed"),
            ReviewDueOn = fields.Day("review-due"),
            RefresherDays = fields.Number("refresher-days", 7, 180),
            RenewedEachSpring = fields.FlagOrNo("renewed-each-spring"),
            CatchUpDays = fields.NumberOrNone("catch-up-days", 1, Publishing.LongestCatchUp),
            Aims = [.. fields.List("aims").Select(aim => Aim(aim, aimLines, findings))],
            Sources = [.. fields.List("sources").Select(source => Source(source, sourceLines, findings)).OfType<Source>()],
            Questions = [],
        };
        fields.RefuseOthers();
        CheckAgainstEachOther(module, fields, findings);
        return findings.AnyBroken ? null : new(module, aimLines, sourceLines, fields.LineOf("title"));
    }

    private static string Name(Fields fields, string folder, Findings findings)
    {
        var name = fields.Text("name");
        if (!Slug.Is(name))
            findings.Broken(fields.LineOf("name"), $"\"name\" has to be {Slug.Words}.");
        else if (name != folder)
            findings.Broken(fields.LineOf("name"), $"The name is \"{name}\" but the folder is \"{folder}\". Make them the same.");
        return name;
    }

    private static SkillCode Skill(YamlNode skill, Findings findings)
    {
        var code = (skill as YamlScalarNode)?.Value ?? "";
        if (!Slug.Is(code))
            findings.Broken(YamlBlock.FileLine(skill.Start), $"A skill under \"opens\" has to be its code: {Slug.Words}.");
        return new(code);
    }

    private static Aim Aim(YamlNode aim, Dictionary<string, int> lines, Findings findings)
    {
        var line = YamlBlock.FileLine(aim.Start);
        if (
            aim is not YamlMappingNode { Children: { Count: 1 } pair }
            || pair[0] is not { Key: YamlScalarNode { Value: { } code }, Value: YamlScalarNode { Value: { Length: > 0 } text } }
            || !Slug.Is(code)
        )
        {
            findings.Broken(
                line,
                "An aim has to be a short name, a colon and what somebody can do: \"- signs: Say which signs mean stop now\"."
            );
            return new("", "");
        }
        if (!lines.TryAdd(code, line))
            findings.Broken(line, $"The aim \"{code}\" is there twice. Give each its own short name.");
        return new(code, text.Trim());
    }

    private static Source? Source(YamlNode source, Dictionary<int, int> lines, Findings findings)
    {
        var line = YamlBlock.FileLine(source.Start);
        if (source is not YamlMappingNode keys)
        {
            findings.Broken(line, "A source has to have the keys id, organisation, title, year and link.");
            return null;
        }
        Fields fields = new(keys, findings);
        Source read = new(
            fields.Number("id", 1, 999),
            fields.Text("organisation"),
            fields.Text("title"),
            fields.Number("year", 1800, 2200),
            fields.Text("link")
        );
        fields.RefuseOthers();
        if (!lines.TryAdd(read.Id, line))
            findings.Broken(line, $"The source number {read.Id} is there twice. Give each source its own number.");
        if (!WebAddress.IsPublic(read.Link))
            findings.Broken(line, $"The link of source {read.Id} has to be a whole address that begins with https://.");
        return read;
    }

    private static void CheckAgainstEachOther(Module module, Fields fields, Findings findings)
    {
        if (module.SafetyCriticalSince > module.Edition)
            findings.Broken(
                fields.LineOf("safety-critical-since"),
                $"\"safety-critical-since\" is {module.SafetyCriticalSince}, but the edition is only {module.Edition}. It cannot be newer than the edition."
            );
        if (!findings.AnyBroken && module is { CatchUpDays: not null, SafetyCriticalSince: 1 })
            findings.Hint(
                fields.LineOf("catch-up-days"),
                "\"catch-up-days\" says nothing here: the first edition is a safety change for nobody. Take it out, or raise \"safety-critical-since\"."
            );
        if (module.ReviewDueOn <= module.ReviewedOn && fields.Has("review-due"))
            findings.Fault(fields.LineOf("review-due"), "\"review-due\" has to be a later day than \"reviewed\".");
    }
}
