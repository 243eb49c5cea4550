using Academy.Modules.Pictures;
using Academy.Storage;
using Academy.Web.Access;
using Academy.Web.Features.Shared;
using Academy.Web.Library;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc;

namespace Academy.Web.Features.Writing;

/// <summary>The pictures of a module that is being written: taken in, replaced, taken out.</summary>
[Authorize(Policy = Policies.Writer)]
public sealed class PicturesModel(Who who, DraftBook drafts, DraftQueries desk, Shelf shelf, TimeProvider clock)
    : DraftPage(who, desk, shelf, clock)
{
    [BindProperty]
    public string? Name { get; set; }

    [BindProperty]
    public IFormFile? Sent { get; set; }

    public PicturesView View { get; private set; } = null!;

    public async Task<IActionResult> OnGetAsync(CancellationToken stop) => await ShowAsync(Page, stop);

    public async Task<IActionResult> OnGetPictureAsync(string file, CancellationToken stop)
    {
        var pictures = await drafts.PicturesAsync(Who.Salon, new(Module), stop);
        return pictures.TryGetValue(file, out var bytes) && TakingPictures.Again(file, bytes) is { } picture
            ? Library.Pictures.ShownForNow(Response, picture)
            : NotFound();
    }

    public async Task<IActionResult> OnPostAsync(CancellationToken stop)
    {
        if (Sent is null)
            return await RefusedAsync(nameof(Sent), "Picture: choose a file", stop);

        var name = Name?.Trim() is { Length: > 0 } chosen ? chosen : TakingPictures.NameFrom(Sent.FileName);
        return await TakeInAsync(name, Sent, ending: null, stop);
    }

    public async Task<IActionResult> OnPostReplaceAsync(string file, IFormFile? with, CancellationToken stop)
    {
        if (with is null)
            return await RefusedAsync("", $"{file}: choose the file that takes its place", stop);

        return await TakeInAsync(Path.GetFileNameWithoutExtension(file), with, Path.GetExtension(file), stop);
    }

    public async Task<IActionResult> OnPostTakeOutAsync(string file, CancellationToken stop)
    {
        if (await FindAsync(stop) is null)
            return NotFound();

        await drafts.TakePictureAsync(Who.Salon, new(Module), file);
        return Done(Paths.DraftPictures(Module), $"{file} is taken out.");
    }

    private async Task<IActionResult> TakeInAsync(string name, IFormFile sent, string? ending, CancellationToken stop)
    {
        var key = ending is null ? nameof(Sent) : "";
        var there = await drafts.PicturesAsync(Who.Salon, new(Module), stop);
        if (there.Count >= PicturesView.Most && !there.ContainsKey(name + ending))
            return await RefusedAsync(key, $"Picture: {PicturesView.Most} are the most. Take one out first", stop);
        if (sent.Length > TakingPictures.LargestSent)
            return await RefusedAsync(key, PicturesView.TooLarge(sent.Length), stop);

        var (picture, findings) = TakingPictures.Take(name, await BytesAsync(sent, stop), ending);
        if (picture is null)
            return await RefusedAsync(key, [.. findings.Select(finding => $"{sent.FileName}: {finding.Message}")], stop);
        return await drafts.PutPictureAsync(Who.Salon, new(Module), picture.File, picture.Bytes)
            ? Done(Paths.DraftPictures(Module), PicturesView.TakenIn(picture))
            : NotFound();
    }

    private static async Task<byte[]> BytesAsync(IFormFile sent, CancellationToken stop)
    {
        using MemoryStream bytes = new();
        await sent.CopyToAsync(bytes, stop);
        return bytes.ToArray();
    }

    private Task<IActionResult> RefusedAsync(string key, string why, CancellationToken stop) => RefusedAsync(key, [why], stop);

    private Task<IActionResult> RefusedAsync(string key, string[] reasons, CancellationToken stop)
    {
        foreach (var why in reasons)
            ModelState.AddModelError(key, why);
        return ShowAsync(Again, stop);
    }

    private async Task<IActionResult> ShowAsync(Func<IActionResult> answer, CancellationToken stop)
    {
        if (await FindAsync(stop) is not { } draft)
            return NotFound();

        var read = await Desk.ReadAsync(draft, stop);
        View = PicturesView.Of(read, Desk.TitleOf(read));
        return answer();
    }
}
