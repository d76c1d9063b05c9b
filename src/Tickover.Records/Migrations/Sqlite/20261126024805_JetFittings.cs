using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Tickover.Records.Migrations.Sqlite
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
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Visit = table.Column<Guid>(type: "TEXT", nullable: false),
                    On = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Choice = table.Column<string>(type: "TEXT", nullable: false),
                    Description = table.Column<Guid>(type: "TEXT", nullable: false),
                    Parts = table.Column<string>(type: "TEXT", nullable: false),
                    RestsOn = table.Column<string>(type: "TEXT", nullable: false),
                    ShareBefore = table.Column<double>(type: "REAL", nullable: false),
                    Share = table.Column<double>(type: "REAL", nullable: false),
                    ShareLowest = table.Column<double>(type: "REAL", nullable: false),
                    ShareHighest = table.Column<double>(type: "REAL", nullable: false),
                    Expected = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
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
