using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Tickover.Records.Migrations.Postgres
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
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    Visit = table.Column<Guid>(type: "uuid", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false),
                    On = table.Column<DateOnly>(type: "date", nullable: false),
                    Document = table.Column<string>(type: "text", nullable: false),
                    Points = table.Column<string>(type: "text", nullable: false),
                    Told = table.Column<string>(type: "text", nullable: false),
                    LeftOut = table.Column<bool>(type: "boolean", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false),
                    Removed = table.Column<bool>(type: "boolean", nullable: false),
                    Kept = table.Column<long>(type: "bigint", nullable: false),
                    Changed = table.Column<long>(type: "bigint", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    KeptBy = table.Column<Guid>(type: "uuid", nullable: true)
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
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    Part = table.Column<string>(type: "text", nullable: false),
                    Size = table.Column<double>(type: "double precision", nullable: false),
                    Count = table.Column<int>(type: "integer", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false),
                    Removed = table.Column<bool>(type: "boolean", nullable: false),
                    Kept = table.Column<long>(type: "bigint", nullable: false),
                    Changed = table.Column<long>(type: "bigint", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    KeptBy = table.Column<Guid>(type: "uuid", nullable: true)
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
