using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Tickover.Records.Migrations.Postgres
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
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    Visit = table.Column<Guid>(type: "uuid", nullable: false),
                    Kind = table.Column<string>(type: "text", nullable: false),
                    Adjuster = table.Column<string>(type: "text", nullable: false),
                    Turns = table.Column<double>(type: "double precision", nullable: false),
                    GapMillimetres = table.Column<double>(type: "double precision", nullable: true),
                    Found = table.Column<bool>(type: "boolean", nullable: false),
                    Advised = table.Column<bool>(type: "boolean", nullable: false),
                    Words = table.Column<string>(type: "text", nullable: false),
                    Note = table.Column<string>(type: "text", nullable: false),
                    TakenAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false),
                    Removed = table.Column<bool>(type: "boolean", nullable: false),
                    Kept = table.Column<long>(type: "bigint", nullable: false),
                    Changed = table.Column<long>(type: "bigint", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    KeptBy = table.Column<Guid>(type: "uuid", nullable: true)
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
