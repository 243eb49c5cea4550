using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.People;
using Academy.Competence.Quizzes;
using Academy.Competence.Salons;
using Academy.Competence.Standings;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Paths = Academy.Web.Features.Shared.Paths;

namespace Academy.Web.Features.ModuleEditions;

/// <summary>One person whose clearances rest on the module.</summary>
/// <param name="Standing">The shape of the skills that are named: alone, or lapsed where the module stopped them.</param>
/// <param name="State">How the module stands for her.</param>
/// <param name="ToDo">What she has to do and by when; null for nothing.</param>
/// <param name="Skills">For which dogs she may no longer be alone without it.</param>
public sealed record AffectedPerson(string Name, string Href, string Standing, string State, string? ToDo, string Skills);

/// <summary>Who is affected by the edition of a module that is in force.</summary>
public sealed record AffectedView(
    string Title,
    string Heading,
    string Lead,
    string Editions,
    IReadOnlyList<AffectedPerson> ToDo,
    IReadOnlyList<AffectedPerson> Others,
    string Learning
)
{
    public static AffectedView Of(Module module, EditionHistory history, Team team, SalonBook book, Names names)
    {
        var resting = team.People.Select(person => Resting.Of(person, module.Name, team)).OfType<Resting>().ToList();
        var waiting = resting.Where(one => one.IsToDo(names)).OrderBy(one => one.Found.DueOn ?? DateOnly.MinValue).ToList();
        var asked = book.Library.FirstOrDefault(one => one.Module == module.Name);
        return new(
            $"{module.Title}: who is affected",
            HeadingOf(waiting.Count),
            LeadOf(module, history, names),
            Paths.ModuleEditions(module.Name.Value),
            [.. waiting.Select(one => one.Line(module, asked, book, names))],
            [.. resting.Except(waiting).Select(one => one.Line(module, asked, book, names))],
            LearningOf(team, module.Name, resting.Count)
        );
    }

    private static string HeadingOf(int waiting) =>
        waiting switch
        {
            0 => "Nobody has anything to do",
            1 => "One person has something to do",
            _ => $"{waiting} people have something to do",
        };

    private static string LeadOf(Module module, EditionHistory history, Names names)
    {
        var safety = history.InForce is { } edition ? EditionWords.Safety(edition, names) : null;
        return $"{module.Title}, edition {module.Edition}. {safety ?? "It asks nobody to catch up: older passes count as before."}";
    }

    private static string LearningOf(Team team, ModuleName module, int resting)
    {
        var asks = team.Skills.Where(skill => skill.Modules.Contains(module)).Select(skill => skill.Name).ToList();
        return asks.Count == 0
            ? "No skill asks for this module, so no clearance rests on it."
            : $"{Counts.Of(team.People.Count - resting, "other person", "other people")} here may do none of the skills alone that ask for it: {Say.Some(asks)}.";
    }

    /// <summary>The clearances of one person that rest on the module.</summary>
    private sealed record Resting(Person Person, ModuleFound Found, IReadOnlyList<Standing> Standings)
    {
        public static Resting? Of(Person person, ModuleName module, Team team)
        {
            var resting = (
                from standing in team.Of(person.Id)
                where standing.Tally.Clearance is not null
                from knowledge in standing.Findings.OfType<KnowledgeFound>()
                from found in knowledge.Modules
                where found.Module == module
                select (standing, found)
            ).ToList();
            return resting.Count == 0 ? null : new(person, resting[0].found, [.. resting.Select(one => one.standing)]);
        }

        public bool IsToDo(Names names) => Studying.NeedOf(Found, names.Time.Today) is not StudyNeed.Passed;

        public AffectedPerson Line(Module module, ModuleAsked? asked, SalonBook book, Names names) =>
            new(
                Person.Name,
                Paths.SkillsOf(Person.Id.Value),
                Say.Shape(IsStopped ? StandingKind.Lapsed : StandingKind.Alone),
                Say.Of(Found, names.Time),
                IsToDo(names) ? ToDo(module, asked, book, names) : null,
                Say.Some([.. Standings.Select(standing => names.Of(standing.Skill))])
            );

        private bool IsStopped => Standings.Any(standing => standing.Kind == StandingKind.Lapsed) && !Found.Holds;

        private string ToDo(Module module, ModuleAsked? asked, SalonBook book, Names names)
        {
            var quiz = Studying.NextQuiz(Found, asked, names.Time.Today, book.House);
            var by = Found is { Holds: true, DueOn: { } last } ? $"by {names.Time.Day(last)}" : "now: it does not count";
            var questions = StudyLength.Questions(module, quiz);
            return quiz == QuizKind.CatchUp ? $"Answers {questions}, {by}." : $"Takes the {Say.Word(quiz)}, {questions}, {by}.";
        }
    }
}
