using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Academy.Storage.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class Drafts : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "drawn",
                table: "sittings",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "is_catch_up",
                table: "sittings",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.CreateTable(
                name: "draft_pictures",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    module = table.Column<string>(type: "TEXT", nullable: false),
                    file = table.Column<string>(type: "TEXT", nullable: false),
                    bytes = table.Column<byte[]>(type: "BLOB", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_draft_pictures", x => new { x.salon_id, x.module, x.file });
                });

            migrationBuilder.CreateTable(
                name: "drafts",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    module = table.Column<string>(type: "TEXT", nullable: false),
                    text = table.Column<string>(type: "TEXT", nullable: false),
                    author = table.Column<byte[]>(type: "BLOB", nullable: false),
                    saved_at = table.Column<long>(type: "INTEGER", nullable: false),
                    asked_at = table.Column<long>(type: "INTEGER", nullable: true),
                    change = table.Column<string>(type: "TEXT", nullable: false),
                    catch_up_by = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    returned_by = table.Column<byte[]>(type: "BLOB", nullable: true),
                    returned = table.Column<string>(type: "TEXT", nullable: false),
                    version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_drafts", x => new { x.salon_id, x.module });
                });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "draft_pictures");

            migrationBuilder.DropTable(
                name: "drafts");

            migrationBuilder.DropColumn(
                name: "drawn",
                table: "sittings");

            migrationBuilder.DropColumn(
                name: "is_catch_up",
                table: "sittings");
        }
    }
}
