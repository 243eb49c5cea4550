using Academy.Competence.Evidence;
using Academy.Competence.People;
using Academy.Storage;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Paths = Academy.Web.Features.Shared.Paths;

namespace Academy.Web.Features.Study;

/// <summary>A quiz under way: of which module, how far, and by whom it is read out.</summary>
public sealed record UnderWayLine(string Title, string Words, string Href);

/// <summary>The list of modules as it stands for one person.</summary>
public sealed record StudyView(
    string Heading,
    string Lead,
    IReadOnlyList<UnderWayLine> UnderWay,
    IReadOnlyList<GoOnLine> Reading,
    StudyNextView? Next,
    IReadOnlyList<StudyLine> ToStudy,
    IReadOnlyList<StudyLine> Passed,
    IReadOnlyList<StudyLine> Further,
    IReadOnlyList<string> Missing,
    bool IsEmpty,
    bool IsOwner,
    bool Judges,
    bool Writes
)
{
    /// <summary>How many places to go on from are shown.</summary>
    public const int MostPlaces = 3;

    public static StudyView Of(
        Person person,
        StudyPlan plan,
        IReadOnlyList<UnderWay> underWay,
        IReadOnlyList<GoOnLine> reading,
        Names names
    )
    {
        var next = StudyNextView.Of(plan);
        return new(
            HeadingOf(plan),
            LeadOf(plan),
            [.. underWay.Select(one => Line(one, person, names))],
            reading,
            next,
            [.. plan.Of(StudyNeed.ToStudy).Where(planned => planned != plan.Next).Select(StudyLine.Of)],
            [.. plan.Of(StudyNeed.Passed).Select(StudyLine.Of)],
            [.. plan.Further.Select(StudyLine.Of)],
            [.. plan.Missing.Select(names.Of)],
            IsBare(plan),
            person.Role == Role.Owner,
            person.MayJudgeByRole,
            person.MayWriteModules
        );
    }

    private static string HeadingOf(StudyPlan plan) =>
        (plan.Of(StudyNeed.Overdue).Count(), plan.Of(StudyNeed.DueSoon).Count(), plan.Of(StudyNeed.ToStudy).Count()) switch
        {
            _ when IsBare(plan) => "There is nothing to study yet",
            _ when plan.Modules.Count == 0 => "No skill asks for a module",
            (1, _, _) => "One module no longer counts",
            (> 1 and var overdue, _, _) => $"{overdue} modules no longer count",
            (_, 1, _) => "One module is due soon",
            (_, > 1 and var due, _) => $"{due} modules are due soon",
            (_, _, 1) => "One module to study",
            (_, _, > 1 and var rest) => $"{rest} modules to study",
            _ => "Everything is passed",
        };

    private static string LeadOf(StudyPlan plan)
    {
        var passed = plan.Modules.Count(planned => planned.Found.Holds);
        return (plan.Modules.Count, plan.Further.Count) switch
        {
            (0, 0) =>
                "The salon has no modules here. They are text files in a folder; whoever looks after the portal puts them there.",
            (0, var further) =>
                $"{Counts.Of(further, "module")} can be read all the same. The owner says what each skill asks for.",
            var (asked, _) => $"{Counts.OutOf(passed, asked)} passed and in force.",
        };
    }

    private static bool IsBare(StudyPlan plan) => plan.Modules.Count == 0 && plan.Further.Count == 0;

    private static UnderWayLine Line(UnderWay underWay, Person person, Names names)
    {
        var sitting = underWay.Sitting;
        var whose =
            sitting.Person == person.Id
                ? sitting.ReadOutBy is { } senior
                    ? $", read out by {names.Of(senior)}"
                    : ""
                : $", read out to {names.Of(sitting.Person)}";
        return new(
            names.Of(sitting.Module),
            $"{Counts.Of(underWay.Answers.Count, "answer")} kept, begun {names.Time.At(sitting.StartedAt)}{whose}",
            Paths.Quiz(sitting.Module.Value, sitting.Id.Value)
        );
    }
}
