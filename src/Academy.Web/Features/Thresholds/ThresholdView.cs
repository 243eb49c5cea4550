using Academy.Competence;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using Academy.Competence.Thresholds;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Thresholds;

/// <summary>Every skill with its rules in words.</summary>
public sealed record ThresholdsView(IReadOnlyList<ThresholdGroup> Groups)
{
    internal static ThresholdsView Of(SalonBook book, DateOnly today) =>
        new([
            .. from skill in book.Skills
            where !skill.IsRetired
            group ThresholdLine.Of(skill, book.ThresholdOn(skill.Code, today)) by skill.Kind into lines
            orderby lines.Key
            select new ThresholdGroup(lines.Key.ToString().ToLowerInvariant(), Say.Group(lines.Key), [.. lines]),
        ]);
}

/// <summary>Coats, techniques or hazards.</summary>
public sealed record ThresholdGroup(string Id, string Caption, IReadOnlyList<ThresholdLine> Lines);

/// <summary>One skill and its rules.</summary>
public sealed record ThresholdLine(string Name, string? Coat, string Href, string Rules, string Version)
{
    internal static ThresholdLine Of(Skill skill, Threshold now) =>
        new(
            skill.Name,
            CoatSwatch.Of(skill),
            Paths.Threshold(skill.Code.Value),
            string.Join("; ", ThresholdWords.Lines(now)),
            $"version {now.Version}"
        );
}

/// <summary>One skill's rules, now and before.</summary>
public sealed record ThresholdView(
    string Name,
    string Heading,
    string? Coat,
    IReadOnlyList<string> Rules,
    string Modules,
    string Skill,
    int NextVersion,
    IReadOnlyList<ThresholdVersion> Versions
)
{
    internal static ThresholdView Of(Skill skill, SalonBook book, Names names)
    {
        var now = book.ThresholdOn(skill.Code, names.Time.Today);
        return new ThresholdView(
            skill.Name,
            ThresholdWords.Heading(skill, now),
            CoatSwatch.Of(skill),
            ThresholdWords.Lines(now),
            skill.Modules.IsEmpty ? "no module" : Counts.And([.. skill.Modules.Select(names.Of)]),
            Paths.Skill(skill.Code.Value),
            book.NextVersionOf(skill.Code),
            [
                .. book
                    .Thresholds.Where(set => set.Skill == skill.Code)
                    .Reverse()
                    .Select(set => ThresholdVersion.Of(set, isNow: set.Version == now.Version, names)),
            ]
        );
    }
}

/// <summary>One version of them.</summary>
public sealed record ThresholdVersion(string From, string Rules, bool IsNow)
{
    internal static ThresholdVersion Of(Threshold set, bool isNow, Names names) =>
        new($"Version {set.Version}, from {names.Time.Date(set.FromDay)}", string.Join("; ", ThresholdWords.Lines(set)), isNow);
}

/// <summary>What a threshold lets through, and whom it would change today: shown before it is saved.</summary>
/// <param name="Rules">Its rules in words.</param>
/// <param name="Promise">What its row lets through; none where only modules are asked.</param>
/// <param name="Warning">What must be said of a short row.</param>
/// <param name="Loses">Who would be alone no longer.</param>
/// <param name="Others">Whose standing would change otherwise.</param>
public sealed record ThresholdPreview(
    IReadOnlyList<string> Rules,
    IReadOnlyList<string> Promise,
    string? Warning,
    IReadOnlyList<string> Loses,
    IReadOnlyList<string> Others
)
{
    internal static ThresholdPreview Of(Threshold asked, Team now, Team then, Names names)
    {
        var changes = StandingChange.Between(now, then);
        return new ThresholdPreview(
            ThresholdWords.Lines(asked),
            asked.Row is { } row ? Say.Promise(row, RowPromise.Of(row)) : [],
            asked.Row is { } warned ? ThresholdWords.Warning(warned) : null,
            [.. changes.Where(change => change.Loses).Select(change => ThresholdWords.Change(change, names))],
            [.. changes.Where(change => !change.Loses).Select(change => ThresholdWords.Change(change, names))]
        );
    }
}
