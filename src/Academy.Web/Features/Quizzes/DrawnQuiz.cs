using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Modules;
using Academy.Storage;

namespace Academy.Web.Features.Quizzes;

/// <summary>A quiz under way as it was drawn, from the edition it was drawn from.</summary>
public sealed record DrawnQuiz(UnderWay UnderWay, Lesson Lesson)
{
    private readonly Listed<Question> _asked = Quizzing.Draw(Lesson.Module, UnderWay.Sitting.Seed, UnderWay.Sitting.Kind);

    public Listed<Question> Asked => _asked;

    public Sitting Sitting => UnderWay.Sitting;

    public Guid Attempt => Sitting.Id.Value;

    public string Module => Sitting.Module.Value;

    /// <summary>Places picked for the question of this number, counted from 1; none where it is open.</summary>
    public IReadOnlyList<int> PickedAt(int number) =>
        UnderWay.Answers.FirstOrDefault(given => given.QuestionId == Asked[number - 1].Id)?.Picked ?? [];

    public bool IsAnswered(int number) => PickedAt(number).Count > 0;

    /// <summary>Numbers of the questions without an answer.</summary>
    public IReadOnlyList<int> Open => [.. Enumerable.Range(1, Asked.Count).Where(number => !IsAnswered(number))];

    /// <summary>The answers in the order in which the questions were asked.</summary>
    public IReadOnlyCollection<Answer> Answers =>
        [.. Asked.Select(question => UnderWay.Answers.FirstOrDefault(given => given.QuestionId == question.Id)).OfType<Answer>()];

    /// <summary>Whether these places can have been picked for the question of this number.</summary>
    public bool CanBePicked(int number, IEnumerable<int> picked) =>
        picked.All(place => place >= 0 && place < Asked[number - 1].Options.Count);
}
