using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Tickover.Records.Migrations.Postgres
{
    /// <inheritdoc />
    public partial class PhotographPlace : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "Of",
                table: "Photograph",
                type: "text",
                nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "Of",
                table: "Photograph");
        }
    }
}
