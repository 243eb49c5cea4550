using Academy.Competence.Evidence;
using Academy.Competence.People;
using Academy.Competence.Quizzes;
using Academy.Competence.Salons;
using Academy.Modules;
using Academy.Storage;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;
using Paths = Academy.Web.Features.Shared.Paths;

namespace Academy.Web.Features.Study;

/// <summary>A heading of the lesson, for the list of its parts.</summary>
public sealed record PartLine(string Id, string Title);

/// <summary>An attempt at the module in its list.</summary>
public sealed record AttemptLine(string Words, string Href);

/// <summary>The way into the quiz as it stands for the reader.</summary>
/// <param name="Stand">How the module stands: "Passed on 3 March, due again by 31 May".</param>
/// <param name="Words">What comes next: how many questions, or when the quiz may be taken again.</param>
/// <param name="Button">What begins it; null where nothing is to be begun now.</param>
/// <param name="GoOn">A quiz under way, where there is one.</param>
public sealed record TakeView(string Stand, string Words, string? Button, string? GoOn);

/// <summary>One lesson as a page.</summary>
/// <param name="Html">The lesson with its sources, safe to be put into a page as it is.</param>
/// <param name="Readers">Juniors to whom the reader may read the quiz out.</param>
/// <param name="Notes">What seniors add: how it is done here.</param>
/// <param name="AddNote">Where notes are written; null for a junior.</param>
/// <param name="Editions">The editions of the module, for whoever writes modules; null for everybody else.</param>
/// <param name="Change">Where the module is changed; null for whoever writes none.</param>
public sealed record ReadView(
    string Title,
    string Summary,
    IReadOnlyList<string> Meta,
    string? ReviewPast,
    string Html,
    IReadOnlyList<PartLine> Parts,
    TakeView Take,
    IReadOnlyList<AttemptLine> Attempts,
    IReadOnlyList<Pick> Readers,
    IReadOnlyList<NoteLine> Notes,
    string? AddNote,
    string? Editions,
    string? Change
)
{
    public static ReadView Of(
        Lesson lesson,
        ModuleStudy study,
        IReadOnlyList<UnderWay> underWay,
        SalonBook book,
        Person person,
        IEnumerable<Person> readers,
        Names names,
        PathString mounted
    )
    {
        var module = lesson.Module;
        return new(
            module.Title,
            module.Summary,
            [
                StudyLength.Minutes(module),
                $"edition {module.Edition}",
                $"compared with its sources on {names.Time.Date(module.ReviewedOn)}",
            ],
            module.ReviewDueOn <= names.Time.Today
                ? $"Its next comparison with the sources was due on {names.Time.Date(module.ReviewDueOn)}. Newer guidance may say otherwise; a vet's word comes first."
                : null,
            LessonPage.Of(lesson, mounted),
            [.. lesson.Parts.Select(part => new PartLine(part.Id, part.Title))],
            TakeOf(study, underWay, person, names),
            [.. study.HandedIn.Reverse().Select(one => LineOf(one, names))],
            [.. readers.Select(one => new Pick(one.Id.Value.ToString(), one.Name))],
            NoteLine.Of(book, module.Name, person, names),
            person.MayJudgeByRole ? Paths.ModuleNotes(module.Name.Value) : null,
            person.MayWriteModules ? Paths.ModuleEditions(module.Name.Value) : null,
            person.MayWriteModules ? Paths.ChangeModule(module.Name.Value) : null
        );
    }

    /// <summary>Whom a senior or the owner may read a quiz out to: juniors who work here.</summary>
    public static IEnumerable<Person> Juniors(SalonBook book, Person reader, DateOnly today) =>
        reader.MayJudgeByRole ? book.People.Where(one => one.Role == Role.Junior && one.WorksOn(today)) : [];

    private static TakeView TakeOf(ModuleStudy study, IReadOnlyList<UnderWay> underWay, Person person, Names names)
    {
        var open = underWay.FirstOrDefault(one => one.Sitting.Module == study.Module.Name && one.Sitting.Person == person.Id);
        var stand = Say.Of(study.Found, names.Time);
        if (open is not null)
            return new(
                stand,
                $"A quiz is under way, {Counts.Of(open.Answers.Count, "answer")} kept.",
                null,
                Paths.Quiz(study.Module.Name.Value, open.Sitting.Id.Value)
            );
        if (study.NotBefore is { } at)
            return new(stand, $"The quiz may be taken again from {names.Time.At(at)} on.", null, null);
        return study.Need == StudyNeed.Passed && study.Next == QuizKind.Refresher
            ? new(stand, "Nothing is due now.", null, null)
            : new(
                stand,
                $"{StudyLength.Questions(study.Module, study.Next)}, no time limit. Stop whenever a dog needs you: your answers are kept.",
                $"Take the {Say.Word(study.Next)}",
                null
            );
    }

    private static AttemptLine LineOf(HandedIn handedIn, Names names)
    {
        var taken = handedIn.Taken;
        var kind = taken.IsRefresher ? "refresher" : "quiz";
        return new(
            $"{names.Time.Day(taken.HandedInAt)}: {kind} {(taken.HasPassed ? "passed" : "not passed")}, edition {taken.Edition}",
            Paths.Attempt(handedIn.Attempt.Value)
        );
    }
}
