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
    private readonly Dictionary<(PersonId, SkillCode), List<Step>> _paths = [];
    private readonly Dictionary<(PersonId, SkillCode), Tally> _tallies = [];
    private readonly HashSet<(PersonId, SkillCode)> _stale = [];
    private readonly List<(PersonId Person, QuizTaken Taken)> _taken = [];
    private readonly List<(Granted Granted, Hand Hand)> _told = [];

    public SalonBook Book { get; private set; } = new();

    public IReadOnlyList<(Granted Granted, Hand Hand)> Told => _told;

    public GroomStory Story(GroomId groom) => _stories[groom];

    public IEnumerable<QuizTaken> TakenBy(PersonId person) => _taken.Where(one => one.Person == person).Select(one => one.Taken);

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
        foreach (var pair in _stale)
            _tallies[pair] = Tally.Of(Tally.InOrder(_paths[pair]), Book.ThresholdOn(pair.Item2, today));
        _stale.Clear();
        return Competence.Standings.Team.Of(
            new TeamEvidence(
                [.. Book.People],
                [.. Book.Skills],
                Book.Skills.ToDictionary(skill => skill.Code, skill => Book.ThresholdOn(skill.Code, today)),
                _tallies,
                _taken.ToLookup(one => one.Person, one => one.Taken),
                [.. Book.Library],
                Book.House,
                Book.Zone
            ),
            now
        );
    }

    private void After(Fact fact, PersonId by, DateTimeOffset now)
    {
        Book = Book.After(fact);
        if (fact is AttemptHandedIn taken)
            _taken.Add(
                (taken.Person, new QuizTaken(taken.Module, taken.Edition, taken.HandedInAt, taken.HasPassed, taken.IsRefresher))
            );
        foreach (var of in Paths.Of(fact, Book.Zone))
            Put(of);
        if (GroomOf(fact) is { } groom)
            Retell(groom, new Recorded(fact, by, now, _told.Count));
    }

    private void Retell(GroomId groom, Recorded told)
    {
        var before = _stories.GetValueOrDefault(groom);
        if (before is not null)
            foreach (var of in Paths.Of(before, Book.Zone))
                Take(of);
        var after = GroomStories.After(before, told);
        if (after is null)
            return;
        _stories[groom] = after;
        foreach (var of in Paths.Of(after, Book.Zone))
            Put(of);
    }

    private void Put(StepOf of)
    {
        var pair = (of.Person, of.Skill);
        (_paths.TryGetValue(pair, out var path) ? path : _paths[pair] = []).Add(of.Step);
        _stale.Add(pair);
    }

    private void Take(StepOf of)
    {
        _paths[(of.Person, of.Skill)].Remove(of.Step);
        _stale.Add((of.Person, of.Skill));
    }

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
