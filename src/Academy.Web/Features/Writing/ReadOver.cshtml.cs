using System.ComponentModel.DataAnnotations;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Shell;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.Writing;

/// <summary>A finished draft is read over as it will look, and published or given back.</summary>
[Authorize(Policy = Policies.Writer)]
public sealed class ReadOverModel(
    Who who,
    DraftBook drafts,
    DraftQueries desk,
    PublishQueries publishing,
    Shelf shelf,
    Ids ids,
    TimeProvider clock
) : DraftPage(who, desk, shelf, clock)
{
    [BindProperty]
    public Guid Operation { get; set; } = ids.New();

    /// <summary>The fingerprint of what was read: text, pictures and all.</summary>
    [BindProperty]
    public string? Seen { get; set; }

    [BindProperty]
    public EditionForm Form { get; set; } = new();

    [BindProperty, StringLength(2000, ErrorMessage = "What to change: at most 2,000 letters")]
    public string? Says { get; set; }

    public ReadOverView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(CancellationToken stop) =>
        await FindAsync(stop) is { } draft ? await AnewAsync(draft, Page, stop) : NotFound();

    public async Task<IActionResult> OnPostAsync(CancellationToken stop)
    {
        if (await publishing.HasPublishedAsync(Operation, stop))
            return Published();
        if (await FindAsync(stop) is not { AskedAt: not null } draft)
            return Gone();
        if (draft.Version != Form.Version || await publishing.SeenAsync(draft, stop) != Seen)
            return await MovedOnAsync(stop);

        Form.Check(AskView.IsFirstEdition(Who.Book, draft.Module), ModelState);
        var offer = await publishing.OfferAsync(Form.Over(draft, Who.Book), stop);
        EditionForm.Tell(offer.Against, Named, ModelState);
        if (offer.Decision is null)
            ModelState.AddModelError("", AskView.CannotBeRead);
        if (!ModelState.IsValid && !offer.HasMovedOn)
            return await ShowAsync(draft, Again, stop);
        return await publishing.KeepAsync(offer, Operation) ? Published() : await MovedOnAsync(stop);
    }

    public async Task<IActionResult> OnPostGiveBackAsync(CancellationToken stop)
    {
        if (await FindAsync(stop) is not { } draft)
            return Gone();
        var returned = new Returned(Who.Person.Id, Says?.Trim() ?? "");
        if (draft.AskedAt is null && draft.Returned == returned)
            return GivenBack(draft);
        if (returned.Says.Length == 0)
            ModelState.AddModelError(nameof(Says), "What to change: write it, so that it can be mended");
        if (!ModelState.IsValid)
            return await AnewAsync(draft, Again, stop);

        var back = draft with { AskedAt = null, Returned = returned, Version = Form.Version };
        return draft.AskedAt is not null && await drafts.SaveAsync(Who.Salon, back) ? GivenBack(draft) : await MovedOnAsync(stop);
    }

    /// <summary>Whoever asked takes it back, to go on writing.</summary>
    public async Task<IActionResult> OnPostTakeBackAsync(CancellationToken stop)
    {
        if (await FindAsync(stop) is not { } draft)
            return Gone();

        await drafts.SaveAsync(Who.Salon, draft with { AskedAt = null, Version = Form.Version });
        return LocalRedirect(Paths.Write(Module));
    }

    private LocalRedirectResult Published() => Done(Paths.Module(Module), ReadOverView.Published(Who.Book, Module));

    private LocalRedirectResult GivenBack(Draft draft) =>
        Done(Paths.Modules, $"It is back with {Named.Of(draft.Author)}, with what you wrote.");

    private async Task<IActionResult> MovedOnAsync(CancellationToken stop)
    {
        if (await FindAsync(stop) is not { } there)
            return Gone();
        ModelState.Remove("");
        ModelState.AddModelError("", ReadOverView.MovedOn(there, Form.Version, Named));
        return await AnewAsync(there, MovedOn, stop);
    }

    // What is there now, to be read over from the beginning; what was typed to give it back stays.
    private async Task<IActionResult> AnewAsync(Draft draft, Func<PageResult> answer, CancellationToken stop)
    {
        Form = EditionForm.Of(draft, Who.Today);
        foreach (var key in ModelState.Keys.Where(key => key is not ("" or nameof(Says))))
            ModelState.Remove(key);
        Seen = await publishing.SeenAsync(draft, stop);
        return await ShowAsync(draft, answer, stop);
    }

    private async Task<IActionResult> ShowAsync(Draft draft, Func<PageResult> answer, CancellationToken stop)
    {
        var read = await publishing.ReadAsync(draft, stop);
        View = ReadOverView.Of(read, Desk.TitleOf(read), Shelf, Who, Named, Request.PathBase);
        return answer();
    }
}
