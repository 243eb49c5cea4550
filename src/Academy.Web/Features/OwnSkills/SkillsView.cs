using Academy.Competence;
using Academy.Competence.Grooms;
using Academy.Competence.People;
using Academy.Competence.SignOffs;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.OwnSkills;

/// <summary>Everything that was read about one person.</summary>
/// <param name="Person">Who.</param>
/// <param name="IsOwn">Whether she looks herself.</param>
/// <param name="MayDecide">Whether the owner looks.</param>
/// <param name="Team">Everybody's standings now.</param>
/// <param name="Grooms">A page of her grooms, and one more if there are more.</param>
/// <param name="Stories">What was said about them.</param>
/// <param name="Disputes">Her disputes.</param>
public sealed record SkillsFound(
    Person Person,
    bool IsOwn,
    bool MayDecide,
    Team Team,
    IReadOnlyList<GroomLine> Grooms,
    IReadOnlyDictionary<GroomId, GroomStory> Stories,
    IReadOnlyList<DisputeLine> Disputes
);

/// <summary>One person's skills: what is left for each, what is due, what was groomed, what seniors said.</summary>
public sealed record SkillsView(
    string Title,
    string Heading,
    string Summary,
    IReadOnlyList<SkillGroup> Groups,
    string? NotBegun,
    IReadOnlyList<DueModule> Due,
    IReadOnlyList<SaidGroom> Grooms,
    string? Older,
    IReadOnlyList<OwnDispute> Disputes,
    string? Decide,
    string Ahead
)
{
    public static SkillsView Of(SkillsFound found, Names names)
    {
        var standings = found.Team.Of(found.Person.Id).ToList();
        var begun = standings.Where(CellNote.HasBegun).ToList();
        var shown = found.Grooms.Take(SkillsQueries.PageSize).ToList();
        var here = found.IsOwn ? Paths.MySkills : Paths.SkillsOf(found.Person.Id.Value);
        return new SkillsView(
            found.IsOwn ? "My skills" : $"Skills of {found.Person.Name}",
            SkillsWords.Heading(found.Person, found.IsOwn, standings),
            $"{Say.Capital(Say.Summary(begun.Select(standing => standing.Kind)))}.",
            [.. SkillGroup.Of(found.Team.Skills, begun, names)],
            Say.NotBegun(standings.Except(begun).Select(standing => names.Of(standing.Skill))),
            DueModule.Of(standings, names),
            [.. shown.Select(line => SaidGroom.Of(line, found, names))],
            found.Grooms.Count > shown.Count ? $"{here}?after={new ListPlace(shown[^1].EndedAt, shown[^1].Groom)}#grooms" : null,
            [.. found.Disputes.Select(dispute => OwnDispute.Of(dispute, names))],
            found.MayDecide ? Paths.DecideOn(found.Person.Id.Value) : null,
            Paths.Ahead(found.Person.Id.Value)
        );
    }
}

/// <summary>Coats, techniques or hazards that have begun.</summary>
public sealed record SkillGroup(string Id, string Caption, IReadOnlyList<SkillLine> Lines)
{
    internal static IEnumerable<SkillGroup> Of(IReadOnlyList<Skill> skills, IReadOnlyList<Standing> begun, Names names) =>
        from standing in begun
        let skill = skills.First(one => one.Code == standing.Skill)
        group SkillLine.Of(standing, skill, names) by skill.Kind into lines
        select new SkillGroup(lines.Key.ToString().ToLowerInvariant(), Say.Group(lines.Key), [.. lines]);
}

/// <summary>Where she stands in one skill, and what is left.</summary>
/// <param name="Name">The skill.</param>
/// <param name="Coat">Its swatch.</param>
/// <param name="Href">Every rule and every groom behind it.</param>
/// <param name="Standing">Its shape.</param>
/// <param name="Row">The row, where one is walked.</param>
/// <param name="Left">What is left in plain words; what it is limited to for whoever is alone.</param>
/// <param name="Record">What the last rated grooms say; null where none was rated.</param>
/// <param name="Rated">Those grooms.</param>
public sealed record SkillLine(
    string Name,
    string? Coat,
    string Href,
    string Standing,
    SkillRow? Row,
    IReadOnlyList<string> Left,
    string? Record,
    IReadOnlyList<Dot> Rated
)
{
    internal static SkillLine Of(Standing standing, Skill skill, Names names) =>
        new(
            skill.Name,
            CoatSwatch.Of(skill),
            Paths.Why(standing.Person.Value, standing.Skill.Value),
            Say.Shape(standing.Kind),
            standing.Kind == StandingKind.Alone ? null : SkillRow.Of(standing),
            standing.Kind == StandingKind.Alone ? SkillsWords.Alone(standing, names) : Say.Why(standing, names),
            standing.Tally.Last.IsEmpty ? null : Say.Record(standing.Tally),
            [.. standing.Tally.Last.Select(rated => Say.Dot(rated, names))]
        );
}

/// <summary>Marks of a row.</summary>
public sealed record SkillRow(int Have, int Need)
{
    internal static SkillRow? Of(Standing standing) =>
        standing.Findings.OfType<PointsFound>().FirstOrDefault() is { } points ? new(points.Have, points.Need) : null;
}

/// <summary>A module that is to be passed, or soon to be taken again.</summary>
public sealed record DueModule(string Title, string Href, string State, string For)
{
    internal static IReadOnlyList<DueModule> Of(IReadOnlyList<Standing> standings, Names names) =>
        [
            .. from standing in standings
            from knowledge in standing.Findings.OfType<KnowledgeFound>()
            from module in knowledge.Modules
            where
                !module.Holds
                || module.AsksToCatchUp
                || module.IsLastTry
                || module.DueOn is { } due && due <= names.Time.Today.AddDays(RunningOut.SoonDays)
            group (standing, knowledge, module) by module.Module into asked
            let module = asked.First().module
            let until = asked.Select(one => one.knowledge.DueUntil).Min() ?? module.DueOn
            orderby until ?? DateOnly.MaxValue
            select new DueModule(
                names.Of(asked.Key),
                $"{Paths.Study}/{asked.Key.Value}",
                SkillsWords.Due(module, until, names),
                SkillsWords.For(asked.Select(one => names.Of(one.standing.Skill)))
            ),
        ];
}

/// <summary>A groom with what a senior said of it.</summary>
public sealed record SaidGroom(string Day, string Href, string Dog, string Coat, string Result, string? Words, string? By)
{
    internal static SaidGroom Of(GroomLine line, SkillsFound found, Names names)
    {
        var story = found.Stories.GetValueOrDefault(new GroomId(line.Groom));
        var signed = story?.SignOffOf(found.Person.Id);
        return new SaidGroom(
            names.Time.Day(line.EndedAt),
            Paths.Groom(line.Groom),
            line.Dog,
            names.Of(new SkillCode(line.Coat)),
            SkillsWords.Result(line, story, signed, names),
            signed is null ? null : SkillsWords.ToJunior(signed),
            signed is null ? null : names.Of(signed.Senior)
        );
    }
}

/// <summary>A dispute and whether it is answered.</summary>
public sealed record OwnDispute(string When, string State, string Href)
{
    internal static OwnDispute Of(DisputeLine dispute, Names names) =>
        new(
            names.Time.Day(dispute.At),
            dispute.AnsweredAt is { } at
                ? $"answered on {names.Time.Date(names.Time.DayOf(at))}"
                : "waits for the owner’s answer",
            Paths.Dispute(dispute.SignOff)
        );
}
