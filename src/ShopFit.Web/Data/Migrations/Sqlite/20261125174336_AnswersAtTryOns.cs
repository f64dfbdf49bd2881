using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopFit.Web.Data.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class AnswersAtTryOns : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "AnswersJson",
                table: "FittingTryOns",
                type: "TEXT",
                nullable: false,
                defaultValue: "[]");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "AnswersJson",
                table: "FittingTryOns");
        }
    }
}
