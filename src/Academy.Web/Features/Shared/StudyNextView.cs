using Academy.Competence.Evidence;
using Academy.Competence.Quizzes;

namespace Academy.Web.Features.Shared;

/// <summary>One module in a list: how it stands, and why it is asked.</summary>
/// <param name="IsPressing">Whether it no longer counts or is due today.</param>
public sealed record StudyLine(string Title, string Href, string When, string Why, string Length, bool IsPressing)
{
    public static StudyLine Of(Planned planned) =>
        new(
            planned.Module.Title,
            Paths.Module(planned.Module.Name.Value),
            planned.When,
            planned.Why,
            StudyLength.Of(planned),
            planned.Need == StudyNeed.Overdue
        );
}

/// <summary>What to study next and what is due, for the first page of the day: the partial <c>_StudyNext</c>.</summary>
/// <param name="Next">The most pressing.</param>
/// <param name="Label">What kind of next it is.</param>
/// <param name="Button">What its action says.</param>
/// <param name="Due">Others that are overdue or due soon.</param>
public sealed record StudyNextView(StudyLine Next, string Label, string Button, IReadOnlyList<StudyLine> Due)
{
    /// <summary>Null where everything is passed and nothing is due.</summary>
    public static StudyNextView? Of(StudyPlan plan) =>
        plan.Next is { } next
            ? new(
                StudyLine.Of(next),
                LabelOf(next.Need),
                next.Quiz == QuizKind.Refresher ? "To the refresher" : "Read the module",
                [
                    .. plan
                        .Modules.Skip(1)
                        .TakeWhile(planned => planned.Need is StudyNeed.Overdue or StudyNeed.DueSoon)
                        .Select(StudyLine.Of),
                ]
            )
            : null;

    private static string LabelOf(StudyNeed need) =>
        need switch
        {
            StudyNeed.Overdue => "First of all",
            StudyNeed.DueSoon => "Due soon",
            _ => "Study next",
        };
}
