using Academy.Competence;
using Academy.Modules;
using Academy.Modules.Parcels;
using Microsoft.Extensions.Caching.Memory;

namespace Academy.Web.Library;

/// <summary>A module of a parcel and what was found in it; looking through it takes a while and is done once.</summary>
/// <param name="Title">Its title; null where it is broken.</param>
public sealed record LookedThrough(ModuleFiles Files, string? Title, Listed<Finding> Findings)
{
    public static LookedThrough Of(ModuleFiles files)
    {
        var (lesson, findings) = files.Read();
        return new(files, lesson?.Module.Title, findings);
    }
}

/// <summary>
/// Parcels that somebody brought and has not yet said what to take of: one for each person, for an hour, in memory only. What was
/// not taken is gone, and nothing of it was written anywhere.
/// </summary>
public sealed class ParcelRack : IDisposable
{
    private const long Room = 128L * 1024 * 1024;
    private static readonly TimeSpan Patience = TimeSpan.FromHours(1);

    private readonly MemoryCache _parcels = new(new MemoryCacheOptions { SizeLimit = Room });

    /// <summary>Puts a parcel down in place of an earlier one.</summary>
    public void Put(SalonId salon, PersonId person, Listed<LookedThrough> modules) =>
        _parcels.Set(
            (salon, person),
            modules,
            new MemoryCacheEntryOptions { AbsoluteExpirationRelativeToNow = Patience, Size = SizeOf(modules) }
        );

    /// <summary>What a person brought; null where there is nothing any more.</summary>
    public Listed<LookedThrough>? Find(SalonId salon, PersonId person) =>
        _parcels.TryGetValue((salon, person), out Listed<LookedThrough> modules) ? modules : null;

    public void Dispose() => _parcels.Dispose();

    private static long SizeOf(Listed<LookedThrough> modules) =>
        modules.Sum(module => (module.Files.Text.Length * 2L) + module.Files.Pictures.Sum(picture => (long)picture.Value.Length))
        + 1;
}
