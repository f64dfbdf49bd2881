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
            migrationBuilder.DropColumn(
                name: "Studio",
                table: "Dancers");

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

            migrationBuilder.AddColumn<Guid>(
                name: "StudioId",
                table: "Dancers",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateTime>(
                name: "SignInOffAt",
                table: "AspNetUsers",
                type: "TEXT",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "FittingWalks",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    FittingId = table.Column<Guid>(type: "TEXT", nullable: false),
                    WalkedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Tablet = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    SizeIdsJson = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    WithdrawnAt = table.Column<DateTime>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_FittingWalks", x => x.Id);
                    table.ForeignKey(
                        name: "FK_FittingWalks_Fittings_FittingId",
                        column: x => x.FittingId,
                        principalTable: "Fittings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

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

            migrationBuilder.CreateTable(
                name: "Studios",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    NameKey = table.Column<string>(type: "TEXT", maxLength: 800, nullable: false),
                    Teachers = table.Column<string>(type: "TEXT", maxLength: 500, nullable: false),
                    Colour = table.Column<string>(type: "TEXT", maxLength: 500, nullable: false),
                    Ribbon = table.Column<string>(type: "TEXT", maxLength: 500, nullable: false),
                    OtherWishes = table.Column<string>(type: "TEXT", maxLength: 500, nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Studios", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "StudioModelWishes",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    StudioId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ModelId = table.Column<Guid>(type: "TEXT", nullable: false),
                    IsAsked = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_StudioModelWishes", x => x.Id);
                    table.ForeignKey(
                        name: "FK_StudioModelWishes_ShoeModels_ModelId",
                        column: x => x.ModelId,
                        principalTable: "ShoeModels",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "FK_StudioModelWishes_Studios_StudioId",
                        column: x => x.StudioId,
                        principalTable: "Studios",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Dancers_StudioId",
                table: "Dancers",
                column: "StudioId");

            migrationBuilder.CreateIndex(
                name: "IX_FittingWalks_FittingId",
                table: "FittingWalks",
                column: "FittingId");

            migrationBuilder.CreateIndex(
                name: "IX_FittingWalks_ShopId_FittingId_WalkedAt",
                table: "FittingWalks",
                columns: new[] { "ShopId", "FittingId", "WalkedAt" });

            migrationBuilder.CreateIndex(
                name: "IX_SettingChanges_ShopId_Path_At",
                table: "SettingChanges",
                columns: new[] { "ShopId", "Path", "At" });

            migrationBuilder.CreateIndex(
                name: "IX_StudioModelWishes_ModelId",
                table: "StudioModelWishes",
                column: "ModelId");

            migrationBuilder.CreateIndex(
                name: "IX_StudioModelWishes_ShopId_StudioId_ModelId",
                table: "StudioModelWishes",
                columns: new[] { "ShopId", "StudioId", "ModelId" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_StudioModelWishes_StudioId",
                table: "StudioModelWishes",
                column: "StudioId");

            migrationBuilder.CreateIndex(
                name: "IX_Studios_ShopId_NameKey",
                table: "Studios",
                columns: new[] { "ShopId", "NameKey" },
                unique: true);

            migrationBuilder.AddForeignKey(
                name: "FK_Dancers_Studios_StudioId",
                table: "Dancers",
                column: "StudioId",
                principalTable: "Studios",
                principalColumn: "Id",
                onDelete: ReferentialAction.SetNull);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropForeignKey(
                name: "FK_Dancers_Studios_StudioId",
                table: "Dancers");

            migrationBuilder.DropTable(
                name: "FittingWalks");

            migrationBuilder.DropTable(
                name: "SettingChanges");

            migrationBuilder.DropTable(
                name: "StudioModelWishes");

            migrationBuilder.DropTable(
                name: "Studios");

            migrationBuilder.DropIndex(
                name: "IX_Dancers_StudioId",
                table: "Dancers");

            migrationBuilder.DropColumn(
                name: "KindsLeftOut",
                table: "Shops");

            migrationBuilder.DropColumn(
                name: "Version",
                table: "Shops");

            migrationBuilder.DropColumn(
                name: "StudioId",
                table: "Dancers");

            migrationBuilder.DropColumn(
                name: "SignInOffAt",
                table: "AspNetUsers");

            migrationBuilder.AddColumn<string>(
                name: "Studio",
                table: "Dancers",
                type: "TEXT",
                maxLength: 200,
                nullable: false,
                defaultValue: "");
        }
    }
}
