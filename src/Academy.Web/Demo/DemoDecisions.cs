using Academy.Competence;
using Academy.Competence.Decisions;
using Academy.Competence.Skills;
using Academy.Competence.Standings;

namespace Academy.Web.Demo;

/// <summary>What the owner decides on a Saturday evening.</summary>
internal sealed class DemoDecisions(DemoStory story)
{
    public void Decide(DateOnly day)
    {
        var at = story.At(day, 18, 15);
        var team = story.Floor.Team(at);
        foreach (var member in DemoCast.Juniors.Where(member => story.Floor.Book.Find(member.Id)?.WorksOn(day) == true))
        {
            var ready = team.Of(member.Id)
                .Where(standing => standing.Kind == StandingKind.Ready && !IsLeftOpen(member, standing.Skill))
                .ToArray();
            if (ready.Length > 0)
                Clear(member, ready, at, against: false, Words.None);
        }
        if (
            story.DaysAgo(day) is > 21 and <= 28
            && team[DemoCast.Idris.Id, SkillBook.Elderly] is { Kind: StandingKind.Learning } old
        )
            Clear(
                DemoCast.Idris,
                [old],
                at,
                against: true,
                new("I have stood beside him with every old dog since summer; too few breeds came in to fill the rule.")
            );
    }

    // Ready and not decided: for whoever tries the demo.
    private static bool IsLeftOpen(CastMember member, SkillCode skill) =>
        member == DemoCast.Perpetua && (skill == SkillBook.Double || skill == SkillBook.HeatProne)
        || member == DemoCast.Tamsin && skill == SkillBook.Nervous;

    private void Clear(CastMember member, Standing[] standings, DateTimeOffset at, bool against, Words reason) =>
        story.Tell(
            Clearing.Clear(
                new(story.NextId()),
                standings
                    .Select(standing => new ClearanceAsked(new(story.NextId()), standing, LimitsOf(member, standing.Skill)))
                    .ToListed(),
                story.Floor.Book.Find(member.Id)!,
                DemoStory.Owner,
                against,
                reason,
                at,
                story.Zone
            ),
            DemoCast.Owner.Id,
            at
        );

    private Limits LimitsOf(CastMember member, SkillCode skill) =>
        (member, skill) switch
        {
            _ when member == DemoCast.Tamsin && skill == SkillBook.Wool => new Limits(NotOnHotDays: true),
            _ when member == DemoCast.Tamsin && skill == SkillBook.Double => new Limits(UpToKg: 40),
            _ when member == DemoCast.Idris && (skill == SkillBook.Wool || skill == SkillBook.Smooth) => new Limits(
                Until: story.Today.AddDays(40)
            ),
            _ when member == DemoCast.Idris && (skill == SkillBook.Combination || skill == SkillBook.Ears) => new Limits(
                OnlyWithSeniorIn: true
            ),
            _ => Limits.None,
        };
}
