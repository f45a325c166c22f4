using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Witnessmark.Ledger.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class Ledger : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "entries",
                columns: table => new
                {
                    Order = table.Column<long>(type: "INTEGER", nullable: false),
                    Id = table.Column<string>(type: "TEXT", nullable: true),
                    Shop = table.Column<string>(type: "TEXT", nullable: false),
                    Job = table.Column<string>(type: "TEXT", nullable: false),
                    Device = table.Column<string>(type: "TEXT", nullable: false),
                    Epoch = table.Column<int>(type: "INTEGER", nullable: false),
                    Seq = table.Column<int>(type: "INTEGER", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    Body = table.Column<string>(type: "TEXT", nullable: false),
                    Strikes = table.Column<string>(type: "TEXT", nullable: true),
                    Covers = table.Column<string>(type: "TEXT", nullable: true),
                    At = table.Column<string>(type: "TEXT", nullable: false),
                    By = table.Column<string>(type: "TEXT", nullable: false),
                    DevicePrevious = table.Column<string>(type: "TEXT", nullable: true),
                    Hash = table.Column<string>(type: "TEXT", nullable: false),
                    JobHash = table.Column<string>(type: "TEXT", nullable: false),
                    Received = table.Column<string>(type: "TEXT", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_entries", x => x.Order);
                }
            );

            migrationBuilder.CreateTable(
                name: "job_heads",
                columns: table => new
                {
                    Job = table.Column<string>(type: "TEXT", nullable: false),
                    Entries = table.Column<int>(type: "INTEGER", nullable: false),
                    LastOrder = table.Column<long>(type: "INTEGER", nullable: false),
                    Hash = table.Column<string>(type: "TEXT", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_job_heads", x => x.Job);
                }
            );

            migrationBuilder.CreateTable(
                name: "ledger_identity",
                columns: table => new
                {
                    Row = table.Column<int>(type: "INTEGER", nullable: false),
                    Id = table.Column<string>(type: "TEXT", nullable: true),
                    Created = table.Column<string>(type: "TEXT", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ledger_identity", x => x.Row);
                }
            );

            migrationBuilder.CreateTable(
                name: "set_aside",
                columns: table => new
                {
                    Number = table
                        .Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Text = table.Column<string>(type: "TEXT", nullable: false),
                    TextHash = table.Column<string>(type: "TEXT", nullable: false),
                    Reason = table.Column<string>(type: "TEXT", nullable: false),
                    Why = table.Column<string>(type: "TEXT", nullable: false),
                    Id = table.Column<string>(type: "TEXT", nullable: true),
                    Device = table.Column<string>(type: "TEXT", nullable: false),
                    Epoch = table.Column<int>(type: "INTEGER", nullable: false),
                    Seq = table.Column<int>(type: "INTEGER", nullable: true),
                    Hash = table.Column<string>(type: "TEXT", nullable: true),
                    Received = table.Column<string>(type: "TEXT", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_set_aside", x => x.Number);
                }
            );

            migrationBuilder.CreateIndex(
                name: "IX_entries_Device_Epoch_Seq",
                table: "entries",
                columns: new[] { "Device", "Epoch", "Seq" },
                unique: true
            );

            migrationBuilder.CreateIndex(name: "IX_entries_Id", table: "entries", column: "Id", unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_entries_Job_Order",
                table: "entries",
                columns: new[] { "Job", "Order" }
            );

            migrationBuilder.CreateIndex(
                name: "IX_set_aside_Device_Epoch_Seq",
                table: "set_aside",
                columns: new[] { "Device", "Epoch", "Seq" }
            );

            migrationBuilder.CreateIndex(
                name: "IX_set_aside_TextHash",
                table: "set_aside",
                column: "TextHash",
                unique: true
            );
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(name: "entries");

            migrationBuilder.DropTable(name: "job_heads");

            migrationBuilder.DropTable(name: "ledger_identity");

            migrationBuilder.DropTable(name: "set_aside");
        }
    }
}
