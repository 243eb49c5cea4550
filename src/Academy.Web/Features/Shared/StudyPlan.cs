using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Quizzes;
using Academy.Competence.Salons;
using Academy.Competence.Standings;
using Academy.Web.Wording;

namespace Academy.Web.Features.Shared;

/// <summary>One module as it stands for one person, and why it is asked.</summary>
/// <param name="When">How it stands, with its days.</param>
/// <param name="Why">Which of the person's skills rest on it.</param>
public sealed record Planned(Module Module, ModuleFound Found, StudyNeed Need, QuizKind Quiz, string When, string Why);

/// <summary>
/// What a person studies, the most pressing first: what no longer counts, what is due soon, what was never passed (before all
/// where she grooms alone already or is learning), and what is passed.
/// </summary>
/// <param name="Further">Modules that no skill asks for and the person has not passed: worth reading, and never pressing.</param>
/// <param name="Missing">Modules that skills ask for and the salon does not have.</param>
public sealed record StudyPlan(IReadOnlyList<Planned> Modules, IReadOnlyList<Planned> Further, IReadOnlyList<ModuleName> Missing)
{
    public static StudyPlan Of(
        IEnumerable<Standing> standings,
        SalonBook book,
        IReadOnlyCollection<QuizTaken> taken,
        IEnumerable<Module> library,
        Names names
    )
    {
        var own = standings.ToList();
        var today = names.Time.Today;
        var all = library
            .Select(module => Find(module, own, book, taken, names))
            .OfType<(Planned Planned, Asking Asking)>()
            .ToList();
        var further = all.Where(one => one.Asking.All.Count == 0 && one.Planned.Need != StudyNeed.Passed).ToList();
        var modules = all.Except(further)
            .OrderBy(one => one.Planned.Need)
            .ThenBy(one => one.Planned.Found.DueOn ?? one.Asking.DueUntil ?? DateOnly.MaxValue)
            .ThenByDescending(one => one.Asking.Weight)
            .ThenBy(one => one.Planned.Module.Title, StringComparer.Ordinal)
            .Select(one => one.Planned)
            .ToList();
        var there = modules.Select(planned => planned.Module.Name).ToHashSet();
        return new(
            modules,
            [.. further.Select(one => one.Planned).OrderBy(planned => planned.Module.Title, StringComparer.Ordinal)],
            [.. own.SelectMany(ModulesOf).Select(found => found.Module).Distinct().Where(name => !there.Contains(name))]
        );
    }

    public IEnumerable<Planned> Of(StudyNeed need) => Modules.Where(planned => planned.Need == need);

    /// <summary>What to study now; null where everything is passed and nothing is due.</summary>
    public Planned? Next => Modules is [{ Need: not StudyNeed.Passed } first, ..] ? first : null;

    private static (Planned, Asking)? Find(
        Module module,
        List<Standing> own,
        SalonBook book,
        IReadOnlyCollection<QuizTaken> taken,
        Names names
    )
    {
        var today = names.Time.Today;
        var found = Knowledge.Of([module.Name], [.. book.Library], taken, today, book.Zone, book.House)[0];
        if (Studying.NeedOf(found, today) is not { } need)
            return null;
        var asked = book.Library.First(one => one.Module == module.Name);
        var asking = Asking.Of(module.Name, own);
        var quiz = Studying.NextQuiz(found, asked, today, book.House);
        return (new(module, found, need, quiz, Say.Of(found, names.Time), asking.Words(found, names)), asking);
    }

    private static IEnumerable<ModuleFound> ModulesOf(Standing standing) =>
        standing.Findings.OfType<KnowledgeFound>().SelectMany(knowledge => knowledge.Modules);

    /// <summary>The skills of one person that ask for one module.</summary>
    /// <param name="LastGap">Those for which nothing else lacks: who decides waits for it.</param>
    private sealed record Asking(
        IReadOnlyList<Standing> All,
        IReadOnlyList<Standing> LastGap,
        IReadOnlyList<Standing> Stopped,
        IReadOnlyList<Standing> Alone,
        IReadOnlyList<Standing> Learning,
        DateOnly? DueUntil
    )
    {
        public int Weight =>
            (Stopped.Count * 10_000) + (Alone.Count * 1000) + (LastGap.Count * 500) + (Learning.Count * 100) + All.Count;

        public static Asking Of(ModuleName module, List<Standing> own)
        {
            var all = own.Where(standing => ModulesOf(standing).Any(found => found.Module == module)).ToList();
            return new(
                all,
                [.. all.Where(standing => standing.Kind == StandingKind.Learning && LacksOnly(standing, module))],
                [.. all.Where(standing => IsStoppedBy(standing, module))],
                [.. all.Where(standing => standing.Kind == StandingKind.Alone)],
                [.. all.Where(standing => standing.Kind != StandingKind.Alone && standing.Tally.Rated > 0)],
                all.SelectMany(standing => standing.Findings.OfType<KnowledgeFound>())
                    .Where(knowledge => knowledge.Lacking.OfType<ModuleLacking>().Any(gap => gap.Module == module))
                    .Min(knowledge => knowledge.DueUntil)
            );
        }

        public string Words(ModuleFound found, Names names) =>
            this switch
            {
                { Alone: [_, ..] alone } when found.AsksToCatchUp && found.Holds =>
                    $"A short quiz on what changed keeps these yours alone: {Some(alone, names)}.",
                { Alone: [_, ..] alone } when found.IsLastTry => $"A second one not passed pauses these: {Some(alone, names)}.",
                { Stopped: [_, ..] stopped } => $"Until it is passed you may not groom alone: {Some(stopped, names)}.",
                { DueUntil: { } last, Alone: [_, ..] alone } =>
                    $"Due by {names.Time.Date(last)}, so that these stay yours alone: {Some(alone, names)}.",
                { Alone: [_, ..] alone } => $"It keeps these yours alone: {Some(alone, names)}.",
                { LastGap: [_, ..] ready } when !found.Holds =>
                    $"Nothing else lacks for {Some(ready, names)}: once it is passed the owner decides.",
                { Learning: [_, ..] learning } => $"Asked for by what you are learning: {Some(learning, names)}.",
                { All: [_, ..] all } => $"Asked for by {Some(all, names)}.",
                _ => "No skill asks for it.",
            };

        private static string Some(IReadOnlyList<Standing> standings, Names names) =>
            Say.Some([.. standings.Select(standing => names.Of(standing.Skill))]);

        private static bool LacksOnly(Standing standing, ModuleName module) =>
            standing.Gaps.Where(gap => gap is not NotDecided).ToList() is [ModuleLacking only] && only.Module == module;

        private static bool IsStoppedBy(Standing standing, ModuleName module) =>
            standing.Kind == StandingKind.Lapsed && standing.Gaps.OfType<ModuleLacking>().Any(gap => gap.Module == module);
    }
}

/// <summary>How long a module and its quiz take, in words.</summary>
public static class StudyLength
{
    public static string Of(Planned planned) =>
        planned switch
        {
            { Need: StudyNeed.Passed } when planned.Quiz == QuizKind.Refresher => Minutes(planned.Module),
            _ => $"{Minutes(planned.Module)}, then {Questions(planned.Module, planned.Quiz)}",
        };

    public static string Minutes(Module module) => $"{Counts.Of(module.Minutes, "minute")} to read";

    public static string Questions(Module module, QuizKind kind) =>
        kind == QuizKind.CatchUp
            ? $"at most {kind.Questions} questions on what changed"
            : Counts.Of(Quizzing.Draw(module, seed: 0, kind).Count, "question");
}
