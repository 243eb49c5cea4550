using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Academy.Storage.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class Flags : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "flags",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    groom = table.Column<byte[]>(type: "BLOB", nullable: false),
                    person = table.Column<byte[]>(type: "BLOB", nullable: false),
                    at = table.Column<long>(type: "INTEGER", nullable: false),
                    skills = table.Column<string>(type: "TEXT", nullable: false),
                    spoken_at = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_flags", x => new { x.salon_id, x.groom, x.person });
                });

            migrationBuilder.CreateIndex(
                name: "ix_flags_salon_id_spoken_at_at",
                table: "flags",
                columns: new[] { "salon_id", "spoken_at", "at" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "flags");
        }
    }
}
