using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Academy.Storage.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class ReadingPlaces : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "reading_places",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    person = table.Column<byte[]>(type: "BLOB", nullable: false),
                    module = table.Column<string>(type: "TEXT", nullable: false),
                    part = table.Column<string>(type: "TEXT", nullable: false),
                    at = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_reading_places", x => new { x.salon_id, x.person, x.module });
                });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "reading_places");
        }
    }
}
