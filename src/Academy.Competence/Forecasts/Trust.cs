using Academy.Competence.Skills;
using Academy.Competence.Standings;
using Academy.Competence.Statistics;
using Academy.Competence.Thresholds;

namespace Academy.Competence.Forecasts;

/// <summary>How far one clearance in force can be trusted, as far as rated grooms tell.</summary>
/// <param name="Person">Who is alone.</param>
/// <param name="Skill">In what.</param>
/// <param name="Unsuitable">How many of the last rated grooms needed fixing.</param>
/// <param name="Rated">Of how many, 1 to 20.</param>
/// <param name="ChanceWrong">The chance that this person truly needs fixing more often than the rate that is not fine.</param>
/// <param name="Range">Where the true rate lies with 9 chances in 10.</param>
public sealed record TrustInOne(PersonId Person, SkillCode Skill, int Unsuitable, int Rated, double ChanceWrong, RateRange Range);

/// <summary>"Of the clearances now in force about so many are probably wrong": the sum of the chances, one by one.</summary>
/// <param name="Each">Every clearance in force that rated grooms speak of, the least sure first.</param>
/// <param name="Unseen">Clearances in force in skills with a row of which no rated groom speaks: nothing is reckoned of them.</param>
/// <param name="Others">Clearances in force in skills without a row (modules and the owner's word alone), of which nothing is reckoned.</param>
/// <remarks>
/// Wrong means: needs fixing more often than <see cref="RowProfile.P1"/> of the skill's threshold. The chance is that of a Beta
/// distribution with the skill's <see cref="SalonPrior"/>. That prior comes from people who are rated, most of them learners, so it
/// says nothing of a senior who declared her experience and was never rated. What is summed are expectations, so the sum holds
/// although people are not independent.
/// </remarks>
public sealed record Trust(Listed<TrustInOne> Each, int Unseen, int Others)
{
    /// <summary>About so many are probably wrong.</summary>
    public double ProbablyWrong => Each.Sum(one => one.ChanceWrong);

    /// <summary>The clearances reckoned with.</summary>
    public int Active => Each.Count;

    /// <summary>How far a team's clearances can be trusted.</summary>
    /// <param name="team">Everybody's standings.</param>
    /// <param name="thresholdOf">The threshold of a skill in force on their day.</param>
    public static Trust Of(Team team, Func<SkillCode, Threshold> thresholdOf)
    {
        var each = team.Skills.SelectMany(skill => OfOne(team, skill, thresholdOf(skill.Code).Row)).ToList();
        var others = team
            .Skills.Where(skill => thresholdOf(skill.Code).Row is null)
            .Sum(skill => team.AloneIn(skill.Code).Count());
        var alone = team.Skills.Sum(skill => team.AloneIn(skill.Code).Count());
        return new(
            each.OrderByDescending(one => one.ChanceWrong)
                .ThenBy(one => one.Skill.Value, StringComparer.Ordinal)
                .ThenBy(one => one.Person.Value)
                .ToListed(),
            alone - others - each.Count,
            others
        );
    }

    private static IEnumerable<TrustInOne> OfOne(Team team, Skill skill, RowProfile? profile)
    {
        if (profile is null)
            return [];
        var prior = SalonPrior.Of([
            .. team.People.Select(person => RecordOf(team[person.Id, skill.Code]!)).Where(record => record.Rated > 0),
        ]);
        return team.AloneIn(skill.Code)
            .Where(person => RecordOf(team[person.Id, skill.Code]!).Rated > 0)
            .Select(person =>
            {
                var (unsuitable, rated) = RecordOf(team[person.Id, skill.Code]!);
                return new TrustInOne(
                    person.Id,
                    skill.Code,
                    unsuitable,
                    rated,
                    prior.ChanceAbove(profile.P1, unsuitable, rated),
                    prior.RangeOf(unsuitable, rated)
                );
            });
    }

    private static (int Unsuitable, int Rated) RecordOf(Standing standing) =>
        (standing.Tally.Last.Count(groom => groom.Verdict != Verdict.Suitable), standing.Tally.Last.Count);
}
