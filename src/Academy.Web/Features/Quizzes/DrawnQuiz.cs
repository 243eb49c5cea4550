using Academy.Competence;
using Academy.Competence.Evidence;
using Academy.Competence.Quizzes;
using Academy.Competence.Salons;
using Academy.Modules;
using Academy.Storage;

namespace Academy.Web.Features.Quizzes;

/// <summary>A quiz under way as it was drawn, from the edition it was drawn from.</summary>
public sealed record DrawnQuiz(UnderWay UnderWay, Lesson Lesson)
{
    private readonly Listed<Question> _asked = UnderWay.Sitting.Draw(Lesson.Module);

    public Listed<Question> Asked => _asked;

    public Sitting Sitting => UnderWay.Sitting;

    public Guid Attempt => Sitting.Id.Value;

    public string Module => Sitting.Module.Value;

    /// <summary>What was answered to the question of this number, counted from 1; null where it is open.</summary>
    public Given? GivenAt(int number) =>
        UnderWay.Answers.FirstOrDefault(given => given.QuestionId == Asked[number - 1].Id)?.Given;

    public bool IsAnswered(int number) => GivenAt(number) is { IsEmpty: false };

    /// <summary>Numbers of the questions without an answer.</summary>
    public IReadOnlyList<int> Open => [.. Enumerable.Range(1, Asked.Count).Where(number => !IsAnswered(number))];

    /// <summary>Where the module stands for whoever takes it.</summary>
    public ModuleFound Stand(SalonBook book, Listed<HandedIn> handedIn, DateOnly today) =>
        Knowledge.Of([Sitting.Module], [.. book.Library], [.. handedIn.Select(one => one.Taken)], today, book.Zone, book.House)[
            0
        ];

    /// <summary>The answers in the order in which the questions were asked.</summary>
    public IReadOnlyCollection<Answer> Answers =>
        [.. Asked.Select(question => UnderWay.Answers.FirstOrDefault(given => given.QuestionId == question.Id)).OfType<Answer>()];
}
