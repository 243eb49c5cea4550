using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Facts;
using Academy.Competence.People;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using Academy.Competence.Thresholds;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Paths = Academy.Web.Features.Shared.Paths;

namespace Academy.Web.Features.Boards;

/// <summary>Everything that was read about one person and one skill.</summary>
/// <param name="Viewer">Who looks.</param>
/// <param name="Person">Whose standing.</param>
/// <param name="Skill">In what.</param>
/// <param name="Standing">Where she stands at the moment asked.</param>
/// <param name="Threshold">The rules it was read under.</param>
/// <param name="Facts">What the ledger holds about her, as known at that moment.</param>
/// <param name="Grooms">A page of the grooms behind it, and one more if there are more.</param>
/// <param name="Stops">Stops after critical incidents.</param>
/// <param name="IsPast">Whether the moment is past.</param>
public sealed record WhyFound(
    Person Viewer,
    Person Person,
    Skill Skill,
    Standing Standing,
    Threshold Threshold,
    IReadOnlyList<Recorded> Facts,
    IReadOnlyList<PathGroom> Grooms,
    IReadOnlyList<PathStop> Stops,
    bool IsPast
);

/// <summary>Why somebody stands where she stands: every rule, every groom, every decision.</summary>
/// <param name="Title">Who and what.</param>
/// <param name="Heading">The state of things.</param>
/// <param name="Standing">Its shape.</param>
/// <param name="Coat">The swatch, if the skill has one.</param>
/// <param name="Lead">What it means on the floor.</param>
/// <param name="AsOf">The moment and the version of the rules.</param>
/// <param name="IsPast">Whether the moment is past.</param>
/// <param name="Here">This page without a moment.</param>
/// <param name="Row">The row of marks; null where only modules are asked.</param>
/// <param name="Lacks">What would change it.</param>
/// <param name="Rules">Every rule with what it asks and what was found.</param>
/// <param name="Modules">The modules it asks for.</param>
/// <param name="Record">What the last rated grooms say.</param>
/// <param name="Rated">Those grooms as dots.</param>
/// <param name="History">Decisions, stops and versions, newest first.</param>
/// <param name="Grooms">The grooms behind it, newest first.</param>
/// <param name="Older">The way to older ones.</param>
/// <param name="Skills">The person's other skills.</param>
/// <param name="Decide">Where the owner decides on this person; null for everybody else.</param>
public sealed record WhyView(
    string Title,
    string Heading,
    string Standing,
    string? Coat,
    string Lead,
    string AsOf,
    bool IsPast,
    string Here,
    WhyRow? Row,
    IReadOnlyList<string> Lacks,
    IReadOnlyList<RuleWords> Rules,
    IReadOnlyList<WhyModule> Modules,
    string Record,
    IReadOnlyList<Dot> Rated,
    IReadOnlyList<WhyEvent> History,
    IReadOnlyList<WhyGroom> Grooms,
    string? Older,
    string Skills,
    string? Decide
)
{
    public static WhyView Of(WhyFound found, Names names)
    {
        var (standing, time) = (found.Standing, names.Time);
        var here = Paths.Why(found.Person.Id.Value, found.Skill.Code.Value);
        var shown = found.Grooms.Take(WhyQueries.PageSize).ToList();
        return new WhyView(
            $"{found.Person.Name}, {found.Skill.Name}",
            WhyWords.Heading(standing, names),
            Say.Shape(standing.Kind),
            CoatSwatch.Of(found.Skill),
            WhyWords.Lead(standing, found.Person, names),
            WhyWords.AsOf(found.Threshold, time),
            found.IsPast,
            here,
            found.Threshold.Row is { } row ? WhyRow.Of(standing, row) : null,
            [.. Say.CatchUps(standing, names), .. Say.Why(standing, names)],
            Say.Rules(standing, names),
            [
                .. standing
                    .Findings.OfType<KnowledgeFound>()
                    .SelectMany(all => all.Modules)
                    .Select(one => WhyModule.Of(one, names)),
            ],
            Say.Record(standing.Tally),
            [.. standing.Tally.Last.Select(rated => Say.Dot(rated, names))],
            WhyEvent.Of(found, names),
            [.. shown.Select(groom => WhyGroom.Of(groom, names))],
            found.Grooms.Count > shown.Count ? WhyWords.Older(here, shown[^1], found.IsPast ? time : null) : null,
            Paths.SkillsOf(found.Person.Id.Value),
            found.Viewer.Role == Role.Owner && !found.IsPast ? Paths.DecideOn(found.Person.Id.Value) : null
        );
    }
}

