namespace Academy.Competence.Facts;

/// <summary>A fact as the ledger holds it.</summary>
/// <param name="Fact">What.</param>
/// <param name="By">Who recorded it; null for the program itself.</param>
/// <param name="RecordedAt">When it was recorded, by the server's clock.</param>
/// <param name="Seq">Its place in the salon's ledger, from 0.</param>
public sealed record Recorded(Fact Fact, PersonId? By, DateTimeOffset RecordedAt, long Seq);
