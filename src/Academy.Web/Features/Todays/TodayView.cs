using Academy.Competence;
using Academy.Competence.People;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Todays;

/// <summary>Something that waits, with the way to it.</summary>
public sealed record WaitsLine(string Words, string Button, string Href, bool IsRisk = false);

/// <summary>A groom on the table or done today.</summary>
public sealed record TableLine(string Clock, string Title, string Note, string? Coat, string Href, string? Button);

/// <summary>A standing to know of this morning: watched, to check again, stopped, or about to lapse.</summary>
public sealed record MindLine(string Title, string Standing, string Words, string Href);

/// <summary>One of the person's own coats.</summary>
public sealed record CoatLine(string Coat, string Name, string Standing, int? Have, int? Need, string Note, string Href);

/// <summary>The first page of the day.</summary>
public sealed record TodayView(
    string Day,
    string Heading,
    string Lead,
    IReadOnlyList<WaitsLine> Waits,
    IReadOnlyList<TableLine> Tables,
    IReadOnlyList<MindLine> Mind,
    IReadOnlyList<CoatLine> Coats,
    bool IsJunior,
    string In,
    bool IsNobodyIn
)
{
    public static TodayView Of(
        Person person,
        SalonBook book,
        Team team,
        IReadOnlySet<PersonId> isIn,
        IReadOnlyList<TodayGroom> grooms,
        IReadOnlyList<WaitsLine> waits,
        Names names
    )
    {
        var isJunior = person.Role == Role.Junior;
        var here = team.People.Where(one => isIn.Contains(one.Id)).Select(one => one.Name).ToList();
        return new TodayView(
            names.Time.Day(names.Time.Now),
            waits.Count == 0 ? "Nothing waits for you" : waits[0].Words,
            here.Count == 0 ? "Nobody is ticked in yet." : $"In today: {Counts.And(here)}.",
            waits,
            [.. grooms.Select(groom => Line(groom, person, names))],
            isJunior
                ? []
                :
                [
                    .. team
                        .People.Where(one => isIn.Contains(one.Id) || person.Role == Role.Owner)
                        .SelectMany(one =>
                            CatchesUp(one, team, names).Concat(LastTries(one, team, names)).Concat(Minds(one, team, names))
                        ),
                ],
            isJunior
                ? [.. team.Of(person.Id).Where(standing => IsCoatInUse(book, standing)).Select(standing => Coat(standing, names))]
                : [],
            isJunior,
            here.Count == 0 ? "Who is in?" : "Change who is in",
            here.Count == 0
        );
    }

    private static TableLine Line(TodayGroom groom, Person person, Names names)
    {
        var who = names.Of(new PersonId(groom.By));
        var watched = groom.Watcher is { } senior ? $"{names.Of(new PersonId(senior))} watches" : "alone";
        var isOwn = groom.By == person.Id.Value;
        return new(
            names.Time.Clock(groom.StartedAt),
            isOwn ? groom.Dog : $"{who} with {groom.Dog}",
            CoatOf(groom, names)
                + (
                    groom.IsStarted
                        ? $"On the table, {watched}."
                        : $"Done {names.Time.Clock(groom.EndedAt ?? groom.StartedAt)}, {watched}."
                ),
            groom.Coat.Length == 0 ? null : groom.Coat,
            groom.IsStarted && isOwn ? Paths.Log(groom.Id) : Paths.Groom(groom.Id),
            groom.IsStarted && isOwn ? "Finish the log" : null
        );
    }

    private static string CoatOf(TodayGroom groom, Names names) =>
        groom.Coat.Length == 0 ? "" : $"{Say.Capital(names.Of(new SkillCode(groom.Coat)))}. ";

    private static IEnumerable<MindLine> Minds(Person person, Team team, Names names) =>
        team.Of(person.Id)
            .Where(standing => standing.IsToMind(names.Time.Today))
            .Select(standing => new MindLine(
                $"{person.Name}, {names.Of(standing.Skill)}",
                Say.Shape(standing.Kind),
                Words(standing, names),
                $"/board/{person.Id.Value}/{standing.Skill}"
            ));

    // A module that changed may carry every skill of a person: that is one line, not one for each.
    private static IEnumerable<MindLine> CatchesUp(Person person, Team team, Names names) =>
        from standing in team.Of(person.Id)
        from change in standing.CatchesUp()
        group standing by change into resting
        orderby resting.Key.By
        select new MindLine(
            $"{person.Name}, {Say.Some([.. resting.Select(standing => names.Of(standing.Skill))])}",
            Say.Shape(StandingKind.Alone),
            Say.CatchUp(resting.Key, names),
            Paths.SkillsOf(person.Id.Value)
        );

    private static IEnumerable<MindLine> LastTries(Person person, Team team, Names names) =>
        from standing in team.Of(person.Id)
        from module in standing.LastTries()
        group standing by module into resting
        select new MindLine(
            $"{person.Name}, {Say.Some([.. resting.Select(standing => names.Of(standing.Skill))])}",
            Say.Shape(StandingKind.Alone),
            Say.LastTryOf(names.Of(resting.Key)),
            Paths.SkillsOf(person.Id.Value)
        );

    private static string Words(Standing standing, Names names) =>
        standing switch
        {
            { Kind: StandingKind.Alone, IsWatched: true } => "A senior stands beside for the next grooms.",
            { Kind: StandingKind.Alone } => Say.Soon(standing, names),
            { Kind: StandingKind.StoodDown } => "With a senior beside, until the stop is lifted.",
            _ => "With a senior beside, until the row is full again.",
        };

    private static bool IsCoatInUse(SalonBook book, Standing standing) =>
        book.Find(standing.Skill) is { Kind: SkillKind.Coat }
        && (standing.Tally.Rated > 0 || standing.Kind != StandingKind.Learning);

    private static CoatLine Coat(Standing standing, Names names)
    {
        var points = standing.Kind == StandingKind.Alone ? null : standing.Findings.OfType<PointsFound>().FirstOrDefault();
        var left = Say.Reasons(standing.Gaps.Where(gap => gap is not RowNotFull), names);
        return new(
            standing.Skill.Value,
            names.Of(standing.Skill),
            Say.Shape(standing.Kind),
            points?.Have,
            points?.Need,
            standing.Kind == StandingKind.Alone ? string.Join(" ", Say.Limits(standing.Limits, names)) : string.Join(" ", left),
            $"/board/{standing.Person.Value}/{standing.Skill}"
        );
    }
}

