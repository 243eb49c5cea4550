using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Facts;
using Academy.Competence.Grooms;
using Academy.Competence.Salons;
using Academy.Competence.Standings;
using Academy.Storage;

namespace Academy.Web.Demo;

/// <summary>The demo salon's floor while its history is told: what the next decision is taken on, kept in memory.</summary>
internal sealed class DemoFloor
{
    private readonly Dictionary<GroomId, GroomStory> _stories = [];
    private readonly Dictionary<(PersonId Person, SkillCode Skill), DemoPath> _paths = [];
    private readonly Dictionary<PersonId, List<QuizTaken>> _taken = [];
    private readonly List<(Granted Granted, Hand Hand)> _told = [];

    public SalonBook Book { get; private set; } = new();

    public IReadOnlyList<(Granted Granted, Hand Hand)> Told => _told;

    public GroomStory Story(GroomId groom) => _stories[groom];

    public IReadOnlyList<QuizTaken> TakenBy(PersonId person) => _taken.GetValueOrDefault(person) ?? [];

    /// <summary>Keeps what was decided. A refusal here is a mistake in the demo's story, said with its reasons.</summary>
    public void Tell(Decision decision, PersonId by, DateTimeOffset now)
    {
        if (decision is not Granted granted)
            throw new InvalidOperationException($"The demo's story is refused at {now:u}: {((Refused)decision).Reasons}");
        _told.Add((granted, new Hand(by, "demo", now)));
        foreach (var fact in granted.Facts)
            After(fact, by, now);
    }

    /// <summary>The team's standings at this moment.</summary>
    public Team Team(DateTimeOffset now)
    {
        var today = SalonDay.Of(now, Book.Zone);
        var thresholds = Book.Skills.ToDictionary(skill => skill.Code, skill => Book.ThresholdOn(skill.Code, today));
        return Competence.Standings.Team.Of(
            new TeamEvidence(
                [.. Book.People],
                [.. Book.Skills],
                thresholds,
                _paths.ToDictionary(path => path.Key, path => path.Value.TallyUnder(thresholds[path.Key.Skill])),
                _taken.SelectMany(by => by.Value.Select(one => (by.Key, one))).ToLookup(one => one.Key, one => one.one),
                [.. Book.Library],
                Book.House,
                Book.Zone
            ),
            now
        );
    }

    private void After(Fact fact, PersonId by, DateTimeOffset now)
    {
        Book = Book.After(fact, now);
        if (fact is AttemptHandedIn taken)
            Take(taken);
        foreach (var of in Paths.Of(fact, Book.Zone))
            PathOf(of).Put(of.Step);
        if (GroomOf(fact) is { } groom)
            Retell(groom, new Recorded(fact, by, now, _told.Count));
    }

    private void Retell(GroomId groom, Recorded told)
    {
        var before = _stories.GetValueOrDefault(groom);
        if (before is not null)
            foreach (var of in Paths.Of(before, Book.Zone))
                PathOf(of).TakeOff(of.Step);
        var after = GroomStories.After(before, told);
        if (after is null)
            return;
        _stories[groom] = after;
        foreach (var of in Paths.Of(after, Book.Zone))
            PathOf(of).Put(of.Step);
    }

    private void Take(AttemptHandedIn fact)
    {
        var taken = new QuizTaken(fact.Module, fact.Edition, fact.HandedInAt, fact.HasPassed, fact.IsRefresher);
        (_taken.TryGetValue(fact.Person, out var before) ? before : _taken[fact.Person] = []).Add(taken);
    }

    private DemoPath PathOf(StepOf of) =>
        _paths.TryGetValue((of.Person, of.Skill), out var path) ? path : _paths[(of.Person, of.Skill)] = new DemoPath();

    private static GroomId? GroomOf(Fact fact) =>
        fact switch
        {
            GroomLogged told => told.Groom.Id,
            SignedOff told => told.SignOff.Groom,
            LateSignOffAdmitted told => told.Groom,
            DisputeAnswered told => told.Groom,
            IncidentReported told => told.Incident.Groom,
            IncidentReviewed told => told.Groom,
            ComplaintUpheld told => told.Groom,
            _ => null,
        };
}
