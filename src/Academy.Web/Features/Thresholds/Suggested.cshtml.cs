using Academy.Competence;
using Academy.Competence.Salons;
using Academy.Competence.Skills;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Shell;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Thresholds;

/// <summary>The modules whose authors name skills that do not ask for them: the owner lets many skills ask for them at once.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class SuggestedModel(Who who, RecordBook records, Ledger ledger, Shelf shelf, Ids ids)
    : BookPage(who, records, ledger, ids)
{
    public SuggestedForm Ask { get; set; } = new();

    public SuggestedView View { get; private set; } = null!;

    protected override (string Name, BookForm Form) Shown => (nameof(Ask), Ask);

    public async Task OnGetAsync(CancellationToken stop)
    {
        var found = Find();
        Ask = await FreshAsync(new SuggestedForm { Chosen = [.. SuggestedForm.First(found)] }, stop);
    }

    public async Task<IActionResult> OnPostAsync([FromForm(Name = nameof(Ask))] SuggestedForm form, CancellationToken stop)
    {
        Ask = form;
        var chosen = form.Read(Find());
        if (chosen.Count == 0)
            ModelState.AddModelError(
                $"{nameof(Ask)}.{nameof(Ask.Chosen)}",
                "Tick at least one module that a skill is to ask for."
            );
        if (!ModelState.IsValid)
            return Again();

        var skills = chosen.Select(one => one.Skill).Distinct().Count();
        return await KeepAsync(
            Keeping.AskFor(chosen.Select(one => (one.Skill, one.Module)), Who.Book, Who.Person),
            Paths.Skills,
            $"{Counts.Of(skills, "skill asks", "skills ask")} for more from today.",
            stop
        );
    }

    private Listed<Suggestion> Find()
    {
        var found = Suggesting.For(Who.Book, shelf.Modules);
        View = SuggestedView.Of(found, Who.Book, shelf.Titles, Names.Of(Who.Book, Who.Hand.Now, shelf.Titles));
        return found;
    }
}
