using Academy.Competence;
using Academy.Competence.Quizzes;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.Judgements;

/// <summary>A judgement looked over before it is given.</summary>
[Authorize(Policy = Policies.Senior)]
public sealed class GiveModel(Who who, Ledger ledger, JudgementQueries bench, JudgingBook judgings, Ids ids)
    : KeepingPage(who, ledger)
{
    /// <summary>Made when the page is shown, so that a second sending is no second judgement.</summary>
    [BindProperty]
    public Guid Operation { get; set; } = ids.New();

    /// <summary>The edition that the page showed.</summary>
    [BindProperty]
    public string? Edition { get; set; }

    public GiveView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(string module, CancellationToken stop) =>
        await bench.FindAsync(module, stop) is { } found ? Show(found) : NotFound();

    public async Task<IActionResult> OnPostAsync(string module, CancellationToken stop)
    {
        if (await bench.FindAsync(module, stop) is not { } found || Operation == Guid.Empty)
            return NotFound();
        if (Edition != found.Module.Hash)
            return Changed(found);

        Show(found);
        var judged = Judging.Judge(found.Module, Who.Person, found.Said, Who.Today);
        var answer = await KeepAsync(judged, Operation, Paths.JudgePanel(module), "Your judgement is given.", stop);
        if (judged is Granted)
            await judgings.EndAsync(Who.Salon, Who.Person.Id, found.Module.Name);
        return answer;
    }

    private PageResult Show(Bench found)
    {
        Edition = found.Module.Hash;
        View = GiveView.Of(found);
        return Page();
    }

    private PageResult Changed(Bench found)
    {
        ModelState.Clear();
        ModelState.AddModelError(
            "",
            "The module has changed meanwhile. This is its newest edition: judge its questions as they are now"
        );
        Show(found);
        return MovedOn();
    }
}
