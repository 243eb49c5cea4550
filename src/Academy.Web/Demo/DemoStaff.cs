using Academy.Competence;
using Academy.Competence.Decisions;
using Academy.Competence.Dogs;
using Academy.Competence.People;
using Academy.Competence.Quizzes;
using Academy.Competence.Salons;
using Academy.Competence.Skills;

namespace Academy.Web.Demo;

/// <summary>How the demo salon opens, and who comes and goes.</summary>
internal sealed class DemoStaff(DemoStory story, IReadOnlyList<Module> modules, Dog[] dogs)
{
    private static readonly SkillCode[] s_everyday = [SkillBook.HandDrying, SkillBook.Nails, SkillBook.DeShedding];

    public void OpenTheDoors()
    {
        var first = story.Today.AddDays(-DemoCast.DaysBack);
        var at = story.At(first, 8);
        story.Tell(
            Keeping.Open(new(DemoCast.SalonName), story.Zone, DemoStory.PersonOf(DemoCast.Owner, first), first),
            DemoCast.Owner.Id,
            at
        );
        story.Tell(
            Keeping.Describe(new(DemoCast.SalonName), new("Marram Bay Veterinary Surgery"), new("01632 960147"), DemoStory.Owner),
            DemoCast.Owner.Id,
            at
        );
        foreach (var module in modules)
            story.Tell(
                Keeping.SeeEdition(
                    module.Name,
                    module.Edition,
                    module.SafetyCriticalSince,
                    module.RefresherDays,
                    module.RenewedEachSpring,
                    module.Hash
                ),
                DemoCast.Owner.Id,
                at
            );
        foreach (var dog in dogs)
            story.Tell(DogKeeping.Describe(dog, story.Today), DemoCast.Owner.Id, at);
        var lately = story.At(story.Today.AddDays(-3), 18);
        story.Later(lately, () => AskForMore(lately));
    }

    // The library grew, and the owner has let the everyday techniques ask for what was written for them: some have read it by now.
    private void AskForMore(DateTimeOffset at) =>
        story.Tell(
            Keeping.AskFor(
                Suggesting
                    .For(story.Floor.Book, modules)
                    .Where(one => s_everyday.Contains(one.Skill) && one.IsAmongFirst)
                    .Select(one => (one.Skill, one.Module)),
                story.Floor.Book,
                DemoStory.Owner
            ),
            DemoCast.Owner.Id,
            at
        );

    public void Join(DateOnly day)
    {
        foreach (
            var member in DemoCast.All.Where(member => member.Role != Role.Owner && member.JoinedDaysAgo == story.DaysAgo(day))
        )
            story.Tell(
                Staffing.Describe(DemoStory.PersonOf(member, day), before: null, DemoStory.Owner, owners: 1),
                DemoCast.Owner.Id,
                story.At(day, 8, 5)
            );
        if (story.DaysAgo(day) == DemoCast.DaysBack)
            foreach (var member in DemoCast.All.Where(member => member.Role != Role.Junior))
                Declare(member, day);
        foreach (var member in DemoCast.All.Where(member => member.LeftDaysAgo == story.DaysAgo(day)))
            story.Tell(
                Staffing.Leave(story.Floor.Book.Find(member.Id)!, day, DemoStory.Owner, owners: 1),
                DemoCast.Owner.Id,
                story.At(day, 8, 5)
            );
    }

    private void Declare(CastMember member, DateOnly day)
    {
        var at = story.At(day, 8, 10);
        var words = new Words("Years at the table before this book began; seen working by the owner.");
        foreach (var standing in story.Floor.Team(at).Of(member.Id).Where(standing => IsDeclared(member, standing.Skill)))
            story.Tell(
                Clearing.Declare(
                    new(story.NextId()),
                    standing,
                    isSomebodyAlone: false,
                    story.Floor.Book.Find(member.Id)!,
                    DemoStory.Owner,
                    day,
                    words,
                    at,
                    story.Zone
                ),
                DemoCast.Owner.Id,
                at
            );
    }

    private static bool IsDeclared(CastMember member, SkillCode skill) =>
        skill != SkillBook.CabinetDrying
        && skill != SkillBook.Hairless
        && (skill != SkillBook.Corded || member == DemoCast.Bettina)
        && (skill != SkillBook.Seizures || member == DemoCast.Owner);
}
