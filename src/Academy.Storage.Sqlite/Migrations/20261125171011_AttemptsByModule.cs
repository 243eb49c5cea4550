using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Academy.Storage.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class AttemptsByModule : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<long>(
                name: "seq",
                table: "attempts",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            // Attempts that are there already learn their entry from the ledger.
            migrationBuilder.Sql(
                """
                UPDATE attempts SET seq = COALESCE((
                  SELECT entry.seq FROM ledger AS entry
                  WHERE entry.salon_id = attempts.salon_id AND entry.subject = attempts.person AND entry.kind = 'attempt.handed-in'
                    AND entry.recorded_at = attempts.recorded_at
                    AND replace(json_extract(entry.canonical, '$.data.attempt'), '-', '') = lower(hex(attempts.id))
                  ORDER BY entry.seq LIMIT 1), 0)
                """
            );

            migrationBuilder.CreateIndex(
                name: "ix_attempts_salon_id_module_person_is_refresher_handed_in_at",
                table: "attempts",
                columns: new[] { "salon_id", "module", "person", "is_refresher", "handed_in_at" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "ix_attempts_salon_id_module_person_is_refresher_handed_in_at",
                table: "attempts");

            migrationBuilder.DropColumn(
                name: "seq",
                table: "attempts");
        }
    }
}
