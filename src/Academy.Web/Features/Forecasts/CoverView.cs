using Academy.Competence;
using Academy.Competence.Forecasts;
using Academy.Competence.People;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;

namespace Academy.Web.Features.Forecasts;

/// <summary>The salon's cover, skill by skill.</summary>
public sealed record CoverView(
    string Heading,
    IReadOnlyList<string> Days,
    IReadOnlyList<CoverGroup> Groups,
    IReadOnlyList<Pick> People
)
{
    private static readonly int[] s_ahead = [30, 60, 90];

    internal static CoverView Of(
        IReadOnlyList<SkillCover> covers,
        IEnumerable<Person> people,
        IReadOnlyList<PersonId> away,
        Names names
    )
    {
        var days = s_ahead.Select(ahead => names.Time.Today.AddDays(ahead)).ToList();
        return new(
            HeadingOf(covers, away, names),
            [.. days.Select(names.Time.ShortDate)],
            [
                .. from cover in covers
                group CoverLine.Of(cover, days, away, names) by cover.Skill.Kind into lines
                select new CoverGroup($"cover-{lines.Key}".ToLowerInvariant(), Say.Group(lines.Key), [.. lines]),
            ],
            [.. people.Select(person => new Pick(person.Id.Value.ToString(), person.Name))]
        );
    }

    private static string HeadingOf(IReadOnlyList<SkillCover> covers, IReadOnlyList<PersonId> away, Names names)
    {
        var (nobody, one) = (Covered(0), Covered(1));
        var without = away.Count == 0 ? "" : $"Without {Counts.And([.. away.Select(person => names.Of(person))])}: ";
        return Say.Capital(
            $"{without}{Counts.Of(one, "skill rests", "skills rest")} on one person, {Counts.Of(nobody, "skill", "skills")} on nobody"
        );

        int Covered(int people) => covers.Count(cover => cover.On(names.Time.Today, away).Count() == people);
    }
}

/// <summary>Coats, techniques or hazards.</summary>
public sealed record CoverGroup(string Id, string Caption, IReadOnlyList<CoverLine> Lines);

/// <summary>One skill: who may do it alone today, and how many later.</summary>
public sealed record CoverLine(string Name, string Today, IReadOnlyList<string> Later)
{
    internal static CoverLine Of(SkillCover cover, IReadOnlyList<DateOnly> days, IReadOnlyList<PersonId> away, Names names)
    {
        var today = cover.On(names.Time.Today, away).Select(person => person.Name).ToList();
        return new(
            Say.Capital(cover.Skill.Name),
            today.Count == 0 ? "nobody"
                : today.Count == 1 ? $"{today[0]}, nobody else"
                : Counts.And(today),
            [.. days.Select(day => Many(cover.On(day, away).Count()))]
        );
    }

    private static string Many(int people) => people == 0 ? "nobody" : people.ToString(SalonTime.Culture);
}
