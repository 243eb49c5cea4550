using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.People;
using Academy.Competence.Quizzes;

namespace Academy.Web.Demo;

/// <summary>Who sits which quiz when, and how it goes.</summary>
internal sealed class DemoStudy(DemoStory story, IReadOnlyList<Module> modules)
{
    public void Study(DateOnly day, HashSet<PersonId> isIn)
    {
        foreach (var member in DemoCast.All.Where(member => isIn.Contains(member.Id)))
        foreach (
            var (module, state) in Asked()
                .Select(module => (module, StateSoon(member, module, day)))
                .Where(one => IsDue(member, one.module, one.Item2, day))
                .Take(1)
        )
            Sit(member, module, isRefresher: state is ModuleState.RefresherOverdue or ModuleState.RefresherFailed, day);
    }

    // What no skill of the salon asks for is there to be read, and nobody has to.
    private IEnumerable<Module> Asked() =>
        modules.Where(module => story.Floor.Book.Skills.Any(skill => skill.Modules.Contains(module.Name)));

    private ModuleState StateSoon(CastMember member, Module module, DateOnly day) =>
        Knowledge
            .Of(
                [module.Name],
                [.. story.Floor.Book.Library],
                [.. story.Floor.TakenBy(member.Id)],
                day.AddDays(4),
                story.Zone,
                story.Floor.Book.House
            )[0]
            .State;

    private bool IsDue(CastMember member, Module module, ModuleState state, DateOnly day) =>
        state != ModuleState.Current
        && !(member == DemoCast.Robin && module.Name.Value == "cooling-clips")
        && Sitting
            .AgainstBeginning(
                Earlier(story.Floor.TakenBy(member.Id), module),
                story.Floor.Book.Find(member.Id)!,
                null,
                story.At(day, 12, 5),
                story.Zone
            )
            .IsEmpty;

    private static IEnumerable<Attempt> Earlier(IEnumerable<QuizTaken> taken, Module module) =>
        taken.Where(one => one.Module == module.Name).Select(one => new Attempt(one.HandedInAt, one.HasPassed));

    private void Sit(CastMember member, Module module, bool isRefresher, DateOnly day)
    {
        var earlier = Earlier(story.Floor.TakenBy(member.Id), module).ToArray();
        var started = story.At(day, 12, 10);
        if (started.AddMinutes(14) > story.Now)
            return;
        var seed = story.Chance.Below(int.MaxValue);
        var readOut = member == DemoCast.Idris && earlier.Length == 0 ? DemoCast.Caspian.Id : (PersonId?)null;
        var sitting = new Sitting(new(story.NextId()), member.Id, module.Name, module.Hash, isRefresher, seed, started, readOut);
        var knows = member.Role == Role.Junior && earlier.Length == 0 ? 84 : 98;
        var answers = Quizzing.Draw(module, seed, sitting.Kind).Select(question => Answer(question, knows)).ToArray();
        story.Tell(sitting.HandIn(module, answers, started.AddMinutes(14)), member.Id, started.AddMinutes(14));
    }

    private Answer Answer(Question question, int knows) =>
        new(question.Id, story.Chance.Below(100) < knows ? question.Kind.Right : Mistaken(question.Kind));

    // Another place than the right ones, an order or pairs back to front, ten times the number.
    private static Given Mistaken(QuestionKind kind) =>
        kind switch
        {
            Choice choice => new Picked([choice.Options.Index().First(option => !option.Item.IsRight).Index]),
            TrueOrFalse truth => new Picked([truth.IsTrue ? TrueOrFalse.False : TrueOrFalse.True]),
            OnPicture picture => new Picked([picture.Spots.Index().First(spot => !spot.Item.IsRight).Index]),
            Number number => new Typed((number.Amount with { Value = number.Amount.Value * 10 + 10 }).ToString()),
            _ => new Picked([.. ((Picked)kind.Right).Places.Reverse()]),
        };
}
