using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Academy.Storage.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class Initial : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "accounts",
                columns: table => new
                {
                    id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    person_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    opened_at = table.Column<long>(type: "INTEGER", nullable: false),
                    locked_from = table.Column<long>(type: "INTEGER", nullable: true),
                    pin_hash = table.Column<string>(type: "TEXT", nullable: true),
                    pin_failures = table.Column<int>(type: "INTEGER", nullable: false),
                    pin_set_at = table.Column<long>(type: "INTEGER", nullable: true),
                    user_name = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    normalized_user_name = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    email = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    normalized_email = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    email_confirmed = table.Column<bool>(type: "INTEGER", nullable: false),
                    password_hash = table.Column<string>(type: "TEXT", nullable: true),
                    security_stamp = table.Column<string>(type: "TEXT", nullable: true),
                    concurrency_stamp = table.Column<string>(type: "TEXT", nullable: true),
                    phone_number = table.Column<string>(type: "TEXT", nullable: true),
                    phone_number_confirmed = table.Column<bool>(type: "INTEGER", nullable: false),
                    two_factor_enabled = table.Column<bool>(type: "INTEGER", nullable: false),
                    lockout_end = table.Column<long>(type: "INTEGER", nullable: true),
                    lockout_enabled = table.Column<bool>(type: "INTEGER", nullable: false),
                    access_failed_count = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_accounts", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "data_protection_keys",
                columns: table => new
                {
                    id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    friendly_name = table.Column<string>(type: "TEXT", nullable: true),
                    xml = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_data_protection_keys", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "devices",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    secret_hash = table.Column<byte[]>(type: "BLOB", nullable: false),
                    enrolled_at = table.Column<long>(type: "INTEGER", nullable: false),
                    enrolled_by = table.Column<byte[]>(type: "BLOB", nullable: false),
                    revoked_at = table.Column<long>(type: "INTEGER", nullable: true),
                    pin_failures = table.Column<int>(type: "INTEGER", nullable: false),
                    pin_failures_since = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_devices", x => new { x.salon_id, x.id });
                });

            migrationBuilder.CreateTable(
                name: "ledger",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    seq = table.Column<long>(type: "INTEGER", nullable: false),
                    fact_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    at = table.Column<long>(type: "INTEGER", nullable: false),
                    recorded_at = table.Column<long>(type: "INTEGER", nullable: false),
                    actor = table.Column<string>(type: "TEXT", nullable: false),
                    device = table.Column<string>(type: "TEXT", nullable: true),
                    canonical = table.Column<string>(type: "TEXT", nullable: false),
                    prev_hash = table.Column<byte[]>(type: "BLOB", nullable: false),
                    hash = table.Column<byte[]>(type: "BLOB", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_ledger", x => new { x.salon_id, x.seq });
                });

            migrationBuilder.CreateTable(
                name: "operations",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    done_at = table.Column<long>(type: "INTEGER", nullable: false),
                    answer = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_operations", x => new { x.salon_id, x.id });
                });

            migrationBuilder.CreateTable(
                name: "salons",
                columns: table => new
                {
                    id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    version = table.Column<long>(type: "INTEGER", nullable: false),
                    head = table.Column<byte[]>(type: "BLOB", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_salons", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "words",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    fact_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    path = table.Column<string>(type: "TEXT", nullable: false),
                    text = table.Column<string>(type: "TEXT", nullable: true),
                    key = table.Column<byte[]>(type: "BLOB", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_words", x => new { x.salon_id, x.fact_id, x.path });
                });

            migrationBuilder.CreateTable(
                name: "account_claims",
                columns: table => new
                {
                    id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    user_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    claim_type = table.Column<string>(type: "TEXT", nullable: true),
                    claim_value = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_account_claims", x => x.id);
                    table.ForeignKey(
                        name: "fk_account_claims_accounts_user_id",
                        column: x => x.user_id,
                        principalTable: "accounts",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "account_logins",
                columns: table => new
                {
                    login_provider = table.Column<string>(type: "TEXT", nullable: false),
                    provider_key = table.Column<string>(type: "TEXT", nullable: false),
                    provider_display_name = table.Column<string>(type: "TEXT", nullable: true),
                    user_id = table.Column<byte[]>(type: "BLOB", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_account_logins", x => new { x.login_provider, x.provider_key });
                    table.ForeignKey(
                        name: "fk_account_logins_accounts_user_id",
                        column: x => x.user_id,
                        principalTable: "accounts",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "account_passkeys",
                columns: table => new
                {
                    credential_id = table.Column<byte[]>(type: "BLOB", maxLength: 1024, nullable: false),
                    user_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    data = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_account_passkeys", x => x.credential_id);
                    table.ForeignKey(
                        name: "fk_account_passkeys_accounts_user_id",
                        column: x => x.user_id,
                        principalTable: "accounts",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "account_tokens",
                columns: table => new
                {
                    user_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    login_provider = table.Column<string>(type: "TEXT", nullable: false),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    value = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_account_tokens", x => new { x.user_id, x.login_provider, x.name });
                    table.ForeignKey(
                        name: "fk_account_tokens_accounts_user_id",
                        column: x => x.user_id,
                        principalTable: "accounts",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "sessions",
                columns: table => new
                {
                    key = table.Column<string>(type: "TEXT", nullable: false),
                    account_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    device = table.Column<string>(type: "TEXT", nullable: true),
                    opened_at = table.Column<long>(type: "INTEGER", nullable: false),
                    last_seen_at = table.Column<long>(type: "INTEGER", nullable: false),
                    expires_at = table.Column<long>(type: "INTEGER", nullable: false),
                    value = table.Column<byte[]>(type: "BLOB", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_sessions", x => x.key);
                    table.ForeignKey(
                        name: "fk_sessions_accounts_account_id",
                        column: x => x.account_id,
                        principalTable: "accounts",
                        principalColumn: "id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "ix_account_claims_user_id",
                table: "account_claims",
                column: "user_id");

            migrationBuilder.CreateIndex(
                name: "ix_account_logins_user_id",
                table: "account_logins",
                column: "user_id");

            migrationBuilder.CreateIndex(
                name: "ix_account_passkeys_user_id",
                table: "account_passkeys",
                column: "user_id");

            migrationBuilder.CreateIndex(
                name: "email_index",
                table: "accounts",
                column: "normalized_email");

            migrationBuilder.CreateIndex(
                name: "ix_accounts_salon_id_person_id",
                table: "accounts",
                columns: new[] { "salon_id", "person_id" });

            migrationBuilder.CreateIndex(
                name: "user_name_index",
                table: "accounts",
                column: "normalized_user_name",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_ledger_salon_id_fact_id",
                table: "ledger",
                columns: new[] { "salon_id", "fact_id" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "ix_ledger_salon_id_kind_seq",
                table: "ledger",
                columns: new[] { "salon_id", "kind", "seq" });

            migrationBuilder.CreateIndex(
                name: "ix_operations_done_at",
                table: "operations",
                column: "done_at");

            migrationBuilder.CreateIndex(
                name: "ix_sessions_account_id",
                table: "sessions",
                column: "account_id");

            migrationBuilder.CreateIndex(
                name: "ix_sessions_expires_at",
                table: "sessions",
                column: "expires_at");

            migrationBuilder.GuardTheLedger();
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "account_claims");

            migrationBuilder.DropTable(
                name: "account_logins");

            migrationBuilder.DropTable(
                name: "account_passkeys");

            migrationBuilder.DropTable(
                name: "account_tokens");

            migrationBuilder.DropTable(
                name: "data_protection_keys");

            migrationBuilder.DropTable(
                name: "devices");

            migrationBuilder.DropTable(
                name: "ledger");

            migrationBuilder.DropTable(
                name: "operations");

            migrationBuilder.DropTable(
                name: "salons");

            migrationBuilder.DropTable(
                name: "sessions");

            migrationBuilder.DropTable(
                name: "words");

            migrationBuilder.DropTable(
                name: "accounts");
        }
    }
}
