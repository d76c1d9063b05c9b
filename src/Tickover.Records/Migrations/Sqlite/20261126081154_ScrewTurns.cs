using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Tickover.Records.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class ScrewTurns : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "ScrewTurn",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Visit = table.Column<Guid>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    Adjuster = table.Column<string>(type: "TEXT", nullable: false),
                    Turns = table.Column<double>(type: "REAL", nullable: false),
                    GapMillimetres = table.Column<double>(type: "REAL", nullable: true),
                    Found = table.Column<bool>(type: "INTEGER", nullable: false),
                    Advised = table.Column<bool>(type: "INTEGER", nullable: false),
                    Words = table.Column<string>(type: "TEXT", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: false),
                    TakenAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ScrewTurn", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ScrewTurn_Visit_Visit",
                        column: x => x.Visit,
                        principalTable: "Visit",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_ScrewTurn_Kept",
                table: "ScrewTurn",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_ScrewTurn_Visit",
                table: "ScrewTurn",
                column: "Visit");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "ScrewTurn");
        }
    }
}
