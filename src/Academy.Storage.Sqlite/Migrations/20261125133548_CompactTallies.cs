using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Academy.Storage.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class CompactTallies : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "ix_incidents_salon_id_reviewed_at",
                table: "incidents");

            migrationBuilder.DropIndex(
                name: "ix_attempts_salon_id_person",
                table: "attempts");

            migrationBuilder.AlterColumn<byte[]>(
                name: "tally",
                table: "tallies",
                type: "BLOB",
                nullable: false,
                oldClrType: typeof(string),
                oldType: "TEXT");

            migrationBuilder.AlterColumn<byte[]>(
                name: "rest_tally",
                table: "tallies",
                type: "BLOB",
                nullable: true,
                oldClrType: typeof(string),
                oldType: "TEXT",
                oldNullable: true);

            migrationBuilder.CreateIndex(
                name: "ix_incidents_salon_id_reviewed_at_is_critical_reported_at_id",
                table: "incidents",
                columns: new[] { "salon_id", "reviewed_at", "is_critical", "reported_at", "id" });

            migrationBuilder.CreateIndex(
                name: "ix_grooms_salon_id_ended_at",
                table: "grooms",
                columns: new[] { "salon_id", "ended_at" },
                filter: "watcher IS NULL");

            migrationBuilder.CreateIndex(
                name: "ix_groom_doers_salon_id_person_signed_at",
                table: "groom_doers",
                columns: new[] { "salon_id", "person", "signed_at" });

            migrationBuilder.CreateIndex(
                name: "ix_groom_doers_salon_id_sign_off_watcher_ended_at",
                table: "groom_doers",
                columns: new[] { "salon_id", "sign_off", "watcher", "ended_at" });

            migrationBuilder.CreateIndex(
                name: "ix_groom_doers_salon_id_signed_at_sign_off",
                table: "groom_doers",
                columns: new[] { "salon_id", "signed_at", "sign_off" },
                filter: "is_late");

            migrationBuilder.CreateIndex(
                name: "ix_dogs_salon_id_last_groom_at_name",
                table: "dogs",
                columns: new[] { "salon_id", "last_groom_at", "name" });

            migrationBuilder.CreateIndex(
                name: "ix_dogs_salon_id_search_id",
                table: "dogs",
                columns: new[] { "salon_id", "search", "id" });

            migrationBuilder.CreateIndex(
                name: "ix_disputes_salon_id_answered_at_at_sign_off",
                table: "disputes",
                columns: new[] { "salon_id", "answered_at", "at", "sign_off" });

            migrationBuilder.CreateIndex(
                name: "ix_disputes_salon_id_by_at",
                table: "disputes",
                columns: new[] { "salon_id", "by", "at" });

            migrationBuilder.CreateIndex(
                name: "ix_attempts_salon_id_person_handed_in_at",
                table: "attempts",
                columns: new[] { "salon_id", "person", "handed_in_at" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "ix_incidents_salon_id_reviewed_at_is_critical_reported_at_id",
                table: "incidents");

            migrationBuilder.DropIndex(
                name: "ix_grooms_salon_id_ended_at",
                table: "grooms");

            migrationBuilder.DropIndex(
                name: "ix_groom_doers_salon_id_person_signed_at",
                table: "groom_doers");

            migrationBuilder.DropIndex(
                name: "ix_groom_doers_salon_id_sign_off_watcher_ended_at",
                table: "groom_doers");

            migrationBuilder.DropIndex(
                name: "ix_groom_doers_salon_id_signed_at_sign_off",
                table: "groom_doers");

            migrationBuilder.DropIndex(
                name: "ix_dogs_salon_id_last_groom_at_name",
                table: "dogs");

            migrationBuilder.DropIndex(
                name: "ix_dogs_salon_id_search_id",
                table: "dogs");

            migrationBuilder.DropIndex(
                name: "ix_disputes_salon_id_answered_at_at_sign_off",
                table: "disputes");

            migrationBuilder.DropIndex(
                name: "ix_disputes_salon_id_by_at",
                table: "disputes");

            migrationBuilder.DropIndex(
                name: "ix_attempts_salon_id_person_handed_in_at",
                table: "attempts");

            migrationBuilder.AlterColumn<string>(
                name: "tally",
                table: "tallies",
                type: "TEXT",
                nullable: false,
                oldClrType: typeof(byte[]),
                oldType: "BLOB");

            migrationBuilder.AlterColumn<string>(
                name: "rest_tally",
                table: "tallies",
                type: "TEXT",
                nullable: true,
                oldClrType: typeof(byte[]),
                oldType: "BLOB",
                oldNullable: true);

            migrationBuilder.CreateIndex(
                name: "ix_incidents_salon_id_reviewed_at",
                table: "incidents",
                columns: new[] { "salon_id", "reviewed_at" });

            migrationBuilder.CreateIndex(
                name: "ix_attempts_salon_id_person",
                table: "attempts",
                columns: new[] { "salon_id", "person" });
        }
    }
}
