using Microsoft.EntityFrameworkCore;

namespace Academy.Storage.Rows;

internal static class LedgerTables
{
    public static void Shape(ModelBuilder builder)
    {
        builder.Entity<SalonRow>(salon =>
        {
            salon.ToTable("salons");
            salon.HasKey(one => one.Id);
            salon.Property(one => one.Id).ValueGeneratedNever();
        });
        builder.Entity<LedgerRow>(entry =>
        {
            entry.ToTable("ledger");
            entry.HasKey(one => new { one.SalonId, one.Seq });
            entry.Property(one => one.Seq).ValueGeneratedNever();
            entry.HasIndex(one => new { one.SalonId, one.FactId }).IsUnique();
            entry.HasIndex(one => new
            {
                one.SalonId,
                one.Subject,
                one.Seq,
            });
            entry.HasIndex(one => new
            {
                one.SalonId,
                one.Kind,
                one.Seq,
            });
        });
        builder.Entity<WordsRow>(words =>
        {
            words.ToTable("words");
            words.HasKey(one => new
            {
                one.SalonId,
                one.FactId,
                one.Path,
            });
        });
        builder.Entity<OperationRow>(operation =>
        {
            operation.ToTable("operations");
            operation.HasKey(one => new { one.SalonId, one.Id });
            operation.HasIndex(one => one.DoneAt);
        });
    }
}
