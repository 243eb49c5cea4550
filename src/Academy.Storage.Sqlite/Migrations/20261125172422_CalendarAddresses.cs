using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Academy.Storage.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class CalendarAddresses : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "calendar_addresses",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    person = table.Column<byte[]>(type: "BLOB", nullable: false),
                    token_hash = table.Column<byte[]>(type: "BLOB", nullable: false),
                    made_at = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_calendar_addresses", x => new { x.salon_id, x.person });
                });

            migrationBuilder.CreateIndex(
                name: "ix_calendar_addresses_token_hash",
                table: "calendar_addresses",
                column: "token_hash",
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "calendar_addresses");
        }
    }
}