/// <summary>The row as stitches, and what it lets through in words.</summary>
public sealed record WhyRow(int Have, int Need, IReadOnlyList<string> Promise)
{
    internal static WhyRow Of(Standing standing, RowProfile row) =>
        new(standing.Tally.Row, row.MarksToFill, Say.Promise(row, RowPromise.Of(row)));
}

/// <summary>A module that the skill asks for.</summary>
public sealed record WhyModule(string Title, string Href, string State, string Mark, string? Passed, string? Due)
{
    internal static WhyModule Of(ModuleFound found, Names names) =>
        new(
            names.Of(found.Module),
            $"{Paths.Study}/{found.Module.Value}",
            found is { Holds: true, AsksToCatchUp: true } ? Say.CatchUpBy(found, names.Time) : Say.Word(found.State),
            found.Holds ? "holds" : "not-yet",
            found.PassedOn is { } passed ? names.Time.Date(passed) : null,
            found.DueOn is { } due ? names.Time.Date(due) : null
        );
}

/// <summary>A groom behind the standing.</summary>
public sealed record WhyGroom(string Day, string What, string Dog, string? Senior, string? Verdict, string? Href)
{
    internal static WhyGroom Of(PathGroom groom, Names names) =>
        new(
            names.Time.Date(groom.Day),
            Say.Word(groom.Kind),
            string.Join(", ", new[] { groom.Dog, groom.Breed }.Where(word => !string.IsNullOrEmpty(word))),
            groom.Senior is { } senior ? names.Of(new PersonId(senior)) : null,
            groom.Verdict is { } verdict ? Say.Word(verdict) : null,
            groom.Kind == StepKind.Elsewhere ? null : Paths.Groom(groom.Groom)
        );
}

/// <summary>Something that happened to the standing.</summary>
/// <param name="At">For the order.</param>
/// <param name="When">The day.</param>
/// <param name="What">What happened.</param>
/// <param name="Words">What was written.</param>
/// <param name="By">Who recorded it.</param>
/// <param name="IsBig">Whether it changed what she may do.</param>
/// <param name="Href">Where more of it stands.</param>
public sealed record WhyEvent(
    DateTimeOffset At,
    string When,
    string What,
    string? Words,
    string? By,
    bool IsBig,
    string? Href = null
)
{
    internal static IReadOnlyList<WhyEvent> Of(WhyFound found, Names names) =>
        [
            .. found
                .Facts.Where(told => WhyWords.SkillOf(told.Fact) == found.Skill.Code)
                .Select(told => Decided(told, names))
                .Concat(found.Stops.Select(stop => Stopped(stop, names)))
                .OrderByDescending(one => one.At),
        ];

    private static WhyEvent Decided(Recorded told, Names names) =>
        new(
            told.RecordedAt,
            names.Time.Day(told.RecordedAt),
            Say.Decision(told.Fact, names)!,
            WhyWords.WordsOf(told.Fact),
            told.By is { } by ? names.Of(by) : null,
            told.Fact is not (ClearanceRefused or WorkElsewhere)
        );

    private static WhyEvent Stopped(PathStop stop, Names names) =>
        new(
            stop.At,
            names.Time.Day(stop.At),
            WhyWords.Stopped(stop),
            Words: null,
            By: null,
            IsBig: true,
            Paths.Groom(stop.Groom)
        );
}
