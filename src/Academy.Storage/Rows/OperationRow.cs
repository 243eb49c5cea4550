namespace Academy.Storage.Rows;

/// <summary>An operation that was done, with what was answered: asked again, it answers the same and does nothing.</summary>
public sealed class OperationRow
{
    public Guid SalonId { get; init; }

    public Guid Id { get; init; }

    public DateTimeOffset DoneAt { get; init; }

    public required string Answer { get; init; }
}
