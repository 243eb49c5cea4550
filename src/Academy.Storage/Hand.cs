using Academy.Competence;

namespace Academy.Storage;

/// <summary>Who acts, on which device, when: written beside each fact. A null person is the program itself.</summary>
public sealed record Hand(PersonId? Person, string Device, DateTimeOffset Now);

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
