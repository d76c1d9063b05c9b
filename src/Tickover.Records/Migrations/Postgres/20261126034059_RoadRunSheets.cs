using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Tickover.Records.Migrations.Postgres
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
                type: "text",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "LoggerLayout",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    Headings = table.Column<string>(type: "text", nullable: false),
                    Layout = table.Column<string>(type: "text", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false),
                    Removed = table.Column<bool>(type: "boolean", nullable: false),
                    Kept = table.Column<long>(type: "bigint", nullable: false),
                    Changed = table.Column<long>(type: "bigint", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "timestamp with time zone", nullable: false),
                    KeptBy = table.Column<Guid>(type: "uuid", nullable: true)
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
