using Academy.Competence.Quizzes;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.Quizzes;

/// <summary>One question of a quiz under way. Each answer is kept as it is given, whichever way one goes on.</summary>
[Authorize(Policy = Policies.Junior)]
public sealed class QuestionModel(Who who, QuizTableQueries table, QuizBook quizzes, TimeProvider clock) : AcademyPage
{
    /// <summary>Where the form leads to look everything over.</summary>
    public const string ToTheEnd = "end";

    /// <summary>The number of the question, counted from 1; the first open one where it is not said.</summary>
    [BindProperty(SupportsGet = true)]
    public int? Q { get; set; }

    /// <summary>Places of the picked options, as drawn.</summary>
    [BindProperty]
    public IReadOnlyList<int> Picked { get; set; } = [];

    /// <summary>The number of the question to go on with, or <see cref="ToTheEnd"/>.</summary>
    [BindProperty]
    public string? To { get; set; }

    public QuestionView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(string module, Guid attempt, CancellationToken stop)
    {
        var found = await table.FindAsync(module, attempt, stop);
        return found is AtTheTable.Goes(var quiz) ? Show(quiz) : Elsewhere(found);
    }

    public async Task<IActionResult> OnPostAsync(string module, Guid attempt, CancellationToken stop)
    {
        var found = await table.FindAsync(module, attempt, stop);
        if (found is not AtTheTable.Goes(var quiz))
            return Elsewhere(found);
        if (Q is not { } number || number < 1 || number > quiz.Asked.Count)
            return NotFound();
        if (!ModelState.IsValid || !IsOffered(quiz.Asked[number - 1].Kind))
            return Unreadable(quiz, number);

        await quizzes.AnswerAsync(who.Salon, quiz.Sitting.Id, new Answer(quiz.Asked[number - 1].Id, [.. Picked.Order()]));
        return LocalRedirect(Next(quiz, number));
    }

    private IActionResult Show(DrawnQuiz quiz)
    {
        if ((Q ?? quiz.Open.Cast<int?>().FirstOrDefault()) is not { } number)
            return LocalRedirect(Paths.HandIn(quiz.Module, quiz.Attempt));
        if (number < 1 || number > quiz.Asked.Count)
            return NotFound();

        Picked = (quiz.GivenAt(number) as Picked)?.Places ?? [];
        View = QuestionView.Of(quiz, number, Named);
        return Page();
    }

    private bool IsOffered(QuestionKind kind) => Picked.Count == 0 || kind.CanBe(new Picked([.. Picked]));

    private PageResult Unreadable(DrawnQuiz quiz, int number)
    {
        ModelState.Clear();
        ModelState.AddModelError(nameof(Picked), "Your answer: choose among the answers below");
        Picked = (quiz.GivenAt(number) as Picked)?.Places ?? [];
        View = QuestionView.Of(quiz, number, Named);
        return Again();
    }

    private string Next(DrawnQuiz quiz, int number) =>
        To == ToTheEnd ? Paths.HandIn(quiz.Module, quiz.Attempt)
        : int.TryParse(To, out var next) && next >= 1 && next <= quiz.Asked.Count ? Paths.Quiz(quiz.Module, quiz.Attempt, next)
        : Paths.Quiz(quiz.Module, quiz.Attempt, number);

    private IActionResult Elsewhere(AtTheTable found) => found.Leads is { } path ? LocalRedirect(path) : NotFound();

    private Names Named => Names.Of(who.Book, clock.GetUtcNow());
}
