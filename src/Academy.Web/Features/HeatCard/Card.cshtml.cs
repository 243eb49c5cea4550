using Academy.Web.Features.Shared;
using Academy.Web.Shell;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.HeatCard;

/// <summary>First aid for a dog that is too hot. Asks nobody who they are, and stands when everything else is down.</summary>
[AllowAnonymous, NoFrame]
public sealed class CardModel(IVetPhone vets, ILogger<CardModel> log) : PageModel
{
    public static readonly string[] Never =
    [
        "wait for a thermometer, or for a vet, before cooling",
        "leave a wet towel lying over the dog: it holds the heat",
        "put alcohol on the pads",
        "put or keep a muzzle on the dog",
        "put a dog that is not awake into water, or leave it alone",
        "finish the groom",
    ];

    public VetPhone? Vet { get; private set; }

    public string? Practice =>
        Vet is null ? null
        : Vet.Night is null ? Vet.Practice
        : $"{Vet.Practice} Night: {Vet.Night}".Trim();

    public async Task OnGetAsync(CancellationToken stop)
    {
        try
        {
            Vet = await vets.FindAsync(stop);
        }
        // A dog in need comes before a database in need: whatever fails, the card stands, with words in place of the number.
        catch (Exception failure) when (failure is not OperationCanceledException)
        {
            log.LogError(failure, "The vet's number could not be read; the heat card is shown without it");
        }
    }
}