/// <summary>What waits for whom, in words.</summary>
public static class Waits
{
    public static IReadOnlyList<WaitsLine> ForJunior(int unsigned) =>
        unsigned == 0
            ? []
            : [new($"{Counts.Of(unsigned, "groom")} of yours {Verb(unsigned)} for a sign-off", "Look", Paths.MySkills)];

    public static IReadOnlyList<WaitsLine> ForSenior(int named, int all) =>
        all == 0 ? []
        : named == 0
            ? [new($"{Counts.Of(all, "groom")} {Verb(all)} for a sign-off, none of them names you", "Look", Paths.SignOffs)]
        : [new($"{Counts.Of(named, "groom")} {Verb(named)} for your sign-off", "Sign off", Paths.SignOffs)];

    public static IReadOnlyList<WaitsLine> ForWriter((IReadOnlyList<string> ToRead, IReadOnlyList<string> Back) drafts)
    {
        var (read, back) = drafts;
        WaitsLine?[] lines =
        [
            read.Count == 0
                ? null
                : new(
                    $"{Counts.Of(read.Count, "module")} {Verb(read.Count)} for you to read over",
                    "Read",
                    read.Count == 1 ? Paths.ReadOver(read[0]) : Paths.Modules
                ),
            back.Count == 0
                ? null
                : new(
                    $"{Counts.Of(back.Count, "module")} of yours came back to mend",
                    "Mend",
                    back.Count == 1 ? Paths.Write(back[0]) : Paths.Modules
                ),
        ];
        return [.. lines.OfType<WaitsLine>()];
    }

    public static IReadOnlyList<WaitsLine> ForOwner(
        bool isNew,
        int ready,
        int reviews,
        int disputes,
        int flags,
        int named,
        int all
    )
    {
        WaitsLine?[] lines =
        [
            reviews == 0
                ? null
                : new($"{Counts.Of(reviews, "incident")} {Verb(reviews)} for your review", "Review", "/reviews", IsRisk: true),
            ready == 0 ? null : new($"{Counts.Of(ready, "clearance")} {Verb(ready)} for your decision", "Decide", Paths.Decide),
            disputes == 0
                ? null
                : new($"{Counts.Of(disputes, "dispute")} {Verb(disputes)} for your answer", "Answer", "/disputes"),
            flags == 0
                ? null
                : new(
                    $"{Counts.Of(flags, "groom")} done alone without being alone for it {Verb(flags)} for a word",
                    "Look",
                    Paths.Flags
                ),
            .. ForSenior(named, all),
            isNew ? new("Nobody may groom alone here yet", "The first things", Paths.Welcome) : null,
        ];
        return [.. lines.OfType<WaitsLine>()];
    }

    private static string Verb(int count) => count == 1 ? "waits" : "wait";
}
