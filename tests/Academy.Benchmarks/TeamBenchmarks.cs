using Academy.Competence;
using Academy.Competence.DogChecks;
using Academy.Competence.Dogs;
using Academy.Competence.Evidence;
using Academy.Competence.People;
using Academy.Competence.Quizzes;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using Academy.Competence.Thresholds;
using BenchmarkDotNet.Attributes;

namespace Academy.Benchmarks;

/// <summary>
/// The pure part of a board of 20 people and of one dog check, after 30,000 and after 300,000 grooms: both are read from tallies, so
/// neither may grow with the log. Folding the log itself is measured beside them.
/// </summary>
[MemoryDiagnoser]
[ShortRunJob]
public class TeamBenchmarks
{
    private static readonly DateTimeOffset Now = new(2026, 6, 10, 8, 0, 0, TimeSpan.Zero);
    private static readonly DateOnly Today = new(2026, 6, 10);
    private static readonly HouseRules House = new();

    private TeamEvidence _evidence = null!;
    private Team _team = null!;
    private Step[] _path = null!;

    /// <summary>Grooms in the log.</summary>
    [Params(30_000, 300_000)]
    public int Grooms { get; set; }

    /// <summary>Fills every path with its share of the grooms, eight skills a groom.</summary>
    [GlobalSetup]
    public void Fill()
    {
        var people = Enumerable.Range(1, 20).Select(Person).ToList();
        var thresholds = SkillBook.Defaults.ToDictionary(
            skill => skill.Code,
            skill => DefaultThresholds.For(skill.Code, DateOnly.MinValue)
        );
        var steps = Grooms * 8 / (people.Count * thresholds.Count);
        _path = [.. Path(steps)];
        var tallies =
            from person in people
            from threshold in thresholds.Values
            select ((person.Id, threshold.Skill), Tally: Tally.Of(_path, threshold));
        _evidence = new TeamEvidence(
            people,
            [.. SkillBook.Defaults],
            thresholds,
            tallies.ToDictionary(one => one.Item1, one => one.Tally),
            Enumerable.Empty<QuizTaken>().ToLookup(_ => default(PersonId)),
            [],
            House,
            TimeZoneInfo.Utc
        );
        _team = Team.Of(_evidence, Now);
    }

    /// <summary>Standings of everybody in everything.</summary>
    [Benchmark]
    public Team Board() => Team.Of(_evidence, Now);

    /// <summary>One dog, from standings already read.</summary>
    [Benchmark]
    public DogCheckAnswer Check() =>
        DogCheck.Of(Asked, _team, _team.People.Select(person => person.Id).ToHashSet(), null, House, Now, TimeZoneInfo.Utc);

    /// <summary>One path folded from its beginning: this one grows with the log, and is not on the way of a page.</summary>
    [Benchmark]
    public Tally FoldOnePath() => Tally.Of(_path, _evidence.Thresholds[SkillBook.Wool]);

    private static readonly DogAsked Asked = new(
        new Dog(
            default,
            "Biscuit",
            "Cockapoo",
            SkillBook.Wool,
            null,
            [SkillBook.Nervous],
            Today.AddYears(-3),
            AgeByLook.NotSaid,
            11
        ),
        [SkillBook.Bath, SkillBook.HandDrying, SkillBook.Nails]
    );

    private static Person Person(int number) =>
        new(
            new PersonId(new Guid(number, 0, 0, new byte[8])),
            $"Person {number}",
            number < 4 ? Role.Senior : Role.Junior,
            Today.AddYears(-3)
        );

    private static IEnumerable<Step> Path(int steps)
    {
        var chance = new SplitMix64(7);
        for (var i = 0; i < steps; i++)
        {
            var at = Now.AddHours(-10 * (steps - i));
            yield return new Step(at, new Guid(i, 0, 0, new byte[8]), StepKind.Rated, DateOnly.FromDateTime(at.UtcDateTime))
            {
                Verdict = chance.Below(20) == 0 ? Verdict.Unsuitable : Verdict.Suitable,
                Breed = $"Breed {chance.Below(6)}",
                Senior = new PersonId(new Guid(1 + chance.Below(3), 0, 0, new byte[8])),
            };
        }
    }
}
