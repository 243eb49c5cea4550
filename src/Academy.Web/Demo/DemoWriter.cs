using Academy.Competence.Quizzes;
using Academy.Storage.Ledgers;

namespace Academy.Web.Demo;

/// <summary>Writes the demo salon into an empty database.</summary>
public static class DemoWriter
{
    /// <summary>The demo salon's id: always the same.</summary>
    public static readonly Competence.SalonId Salon = new(new Guid(0x0A11CE00, 1, 0x7000, 0x80, 0, 0, 0, 0, 0, 0, 1));

    /// <summary>Keeps the whole history in one batch.</summary>
    public static Task WriteAsync(Ledger ledger, IReadOnlyList<Module> modules, DateTimeOffset now) =>
        ledger.KeepAllAsync(Salon, DemoHistory.Of(now, modules));
}
