using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Standings;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Decisions;

/// <summary>What waits for the owner beside the standings.</summary>
public sealed record Waiting(
    IReadOnlyList<FlaggedGroom> Flagged,
    IReadOnlyList<OpenReview> Reviews,
    IReadOnlyList<OpenDispute> Disputes
);

/// <summary>What waits for the owner's decision, and what soon will.</summary>
/// <param name="Heading">The state of things.</param>
/// <param name="Ready">Who is ready, in what.</param>
/// <param name="Soon">Who is alone and soon will not be.</param>
/// <param name="Stuck">Whose row is not full after 50 rated grooms: a talk is due.</param>
/// <param name="Stopped">Who is stood down or to be checked.</param>
/// <param name="Exceptions">Who is alone against the rules.</param>
/// <param name="Reviews">Incidents that wait for a review.</param>
/// <param name="Disputes">Disputes that wait for an answer.</param>
/// <param name="Flagged">Grooms done alone by somebody who was not alone for them, not spoken about yet.</param>
public sealed record DecideView(
    string Heading,
    IReadOnlyList<ReadyPerson> Ready,
    IReadOnlyList<StandingLine> Soon,
    IReadOnlyList<StandingLine> Stuck,
    IReadOnlyList<StandingLine> Stopped,
    IReadOnlyList<StandingLine> Exceptions,
    IReadOnlyList<DecideLink> Reviews,
    IReadOnlyList<DecideLink> Disputes,
    IReadOnlyList<DecideLink> Flagged
)
{
    public static DecideView Of(Team team, Waiting waiting, Names names)
    {
        var all = team.People.SelectMany(person => team.Of(person.Id)).ToList();
        var ready = ReadyPerson.Of(all, team, names);
        return new DecideView(
            DecideWords.Heading(ready.Count, waiting),
            ready,
            StandingLine.Of(all.Where(IsSoonOver).OrderBy(one => one.LastDay()), one => Say.Soon(one, names), names),
            StandingLine.Of(all.Where(IsStuck), DecideWords.Stuck, names),
            StandingLine.Of(all.Where(IsStopped), one => Say.Standing(one, names), names),
            StandingLine.Of(all.Where(IsException), one => Say.Standing(one, names), names),
            [.. waiting.Reviews.Select(review => DecideWords.Link(review, names))],
            [.. waiting.Disputes.Select(dispute => DecideWords.Link(dispute, names))],
            [.. waiting.Flagged.Select(groom => DecideWords.Link(groom, names))]
        );

        bool IsSoonOver(Standing standing) => standing.OtherDaysLeft(names.Time.Today) is not null;
    }

    // Whoever is stood down waits for something else than a talk about her row.
    private static bool IsStuck(Standing standing) =>
        !IsStopped(standing) && standing.Findings.Any(finding => finding is PointsFound { IsTalkDue: true });

    private static bool IsStopped(Standing standing) => standing.Kind is StandingKind.StoodDown or StandingKind.CheckAgain;

    private static bool IsException(Standing standing) => standing is { IsException: true, Kind: StandingKind.Alone };
}

/// <summary>Somebody who is ready in one or several skills.</summary>
public sealed record ReadyPerson(string Name, string Href, IReadOnlyList<ReadySkill> Skills)
{
    internal static IReadOnlyList<ReadyPerson> Of(IEnumerable<Standing> all, Team team, Names names) =>
        [
            .. from standing in all
            where standing.Kind == StandingKind.Ready
            group standing by standing.Person into hers
            select new ReadyPerson(
                names.Of(hers.Key),
                Paths.DecideOn(hers.Key.Value),
                [.. hers.Select(standing => ReadySkill.Of(standing, team, names))]
            ),
        ];
}

/// <summary>A skill in which somebody is ready.</summary>
public sealed record ReadySkill(string Name, string? Coat, string Record)
{
    internal static ReadySkill Of(Standing standing, Team team, Names names) =>
        new(
            names.Of(standing.Skill),
            CoatSwatch.Of(team.Skills.First(skill => skill.Code == standing.Skill)),
            DecideWords.Record(standing, names)
        );
}

/// <summary>Somebody, and skills of which the same is to be said.</summary>
public sealed record StandingLine(string Name, string Standing, string Says, IReadOnlyList<SkillLink> Skills)
{
    /// <summary>One line for each person and each thing said: a module that is due for ten skills is said once.</summary>
    internal static IReadOnlyList<StandingLine> Of(IEnumerable<Standing> standings, Func<Standing, string> says, Names names) =>
        [
            .. standings
                .GroupBy(standing => (standing.Person, standing.Kind, Says: says(standing)))
                .Select(same => new StandingLine(
                    names.Of(same.Key.Person),
                    Say.Shape(same.Key.Kind),
                    same.Key.Says,
                    [.. same.Select(standing => SkillLink.Of(standing, names))]
                )),
        ];
}

/// <summary>A skill, and why somebody stands where she stands in it.</summary>
public sealed record SkillLink(string Name, string Href)
{
    internal static SkillLink Of(Standing standing, Names names) =>
        new(names.Of(standing.Skill), Paths.Why(standing.Person.Value, standing.Skill.Value));
}

/// <summary>Something that waits on another page.</summary>
public sealed record DecideLink(string Words, string Says, string Href);
