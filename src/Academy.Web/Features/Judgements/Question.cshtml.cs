using Academy.Competence.Quizzes;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.Judgements;

/// <summary>One question before a judge. Each number is kept as it is given, so that a dog may come between.</summary>
[Authorize(Policy = Policies.Senior)]
public sealed class QuestionModel(Who who, JudgementQueries bench, JudgingBook judgings) : AcademyPage
{
    /// <summary>Where the form leads to look everything over.</summary>
    public const string ToTheEnd = "end";

    /// <summary>The number of the question, counted from 1; the first of which nothing was said where it is not named.</summary>
    [BindProperty(SupportsGet = true)]
    public int? Q { get; set; }

    /// <summary>The edition that the page showed.</summary>
    [BindProperty]
    public string? Edition { get; set; }

    /// <summary>How many of ten.</summary>
    [BindProperty]
    public string? OfTen { get; set; }

    /// <summary>The number of the question to go to; nothing for the next one that is open.</summary>
    [BindProperty]
    public string? To { get; set; }

    public QuestionView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(string module, CancellationToken stop)
    {
        if (await bench.FindAsync(module, stop) is not { } found)
            return NotFound();
        if ((Q ?? found.Open.Cast<int?>().FirstOrDefault()) is not { } number)
            return LocalRedirect(Paths.GiveJudgement(module));
        return IsOf(found, number) ? Show(found, number) : NotFound();
    }

    public async Task<IActionResult> OnPostAsync(string module, CancellationToken stop)
    {
        if (await bench.FindAsync(module, stop) is not { } found || Q is not { } number || !IsOf(found, number))
            return NotFound();
        if (Edition != found.Module.Hash)
            return Changed(found, number);
        if (OfTen is null && To is not null)
            return LocalRedirect(Next(found, number));
        if (!int.TryParse(OfTen, out var ofTen) || ofTen is < 0 or > 10)
            return Unreadable(found, number);

        await judgings.KeepAsync(
            who.Salon,
            who.Person.Id,
            found.Module.Name,
            found.Module.Hash,
            (found.Module.Questions[number - 1].Id, ofTen * 10),
            JudgementQueries.Percents(Judging.By(who.Book, found.Module, who.Person.Id))
        );
        return LocalRedirect(Next(found, number));
    }

    private static bool IsOf(Bench found, int number) => number >= 1 && number <= found.Module.Questions.Count;

    private PageResult Show(Bench found, int number)
    {
        Edition = found.Module.Hash;
        OfTen = found.At(number)?.ToString(System.Globalization.CultureInfo.InvariantCulture);
        View = QuestionView.Of(found, number, Request.PathBase);
        return Page();
    }

    private PageResult Unreadable(Bench found, int number)
    {
        ModelState.AddModelError(nameof(OfTen), "How many of ten: choose a number from 0 to 10");
        View = QuestionView.Of(found, number, Request.PathBase);
        return Again();
    }

    private PageResult Changed(Bench found, int number)
    {
        ModelState.Clear();
        ModelState.AddModelError(
            "",
            "The module has changed meanwhile. This is its newest edition: judge the question as it is now"
        );
        Show(found, number);
        return MovedOn();
    }

    private string Next(Bench found, int number) =>
        int.TryParse(To, out var next) && IsOf(found, next) ? Paths.JudgeModule(found.Module.Name.Value, next)
        : To is not null ? Paths.GiveJudgement(found.Module.Name.Value)
        : found.Open.Where(open => open != number).OrderBy(open => open < number).Cast<int?>().FirstOrDefault() is { } open
            ? Paths.JudgeModule(found.Module.Name.Value, open)
        : Paths.GiveJudgement(found.Module.Name.Value);
}
