namespace Academy.Web.Shell;

/// <summary>Whom to phone when a dog is ill. Asked by pages that nobody is signed in to.</summary>
public interface IVetPhone
{
    /// <summary>The practice, or nothing when the salon has not written one down.</summary>
    ValueTask<VetPhone?> FindAsync(CancellationToken stop);
}

/// <summary>A practice and its number as the salon wrote them; where the salon is, to be read out on the phone.</summary>
public sealed record VetPhone(string Number, string? Practice, string? Night, string? Where)
{
    /// <summary>The number as a link: digits, and a plus in front if there is one.</summary>
    public string Link => "tel:" + string.Concat(Number.Where((c, at) => char.IsAsciiDigit(c) || (c == '+' && at == 0)));
}

/// <summary>The practice named under <c>Site:Vet</c>.</summary>
public sealed class VetPhoneFromSettings(IConfiguration settings) : IVetPhone
{
    public ValueTask<VetPhone?> FindAsync(CancellationToken stop) =>
        ValueTask.FromResult(
            settings["Site:Vet:Phone"] is { Length: > 0 } number
                ? new VetPhone(number, settings["Site:Vet:Practice"], settings["Site:Vet:Night"], settings["Site:Address"])
                : null
        );
}
