using Academy.Competence;
using Academy.Competence.Grooms;
using Academy.Storage;
using Academy.Storage.Ledgers;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Flags;

/// <summary>One flagged groom: the owner says what was spoken about it.</summary>
[Authorize(Policy = Policies.Owner)]
public sealed class SpeakModel(Who who, RecordBook records, Ledger ledger, Ids ids) : KeepingPage(who, ledger)
{
    [BindProperty]
    public SpeakForm Form { get; set; } = new();

    public SpeakView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(Guid groom, Guid person, CancellationToken stop)
    {
        if (await ShowAsync(groom, person, stop) is not { } shown)
            return NotFound();

        Form = new SpeakForm { Operation = ids.New(), Version = shown.One.Known.Version };
        return Page();
    }

    public async Task<IActionResult> OnPostAsync(Guid groom, Guid person, CancellationToken stop)
    {
        if (await ShowAsync(groom, person, stop) is not { } shown)
            return NotFound();
        if (Form.Wrong is { } wrong)
            ModelState.AddModelError("Form.Says", wrong);
        if (!ModelState.IsValid)
            return Again();

        var said = new Words(Form.Says?.Trim() ?? "");
        return await KeepAsync(
            Flagging.SpeakAbout(shown.Flag, Who.Person, said),
            new Sent(Form.Operation, groom, Form.Version),
            Paths.Flags,
            $"{shown.One.Title}: spoken about.",
            stop
        );
    }

    protected override void ShowAt(long version)
    {
        ModelState.Remove("Form.Version");
        Form.Version = version;
    }

    private async Task<(OneGroom One, FlagStory Flag)?> ShowAsync(Guid groom, Guid person, CancellationToken stop)
    {
        if (await OneGroom.FindAsync(records, Who, groom, stop) is not { } one)
            return null;
        if (one.Known.Record.Flags.FirstOrDefault(flag => flag.Person.Value == person) is not { } flagged)
            return null;

        View = SpeakView.Of(one, flagged);
        return (one, flagged);
    }
}
