using Academy.Competence;

namespace Academy.Storage;

/// <summary>Who acts, on which device, when: written beside each fact.</summary>
/// <param name="Person">Who; null is the program itself.</param>
/// <param name="Device">On which device; empty where it is nobody's in particular.</param>
/// <param name="Now">When it is recorded, by the server's clock.</param>
/// <param name="Assurance">How strongly she was signed in, such as by passkey or by PIN; empty for the program itself.</param>
public sealed record Hand(PersonId? Person, string Device, DateTimeOffset Now, string Assurance = "");

/// <summary>Made by the client, once per write: a repeated one gets the stored answer.</summary>
public readonly record struct OperationId(Guid Value);

/// <summary>The version a form was shown with, so that a stale one is noticed.</summary>
public sealed record Expected(Guid Record, long Version);

/// <summary>What became of keeping.</summary>
public abstract record Kept
{
    private Kept() { }

    /// <summary>Kept; the salon is at this version now.</summary>
    public sealed record Done(long Version) : Kept;

    /// <summary>This operation was done before; nothing was written again.</summary>
    public sealed record AlreadyDone(long Version) : Kept;

    /// <summary>Somebody wrote in between; nothing was written.</summary>
    public sealed record RecordMovedOn(long Version) : Kept;
}
