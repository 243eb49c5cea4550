using Academy.Competence.Salons;
using Academy.Storage;
using Academy.Web.Shell;

namespace Academy.Web.Access;

/// <summary>The practice that the salon wrote into its book; until then the one in the settings.</summary>
public sealed class VetPhoneOfSalon(FirstRun first, RecordBook records, IConfiguration settings) : IVetPhone
{
    private readonly VetPhoneFromSettings _settings = new(settings);

    public async ValueTask<VetPhone?> FindAsync(CancellationToken stop)
    {
        var written = await first.SalonAsync(stop) is { } salon ? await records.SalonAsync(salon, stop) : new SalonBook();
        var setting = await _settings.FindAsync(stop);
        return written.VetPhone.Length > 0
            ? new VetPhone(written.VetPhone, Named(written.VetName), setting?.Night, settings["Site:Address"])
            : setting;
    }

    private static string? Named(string name) => name.Length > 0 ? name : null;
}
