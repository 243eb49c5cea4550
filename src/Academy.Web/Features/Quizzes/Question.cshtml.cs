using Academy.Competence.Quizzes;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
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

    /// <summary>For each step or pair as drawn the place chosen for it.</summary>
    [BindProperty]
    public IReadOnlyList<string?> Placed { get; set; } = [];

    /// <summary>A number and its unit.</summary>
    [BindProperty]
    public string? Typed { get; set; }

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
        var question = quiz.Asked[number - 1];
        AnswerForm form = new(Picked, Placed, Typed);
        foreach (var (field, words) in form.Problems(question.Kind))
            ModelState.AddModelError(field, words);
        if (!ModelState.IsValid)
            return Unreadable(quiz, number, form.Whole(question.Kind));

        await quizzes.AnswerAsync(who.Salon, quiz.Sitting.Id, new Answer(question.Id, form.Given(question.Kind)));
        return LocalRedirect(Next(quiz, number));
    }

    /// <summary>A picture that a question asks about, in the edition that the quiz was drawn from.</summary>
    public async Task<IActionResult> OnGetPictureAsync(string module, Guid attempt, string file, CancellationToken stop)
    {
        var found = await table.FindAsync(module, attempt, stop);
        return found is AtTheTable.Goes(var quiz) && quiz.Lesson.Pictures.TryGetValue(file, out var picture)
            ? Pictures.Shown(Response, picture)
            : NotFound();
    }

    private IActionResult Show(DrawnQuiz quiz)
    {
        if ((Q ?? quiz.Open.Cast<int?>().FirstOrDefault()) is not { } number)
            return LocalRedirect(Paths.HandIn(quiz.Module, quiz.Attempt));
        if (number < 1 || number > quiz.Asked.Count)
            return NotFound();

        return Shown(quiz, number, AnswerForm.Of(quiz.Asked[number - 1].Kind, quiz.GivenAt(number)));
    }

    private PageResult Unreadable(DrawnQuiz quiz, int number, AnswerForm form)
    {
        // Where the form held something else than numbers of answers.
        if (ModelState.TryGetValue(nameof(Picked), out var picked) && picked.Errors.Count > 0)
        {
            picked.Errors.Clear();
            picked.Errors.Add("Your answer: choose among the answers below");
        }
        Shown(quiz, number, form);
        return Again();
    }

    private PageResult Shown(DrawnQuiz quiz, int number, AnswerForm form)
    {
        (Picked, Placed, Typed) = (form.Picked, form.Placed, form.Typed);
        View = QuestionView.Of(quiz, number, Named);
        return Page();
    }

    private string Next(DrawnQuiz quiz, int number) =>
        To == ToTheEnd ? Paths.HandIn(quiz.Module, quiz.Attempt)
        : int.TryParse(To, out var next) && next >= 1 && next <= quiz.Asked.Count ? Paths.Quiz(quiz.Module, quiz.Attempt, next)
        : Paths.Quiz(quiz.Module, quiz.Attempt, number);

    private IActionResult Elsewhere(AtTheTable found) => found.Leads is { } path ? LocalRedirect(path) : NotFound();

    private Names Named => Names.Of(who.Book, clock.GetUtcNow());
}
