using Academy.Competence;
using Academy.Modules;
using Academy.Modules.Parcels;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Academy.Web.Wording;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;

namespace Academy.Web.Features.Parcels;

/// <summary>Modules as a zip file: to keep elsewhere or give away, and to take in from elsewhere.</summary>
[Authorize(Policy = Policies.Writer)]
[RequestSizeLimit(Largest)]
[RequestFormLimits(MultipartBodyLengthLimit = Largest)]
public sealed class ParcelsModel(Who who, Shelf shelf, ParcelRack rack) : AcademyPage
{
    // Twice as much as is taken in, so that somewhat too large a file is answered on the page and not cut off.
    private const int Largest = 2 * ModuleParcel.LargestParcel;

    [BindProperty]
    public IFormFile? Parcel { get; set; }

    public ParcelsView View { get; private set; } = null!;

    public void OnGet() => View = ParcelsView.Of(shelf);

    /// <summary>One module, the salon's own, or all that are on its shelf.</summary>
    public IActionResult OnGetPack(string what)
    {
        Lesson[] lessons =
        [
            .. shelf.Lessons.Where(lesson =>
                what == ParcelsView.All || (what == ParcelsView.Own ? shelf.Own.ContainsKey(Name(lesson)) : Name(lesson) == what)
            ),
        ];
        if (lessons.Length == 0)
            return NotFound();
        return File(ModuleParcel.Pack(lessons.Select(ModuleFiles.Of)), "application/zip", ParcelsView.FileOf(what, who.Today));
    }

    public async Task<IActionResult> OnPostAsync(CancellationToken stop)
    {
        OnGet();
        if (Parcel is not { Length: > 0 } brought)
            return Refused("The parcel: choose a zip file");

        var (modules, refusals) = ModuleParcel.Unpack(await ReadAsync(brought, stop));
        if (!refusals.IsEmpty)
            return Refused([.. refusals.Select(ParcelsView.Words)]);
        rack.Put(who.Salon, who.Person.Id, modules.Select(LookedThrough.Of).ToListed());
        return LocalRedirect(Paths.ParcelBrought);
    }

    // One byte more than may be is enough to say that it is too much.
    private static async Task<ReadOnlyMemory<byte>> ReadAsync(IFormFile file, CancellationToken stop)
    {
        var bytes = new byte[Math.Min(file.Length, ModuleParcel.LargestParcel + 1)];
        await using var from = file.OpenReadStream();
        await from.ReadExactlyAsync(bytes, stop);
        return bytes;
    }

    private PageResult Refused(params IEnumerable<string> words)
    {
        foreach (var sentence in words)
            ModelState.AddModelError(nameof(Parcel), sentence);
        return Again();
    }

    private static string Name(Lesson lesson) => lesson.Module.Name.Value;
}
