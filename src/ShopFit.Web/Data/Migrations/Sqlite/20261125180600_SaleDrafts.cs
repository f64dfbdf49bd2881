using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopFit.Web.Data.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class SaleDrafts : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "SaleDrafts",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    OpenedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    SaleId = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SaleDrafts", x => x.Id);
                    table.ForeignKey(
                        name: "FK_SaleDrafts_Sales_SaleId",
                        column: x => x.SaleId,
                        principalTable: "Sales",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "SaleDraftBags",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    DraftId = table.Column<Guid>(type: "TEXT", nullable: false),
                    KeptAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Tablet = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    DancerId = table.Column<Guid>(type: "TEXT", nullable: true),
                    ThingsJson = table.Column<string>(type: "TEXT", nullable: false),
                    DiscountJson = table.Column<string>(type: "TEXT", maxLength: 200, nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SaleDraftBags", x => x.Id);
                    table.ForeignKey(
                        name: "FK_SaleDraftBags_Dancers_DancerId",
                        column: x => x.DancerId,
                        principalTable: "Dancers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.SetNull);
                    table.ForeignKey(
                        name: "FK_SaleDraftBags_SaleDrafts_DraftId",
                        column: x => x.DraftId,
                        principalTable: "SaleDrafts",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_SaleDraftBags_DancerId",
                table: "SaleDraftBags",
                column: "DancerId");

            migrationBuilder.CreateIndex(
                name: "IX_SaleDraftBags_DraftId",
                table: "SaleDraftBags",
                column: "DraftId");

            migrationBuilder.CreateIndex(
                name: "IX_SaleDraftBags_ShopId_DraftId_KeptAt",
                table: "SaleDraftBags",
                columns: new[] { "ShopId", "DraftId", "KeptAt" });

            migrationBuilder.CreateIndex(
                name: "IX_SaleDrafts_SaleId",
                table: "SaleDrafts",
                column: "SaleId");

            migrationBuilder.CreateIndex(
                name: "IX_SaleDrafts_ShopId_OpenedAt",
                table: "SaleDrafts",
                columns: new[] { "ShopId", "OpenedAt" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "SaleDraftBags");

            migrationBuilder.DropTable(
                name: "SaleDrafts");
        }
    }
}
