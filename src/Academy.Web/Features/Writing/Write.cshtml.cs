using Academy.Modules.Parcels;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.Writing;

/// <summary>A module is written: its text, how it will look, and what is found in it. Nothing that was typed is lost.</summary>
[Authorize(Policy = Policies.Writer)]
public sealed class WriteModel(Who who, DraftBook drafts, DraftQueries desk, Shelf shelf, TimeProvider clock)
    : DraftPage(who, desk, shelf, clock)
{
    [BindProperty]
    public WriteForm Form { get; set; } = new();

    public WriteView View { get; private set; } = null!;

    /// <summary>Whether the text is as it was saved last: then what a device kept of an unsaved one may take its place.</summary>
    public bool IsFresh { get; private set; }

    public async Task<IActionResult> OnGetAsync(CancellationToken stop)
    {
        if (await FindAsync(stop) is not { } draft)
            return NotFound();

        (Form, IsFresh) = (WriteForm.Of(draft), true);
        ModelState.Clear();
        return await ShowAsync(draft, Page, stop);
    }

    /// <summary>Without a script: the page again, with what was typed and how that looks.</summary>
    public async Task<IActionResult> OnPostLookAsync(CancellationToken stop) =>
        IsName ? await ShowAsync(await FindAsync(stop), Page, stop) : NotFound();

    /// <summary>With a script: only how it looks and what was found.</summary>
    public async Task<IActionResult> OnPostPreviewAsync(CancellationToken stop)
    {
        if (!IsName)
            return NotFound();

        await ShowAsync(await FindAsync(stop), Page, stop);
        return Partial("_Shown", View.Shown);
    }

    public Task<IActionResult> OnPostAsync(CancellationToken stop) => SaveAsync(Paths.Write(Module), stop);

    public Task<IActionResult> OnPostPicturesAsync(CancellationToken stop) => SaveAsync(Paths.DraftPictures(Module), stop);

    public Task<IActionResult> OnPostFinishAsync(CancellationToken stop) => SaveAsync(Paths.AskToRead(Module), stop);

    /// <summary>After somebody saved in between: goes on from that, with what was typed beside it.</summary>
    public async Task<IActionResult> OnPostTheirsAsync(CancellationToken stop)
    {
        if (await FindAsync(stop) is not { } there)
            return await MovedOnAsync(stop);

        var mine = new OtherText("What you had typed", "Copy from it what should stay.", Form.Lines, IsThere: false);
        Form = WriteForm.Of(there);
        ModelState.Clear();
        return await ShowAsync(there, Page, stop, mine);
    }

    /// <summary>Throws the draft away in the version that was seen.</summary>
    public async Task<IActionResult> OnPostEndAsync(CancellationToken stop)
    {
        if (await drafts.EndAsync(Who.Salon, new(Module), Form.Version) || await FindAsync(stop) is not { } there)
            return Done(Paths.Modules, "The draft is thrown away. What was published before stays as it is.");

        Form = WriteForm.Of(there);
        return await MovedOnAsync(stop);
    }

    private bool IsName => StartingText.IsName(Module).MayBe;

    private async Task<IActionResult> SaveAsync(string path, CancellationToken stop)
    {
        if (!IsName)
            return NotFound();
        var there = await FindAsync(stop);
        if (Form.Wrong is { } wrong)
            ModelState.AddModelError("Form.Text", wrong);
        if (!ModelState.IsValid)
            return await ShowAsync(there, Again, stop);
        if (there?.Text == Form.Lines)
            return Done(path, "It is saved.");

        var draft = Form.Over(there, Module, Who.Person.Id, Now);
        return await Desk.SaveAsync(draft) ? Done(path, "It is saved.") : await MovedOnAsync(stop);
    }

    private async Task<IActionResult> MovedOnAsync(CancellationToken stop)
    {
        var there = await FindAsync(stop);
        Form.Version = there?.Version ?? 0;
        ModelState.Clear();
        ModelState.AddModelError("", there is null ? WriteWords.Gone : WriteWords.MovedOn(there, Named));
        return await ShowAsync(there, MovedOn, stop, there is null ? null : WriteWords.There(there, Named));
    }

    private async Task<PageResult> ShowAsync(
        Draft? there,
        Func<PageResult> answer,
        CancellationToken stop,
        OtherText? other = null
    )
    {
        var typed = (there ?? DraftStart.Of(new(Module), "", Who.Person.Id, Now)) with { Text = Form.Lines };
        var read = await Desk.ReadAsync(typed, stop);
        View = WriteView.Of(read, Desk.TitleOf(read), other, Who, Named, Request.PathBase);
        return answer();
    }
}
