using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopFit.Web.Data.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class FittersTable : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "KindsLeftOut",
                table: "Shops",
                type: "TEXT",
                maxLength: 200,
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<long>(
                name: "Version",
                table: "Shops",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.CreateTable(
                name: "SettingChanges",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Tablet = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    Path = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    Before = table.Column<string>(type: "TEXT", maxLength: 500, nullable: true),
                    After = table.Column<string>(type: "TEXT", maxLength: 500, nullable: true),
                    Reason = table.Column<string>(type: "TEXT", maxLength: 500, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SettingChanges", x => x.Id);
                });

            migrationBuilder.CreateIndex(
                name: "IX_SettingChanges_ShopId_Path_At",
                table: "SettingChanges",
                columns: new[] { "ShopId", "Path", "At" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "SettingChanges");

            migrationBuilder.DropColumn(
                name: "KindsLeftOut",
                table: "Shops");

            migrationBuilder.DropColumn(
                name: "Version",
                table: "Shops");
        }
    }
}
