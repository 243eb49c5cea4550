using Microsoft.EntityFrameworkCore.Migrations;

namespace Academy.Storage.Sqlite;

/// <summary>
/// The database's own word that the ledger only grows. An entry can neither be changed nor removed, nor put in the place of
/// another (INSERT OR REPLACE would do so without a DELETE); words can be erased and nothing else.
/// </summary>
public static class AppendOnly
{
    public const string Guards = """
        CREATE TRIGGER IF NOT EXISTS ledger_is_never_changed BEFORE UPDATE ON ledger
        BEGIN SELECT RAISE(ABORT, 'The ledger is append-only: an entry is never changed.'); END;
        CREATE TRIGGER IF NOT EXISTS ledger_is_never_removed BEFORE DELETE ON ledger
        BEGIN SELECT RAISE(ABORT, 'The ledger is append-only: an entry is never removed.'); END;
        CREATE TRIGGER IF NOT EXISTS ledger_only_grows BEFORE INSERT ON ledger
        WHEN NEW.seq <> (SELECT coalesce(max(seq) + 1, 0) FROM ledger WHERE salon_id = NEW.salon_id)
          OR EXISTS (SELECT 1 FROM ledger WHERE salon_id = NEW.salon_id AND fact_id = NEW.fact_id)
        BEGIN SELECT RAISE(ABORT, 'The ledger is append-only: an entry goes to the end and stands once.'); END;
        CREATE TRIGGER IF NOT EXISTS words_are_only_erased BEFORE UPDATE ON words
        WHEN NEW.text IS NOT NULL OR NEW.key IS NOT NULL
          OR NEW.salon_id IS NOT OLD.salon_id OR NEW.fact_id IS NOT OLD.fact_id OR NEW.path IS NOT OLD.path
        BEGIN SELECT RAISE(ABORT, 'Words of the ledger are never changed, only erased.'); END;
        CREATE TRIGGER IF NOT EXISTS words_are_never_removed BEFORE DELETE ON words
        BEGIN SELECT RAISE(ABORT, 'Words of the ledger are never removed, only erased.'); END;
        CREATE TRIGGER IF NOT EXISTS words_stand_once BEFORE INSERT ON words
        WHEN EXISTS (SELECT 1 FROM words WHERE salon_id = NEW.salon_id AND fact_id = NEW.fact_id AND path = NEW.path)
        BEGIN SELECT RAISE(ABORT, 'Words of the ledger are written once.'); END;
        """;

    /// <summary>Called at the end of the migration that makes the ledger.</summary>
    public static void GuardTheLedger(this MigrationBuilder migration) => migration.Sql(Guards);
}
