using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Tickover.Records.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class RoadRuns : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "RoadRun",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Visit = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    On = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Document = table.Column<string>(type: "TEXT", nullable: false),
                    Points = table.Column<string>(type: "TEXT", nullable: false),
                    Told = table.Column<string>(type: "TEXT", nullable: false),
                    LeftOut = table.Column<bool>(type: "INTEGER", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_RoadRun", x => x.Id);
                    table.ForeignKey(
                        name: "FK_RoadRun_Visit_Visit",
                        column: x => x.Visit,
                        principalTable: "Visit",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "StockJet",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Part = table.Column<string>(type: "TEXT", nullable: false),
                    Size = table.Column<double>(type: "REAL", nullable: false),
                    Count = table.Column<int>(type: "INTEGER", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_StockJet", x => x.Id);
                });

            migrationBuilder.CreateIndex(
                name: "IX_RoadRun_Kept",
                table: "RoadRun",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_RoadRun_Visit",
                table: "RoadRun",
                column: "Visit");

            migrationBuilder.CreateIndex(
                name: "IX_StockJet_Kept",
                table: "StockJet",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_StockJet_Part_Size",
                table: "StockJet",
                columns: new[] { "Part", "Size" },
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "RoadRun");

            migrationBuilder.DropTable(
                name: "StockJet");
        }
    }
}
