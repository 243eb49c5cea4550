using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Academy.Storage.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class IncidentsInOrder : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "ix_incidents_salon_id_reviewed_at_is_critical_reported_at_id",
                table: "incidents");

            migrationBuilder.CreateIndex(
                name: "ix_incidents_salon_id_reviewed_at_reported_at_id",
                table: "incidents",
                columns: new[] { "salon_id", "reviewed_at", "reported_at", "id" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "ix_incidents_salon_id_reviewed_at_reported_at_id",
                table: "incidents");

            migrationBuilder.CreateIndex(
                name: "ix_incidents_salon_id_reviewed_at_is_critical_reported_at_id",
                table: "incidents",
                columns: new[] { "salon_id", "reviewed_at", "is_critical", "reported_at", "id" });
        }
    }
}
