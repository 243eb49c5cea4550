using Academy.Modules.Parcels;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.Parcels;

/// <summary>What is in a parcel that somebody brought; what is chosen of it becomes a draft of hers.</summary>
[Authorize(Policy = Policies.Writer)]
public sealed class BroughtModel(Who who, Shelf shelf, DraftBook drafts, ParcelRack rack, TimeProvider clock) : AcademyPage
{
    [BindProperty]
    public IList<string> Chosen { get; set; } = [];

    public BroughtView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(CancellationToken stop)
    {
        if (await LookAsync(stop) is not { } brought)
            return Gone();
        Chosen = [.. brought.Where(module => module.MayBeTaken).Select(module => module.Name)];
        return Page();
    }

    public async Task<IActionResult> OnPostAsync(CancellationToken stop)
    {
        if (await LookAsync(stop) is not { } brought)
            return Gone();
        var chosen = brought.Where(module => Chosen.Contains(module.Name, StringComparer.Ordinal)).ToList();
        if (chosen.Count == 0)
            return Refused("Take: choose at least one module, or leave the parcel where it is");

        var begun = await BeginAsync(chosen, stop);
        // A second sending finds its own drafts, and says the same.
        return begun.Count == 0
            ? Refused([.. chosen.Select(module => $"{module.Title}: {module.Note}")])
            : Done(Paths.Modules, BroughtWords.Begun(begun));
    }

    private async Task<List<string>> BeginAsync(List<BroughtModule> chosen, CancellationToken stop)
    {
        List<string> begun = [];
        foreach (var module in chosen)
            if (module.IsOwnDraft || (module.MayBeTaken && await BeginAsync(module.Files)))
                begun.Add(module.Title);
        return begun;
    }

    private Task<bool> BeginAsync(ModuleFiles files) =>
        drafts.BeginAsync(
            who.Salon,
            new Draft(
                new(files.Name),
                files.Text,
                who.Person.Id,
                clock.GetUtcNow(),
                AskedAt: null,
                Change: "",
                CatchUpBy: null,
                Returned: null,
                Version: 0
            ),
            files.Pictures
        );

    private async Task<IReadOnlyList<BroughtModule>?> LookAsync(CancellationToken stop)
    {
        if (rack.Find(who.Salon, who.Person.Id) is not { } modules)
            return null;
        List<BroughtModule> looked = [];
        foreach (var module in modules)
            looked.Add(BroughtModule.Of(module, shelf, await drafts.FindAsync(who.Salon, new(module.Files.Name), stop), who));
        View = BroughtView.Of(looked);
        return looked;
    }

    private LocalRedirectResult Gone() =>
        Done(Paths.Parcels, "There is no parcel of yours here any more. Choose the file again.");

    private PageResult Refused(params IEnumerable<string> words)
    {
        foreach (var sentence in words)
            ModelState.AddModelError(nameof(Chosen), sentence);
        return Again();
    }
}
