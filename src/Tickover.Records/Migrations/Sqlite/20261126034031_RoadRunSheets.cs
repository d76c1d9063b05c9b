using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Tickover.Records.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class RoadRunSheets : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Sheet",
                table: "RoadRun",
                type: "TEXT",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "LoggerLayout",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Headings = table.Column<string>(type: "TEXT", nullable: false),
                    Layout = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LoggerLayout", x => x.Id);
                });

            migrationBuilder.CreateIndex(
                name: "IX_LoggerLayout_Kept",
                table: "LoggerLayout",
                column: "Kept");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "LoggerLayout");

            migrationBuilder.DropColumn(
                name: "Sheet",
                table: "RoadRun");
        }
    }
}
