using System;
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
                name: "attempts",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    person = table.Column<byte[]>(type: "BLOB", nullable: false),
                    module = table.Column<string>(type: "TEXT", nullable: false),
                    edition = table.Column<int>(type: "INTEGER", nullable: false),
                    is_refresher = table.Column<bool>(type: "INTEGER", nullable: false),
                    handed_in_at = table.Column<long>(type: "INTEGER", nullable: false),
                    recorded_at = table.Column<long>(type: "INTEGER", nullable: false),
                    has_passed = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_attempts", x => new { x.salon_id, x.id });
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
                name: "disputes",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    sign_off = table.Column<byte[]>(type: "BLOB", nullable: false),
                    groom = table.Column<byte[]>(type: "BLOB", nullable: false),
                    by = table.Column<byte[]>(type: "BLOB", nullable: false),
                    at = table.Column<long>(type: "INTEGER", nullable: false),
                    answered_at = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_disputes", x => new { x.salon_id, x.sign_off });
                });

            migrationBuilder.CreateTable(
                name: "dogs",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    name = table.Column<string>(type: "TEXT", nullable: false),
                    breed = table.Column<string>(type: "TEXT", nullable: false),
                    client = table.Column<string>(type: "TEXT", nullable: false),
                    search = table.Column<string>(type: "TEXT", nullable: false),
                    coat = table.Column<string>(type: "TEXT", nullable: true),
                    is_gone = table.Column<bool>(type: "INTEGER", nullable: false),
                    told = table.Column<string>(type: "TEXT", nullable: false),
                    last_groom_at = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_dogs", x => new { x.salon_id, x.id });
                });

            migrationBuilder.CreateTable(
                name: "edition_texts",
                columns: table => new
                {
                    module = table.Column<string>(type: "TEXT", nullable: false),
                    content_hash = table.Column<string>(type: "TEXT", nullable: false),
                    source = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_edition_texts", x => new { x.module, x.content_hash });
                });

            migrationBuilder.CreateTable(
                name: "groom_doers",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    groom = table.Column<byte[]>(type: "BLOB", nullable: false),
                    person = table.Column<byte[]>(type: "BLOB", nullable: false),
                    ended_at = table.Column<long>(type: "INTEGER", nullable: false),
                    watcher = table.Column<byte[]>(type: "BLOB", nullable: true),
                    sign_off = table.Column<byte[]>(type: "BLOB", nullable: true),
                    senior = table.Column<byte[]>(type: "BLOB", nullable: true),
                    signed_at = table.Column<long>(type: "INTEGER", nullable: true),
                    is_late = table.Column<bool>(type: "INTEGER", nullable: false),
                    is_suitable = table.Column<bool>(type: "INTEGER", nullable: true),
                    is_disputed = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_groom_doers", x => new { x.salon_id, x.groom, x.person });
                });

            migrationBuilder.CreateTable(
                name: "grooms",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    dog = table.Column<byte[]>(type: "BLOB", nullable: false),
                    by = table.Column<byte[]>(type: "BLOB", nullable: false),
                    watcher = table.Column<byte[]>(type: "BLOB", nullable: true),
                    state = table.Column<int>(type: "INTEGER", nullable: false),
                    started_at = table.Column<long>(type: "INTEGER", nullable: false),
                    ended_at = table.Column<long>(type: "INTEGER", nullable: true),
                    recorded_at = table.Column<long>(type: "INTEGER", nullable: false),
                    breed = table.Column<string>(type: "TEXT", nullable: false),
                    coat = table.Column<string>(type: "TEXT", nullable: false),
                    has_incident = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_grooms", x => new { x.salon_id, x.id });
                });

            migrationBuilder.CreateTable(
                name: "incidents",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    groom = table.Column<byte[]>(type: "BLOB", nullable: false),
                    person = table.Column<byte[]>(type: "BLOB", nullable: false),
                    kind = table.Column<int>(type: "INTEGER", nullable: false),
                    severity = table.Column<int>(type: "INTEGER", nullable: false),
                    is_critical = table.Column<bool>(type: "INTEGER", nullable: false),
                    reported_at = table.Column<long>(type: "INTEGER", nullable: false),
                    reviewed_at = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_incidents", x => new { x.salon_id, x.id });
                });

            migrationBuilder.CreateTable(
                name: "invitations",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    person = table.Column<byte[]>(type: "BLOB", nullable: false),
                    token_hash = table.Column<byte[]>(type: "BLOB", nullable: false),
                    made_at = table.Column<long>(type: "INTEGER", nullable: false),
                    expires_at = table.Column<long>(type: "INTEGER", nullable: false),
                    used_at = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_invitations", x => new { x.salon_id, x.id });
                });

            migrationBuilder.CreateTable(
                name: "ledger",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    seq = table.Column<long>(type: "INTEGER", nullable: false),
                    fact_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    kind = table.Column<string>(type: "TEXT", nullable: false),
                    subject = table.Column<byte[]>(type: "BLOB", nullable: true),
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
                name: "presences",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    person = table.Column<byte[]>(type: "BLOB", nullable: false),
                    day = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    is_in = table.Column<bool>(type: "INTEGER", nullable: false),
                    recorded_at = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_presences", x => new { x.salon_id, x.id });
                });

            migrationBuilder.CreateTable(
                name: "readings",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    at = table.Column<long>(type: "INTEGER", nullable: false),
                    recorded_at = table.Column<long>(type: "INTEGER", nullable: false),
                    room = table.Column<string>(type: "TEXT", nullable: false),
                    tenths_c = table.Column<int>(type: "INTEGER", nullable: false),
                    humidity_pct = table.Column<int>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_readings", x => new { x.salon_id, x.id });
                });

            migrationBuilder.CreateTable(
                name: "record_versions",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    record = table.Column<byte[]>(type: "BLOB", nullable: false),
                    version = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_record_versions", x => new { x.salon_id, x.record });
                });

            migrationBuilder.CreateTable(
                name: "salons",
                columns: table => new
                {
                    id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    version = table.Column<long>(type: "INTEGER", nullable: false),
                    book_version = table.Column<long>(type: "INTEGER", nullable: false),
                    head = table.Column<byte[]>(type: "BLOB", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_salons", x => x.id);
                });

            migrationBuilder.CreateTable(
                name: "sign_in_failures",
                columns: table => new
                {
                    key = table.Column<string>(type: "TEXT", nullable: false),
                    count = table.Column<int>(type: "INTEGER", nullable: false),
                    last_at = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_sign_in_failures", x => x.key);
                });

            migrationBuilder.CreateTable(
                name: "sittings",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    person = table.Column<byte[]>(type: "BLOB", nullable: false),
                    module = table.Column<string>(type: "TEXT", nullable: false),
                    content_hash = table.Column<string>(type: "TEXT", nullable: false),
                    is_refresher = table.Column<bool>(type: "INTEGER", nullable: false),
                    seed = table.Column<int>(type: "INTEGER", nullable: false),
                    started_at = table.Column<long>(type: "INTEGER", nullable: false),
                    read_out_by = table.Column<byte[]>(type: "BLOB", nullable: true),
                    answers = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_sittings", x => new { x.salon_id, x.id });
                });

            migrationBuilder.CreateTable(
                name: "steps",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    person = table.Column<byte[]>(type: "BLOB", nullable: false),
                    skill = table.Column<string>(type: "TEXT", nullable: false),
                    at = table.Column<long>(type: "INTEGER", nullable: false),
                    source = table.Column<byte[]>(type: "BLOB", nullable: false),
                    kind = table.Column<int>(type: "INTEGER", nullable: false),
                    row = table.Column<byte[]>(type: "BLOB", nullable: false),
                    day = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    verdict = table.Column<int>(type: "INTEGER", nullable: true),
                    breed = table.Column<string>(type: "TEXT", nullable: false),
                    senior = table.Column<byte[]>(type: "BLOB", nullable: true),
                    limits = table.Column<string>(type: "TEXT", nullable: true),
                    is_exception = table.Column<bool>(type: "INTEGER", nullable: false),
                    threshold_version = table.Column<int>(type: "INTEGER", nullable: false),
                    is_review_open = table.Column<bool>(type: "INTEGER", nullable: false),
                    is_technique = table.Column<bool>(type: "INTEGER", nullable: false),
                    known_from = table.Column<long>(type: "INTEGER", nullable: false),
                    known_until = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_steps", x => new { x.salon_id, x.person, x.skill, x.at, x.source, x.kind, x.row });
                });

            migrationBuilder.CreateTable(
                name: "tallies",
                columns: table => new
                {
                    salon_id = table.Column<byte[]>(type: "BLOB", nullable: false),
                    person = table.Column<byte[]>(type: "BLOB", nullable: false),
                    skill = table.Column<string>(type: "TEXT", nullable: false),
                    threshold_version = table.Column<int>(type: "INTEGER", nullable: false),
                    last_at = table.Column<long>(type: "INTEGER", nullable: false),
                    last_source = table.Column<byte[]>(type: "BLOB", nullable: false),
                    last_kind = table.Column<int>(type: "INTEGER", nullable: false),
                    tally = table.Column<string>(type: "TEXT", nullable: false),
                    steps_since = table.Column<int>(type: "INTEGER", nullable: false),
                    rest_at = table.Column<long>(type: "INTEGER", nullable: true),
                    rest_source = table.Column<byte[]>(type: "BLOB", nullable: true),
                    rest_kind = table.Column<int>(type: "INTEGER", nullable: true),
                    rest_tally = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_tallies", x => new { x.salon_id, x.person, x.skill });
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
                name: "ix_attempts_salon_id_person",
                table: "attempts",
                columns: new[] { "salon_id", "person" });

            migrationBuilder.CreateIndex(
                name: "ix_dogs_salon_id_name",
                table: "dogs",
                columns: new[] { "salon_id", "name" });

            migrationBuilder.CreateIndex(
                name: "ix_groom_doers_salon_id_person_ended_at",
                table: "groom_doers",
                columns: new[] { "salon_id", "person", "ended_at" });

            migrationBuilder.CreateIndex(
                name: "ix_groom_doers_salon_id_sign_off_ended_at",
                table: "groom_doers",
                columns: new[] { "salon_id", "sign_off", "ended_at" });

            migrationBuilder.CreateIndex(
                name: "ix_grooms_salon_id_dog_started_at",
                table: "grooms",
                columns: new[] { "salon_id", "dog", "started_at" });

            migrationBuilder.CreateIndex(
                name: "ix_grooms_salon_id_started_at",
                table: "grooms",
                columns: new[] { "salon_id", "started_at" });

            migrationBuilder.CreateIndex(
                name: "ix_grooms_salon_id_state_by",
                table: "grooms",
                columns: new[] { "salon_id", "state", "by" });

            migrationBuilder.CreateIndex(
                name: "ix_incidents_salon_id_reviewed_at",
                table: "incidents",
                columns: new[] { "salon_id", "reviewed_at" });

            migrationBuilder.CreateIndex(
                name: "ix_invitations_token_hash",
                table: "invitations",
                column: "token_hash",
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
                name: "ix_ledger_salon_id_subject_seq",
                table: "ledger",
                columns: new[] { "salon_id", "subject", "seq" });

            migrationBuilder.CreateIndex(
                name: "ix_operations_done_at",
                table: "operations",
                column: "done_at");

            migrationBuilder.CreateIndex(
                name: "ix_presences_salon_id_day",
                table: "presences",
                columns: new[] { "salon_id", "day" });

            migrationBuilder.CreateIndex(
                name: "ix_readings_salon_id_at",
                table: "readings",
                columns: new[] { "salon_id", "at" });

            migrationBuilder.CreateIndex(
                name: "ix_sessions_account_id",
                table: "sessions",
                column: "account_id");

            migrationBuilder.CreateIndex(
                name: "ix_sessions_expires_at",
                table: "sessions",
                column: "expires_at");

            migrationBuilder.CreateIndex(
                name: "ix_sittings_salon_id_person_module",
                table: "sittings",
                columns: new[] { "salon_id", "person", "module" });

            migrationBuilder.CreateIndex(
                name: "ix_steps_salon_id_source",
                table: "steps",
                columns: new[] { "salon_id", "source" });

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
                name: "attempts");

            migrationBuilder.DropTable(
                name: "data_protection_keys");

            migrationBuilder.DropTable(
                name: "devices");

            migrationBuilder.DropTable(
                name: "disputes");

            migrationBuilder.DropTable(
                name: "dogs");

            migrationBuilder.DropTable(
                name: "edition_texts");

            migrationBuilder.DropTable(
                name: "groom_doers");

            migrationBuilder.DropTable(
                name: "grooms");

            migrationBuilder.DropTable(
                name: "incidents");

            migrationBuilder.DropTable(
                name: "invitations");

            migrationBuilder.DropTable(
                name: "ledger");

            migrationBuilder.DropTable(
                name: "operations");

            migrationBuilder.DropTable(
                name: "presences");

            migrationBuilder.DropTable(
                name: "readings");

            migrationBuilder.DropTable(
                name: "record_versions");

            migrationBuilder.DropTable(
                name: "salons");

            migrationBuilder.DropTable(
                name: "sessions");

            migrationBuilder.DropTable(
                name: "sign_in_failures");

            migrationBuilder.DropTable(
                name: "sittings");

            migrationBuilder.DropTable(
                name: "steps");

            migrationBuilder.DropTable(
                name: "tallies");

            migrationBuilder.DropTable(
                name: "words");

            migrationBuilder.DropTable(
                name: "accounts");
        }
    }
}
