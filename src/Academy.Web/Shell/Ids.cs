using System.Security.Cryptography;

namespace Academy.Web.Shell;

/// <summary>Where ids and chance come from. Everything behind the pages is handed what it needs of them.</summary>
public sealed class Ids(TimeProvider clock, Func<int> chance)
{
#pragma warning disable RS0030 // The one place that makes ids; everything else is handed them.
    /// <summary>A new id, later in order than those made before.</summary>
    public Guid New() => Guid.CreateVersion7(clock.GetUtcNow());
#pragma warning restore RS0030

    /// <summary>A seed to draw a quiz by; kept with what was drawn.</summary>
    public int Seed() => chance();

    /// <summary>As the portal runs: nobody can foresee what is drawn.</summary>
    public static Ids ByChance(TimeProvider clock) => new(clock, () => RandomNumberGenerator.GetInt32(int.MaxValue));
}
