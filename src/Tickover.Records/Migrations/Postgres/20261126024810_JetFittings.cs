using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Tickover.Records.Migrations.Postgres
{
    /// <inheritdoc />
    public partial class JetFittings : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "JetFitting",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    Visit = table.Column<Guid>(type: "uuid", nullable: false),
                    On = table.Column<DateOnly>(type: "date", nullable: false),
                    Choice = table.Column<string>(type: "text", nullable: false),
                    Description = table.Column<Guid>(type: "uuid", nullable: false),
                    Parts = table.Column<string>(type: "text", nullable: false),
                    RestsOn = table.Column<string>(type: "text", nullable: false),
                    ShareBefore = table.Column<double>(type: "double precision", nullable: false),
                    Share = table.Column<double>(type: "double precision", nullable: false),
                    ShareLowest = table.Column<double>(type: "double precision", nullable: false),
                    ShareHighest = table.Column<double>(type: "double precision", nullable: false),
                    Expected = table.Column<string>(type: "text", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false),
                    Removed = table.Column<bool>(type: "boolean", nullable: false),
                    Kept = table.Column<long>(type: "bigint", nullable: false),
                    Changed = table.Column<long>(type: "bigint", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    KeptBy = table.Column<Guid>(type: "uuid", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_JetFitting", x => x.Id);
                    table.ForeignKey(
                        name: "FK_JetFitting_CarDescription_Description",
                        column: x => x.Description,
                        principalTable: "CarDescription",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_JetFitting_Visit_Visit",
                        column: x => x.Visit,
                        principalTable: "Visit",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_JetFitting_Description",
                table: "JetFitting",
                column: "Description");

            migrationBuilder.CreateIndex(
                name: "IX_JetFitting_Kept",
                table: "JetFitting",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_JetFitting_Visit",
                table: "JetFitting",
                column: "Visit");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "JetFitting");
        }
    }
}
