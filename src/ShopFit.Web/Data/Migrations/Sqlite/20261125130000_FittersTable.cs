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
            migrationBuilder.DropIndex(
                name: "IX_FittingSnapshots_ShopId_FittingId",
                table: "FittingSnapshots");

            migrationBuilder.DropColumn(
                name: "Studio",
                table: "Dancers");

            migrationBuilder.AddColumn<long>(
                name: "DancersVersion",
                table: "Shops",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0L);

            migrationBuilder.AddColumn<int>(
                name: "FitterDiscountLimitBasisPoints",
                table: "Shops",
                type: "INTEGER",
                nullable: false,
                defaultValue: 1000);

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

            migrationBuilder.AddColumn<string>(
                name: "VoidReason",
                table: "Sales",
                type: "TEXT",
                maxLength: 300,
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<Guid>(
                name: "VoidedBy",
                table: "Sales",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<Guid>(
                name: "VoucherId",
                table: "Sales",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "ReturnedQuantity",
                table: "SaleLines",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.AddColumn<long>(
                name: "CataloguePriceMinor",
                table: "Items",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "PricedByHand",
                table: "Items",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);

            migrationBuilder.AddColumn<string>(
                name: "TagsJson",
                table: "FittingTryOns",
                type: "TEXT",
                nullable: false,
                defaultValue: "[]");

            migrationBuilder.AddColumn<double>(
                name: "SuggestedChance",
                table: "FittingSnapshots",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<Guid>(
                name: "SuggestedSizeId",
                table: "FittingSnapshots",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "TimesReopened",
                table: "Fittings",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.AddColumn<DateOnly>(
                name: "DueOn",
                table: "FittingDecisions",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "OverruleCode",
                table: "FittingDecisions",
                type: "TEXT",
                maxLength: 20,
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "AdvisedPair",
                table: "FittingChoices",
                type: "TEXT",
                maxLength: 200,
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "AskedLabel",
                table: "FittingChoices",
                type: "TEXT",
                maxLength: 40,
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<string>(
                name: "DiscountJson",
                table: "FittingChoices",
                type: "TEXT",
                maxLength: 200,
                nullable: true);

            migrationBuilder.AddColumn<string>(
                name: "OverruleCode",
                table: "FittingChoices",
                type: "TEXT",
                maxLength: 20,
                nullable: false,
                defaultValue: "");

            migrationBuilder.AddColumn<Guid>(
                name: "SuggestedSizeId",
                table: "FittingChoices",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<bool>(
                name: "SaidUnderAge",
                table: "Dancers",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.AddColumn<Guid>(
                name: "StudioId",
                table: "Dancers",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "Version",
                table: "Dancers",
                type: "INTEGER",
                nullable: false,
                defaultValue: 0);

            migrationBuilder.AddColumn<DateTime>(
                name: "WithdrawnAt",
                table: "Consents",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateTime>(
                name: "SignInOffAt",
                table: "AspNetUsers",
                type: "TEXT",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "ArrivalAnswers",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    FittingId = table.Column<Guid>(type: "TEXT", nullable: false),
                    SaidAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Tablet = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    Question = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Foot = table.Column<string>(type: "TEXT", maxLength: 10, nullable: true),
                    Answer = table.Column<string>(type: "TEXT", maxLength: 500, nullable: false),
                    WithdrawnAt = table.Column<DateTime>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ArrivalAnswers", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ArrivalAnswers_Fittings_FittingId",
                        column: x => x.FittingId,
                        principalTable: "Fittings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "FitterHabits",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Tablet = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    FacesDancer = table.Column<bool>(type: "INTEGER", nullable: false),
                    LengthsIn = table.Column<string>(type: "TEXT", maxLength: 20, nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_FitterHabits", x => x.Id);
                });

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
                name: "LabelMappings",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    MakerId = table.Column<Guid>(type: "TEXT", nullable: false),
                    MeaningsJson = table.Column<string>(type: "TEXT", nullable: false),
                    MappedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Tablet = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    WithdrawnAt = table.Column<DateTime>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LabelMappings", x => x.Id);
                    table.ForeignKey(
                        name: "FK_LabelMappings_Makers_MakerId",
                        column: x => x.MakerId,
                        principalTable: "Makers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "MeasuredSamples",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ModelId = table.Column<Guid>(type: "TEXT", nullable: false),
                    SizeId = table.Column<Guid>(type: "TEXT", nullable: false),
                    MeasuredOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    MeasuredBy = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    LengthMm = table.Column<double>(type: "REAL", nullable: true),
                    BoxBreadthMm = table.Column<double>(type: "REAL", nullable: true),
                    BallGirthMm = table.Column<double>(type: "REAL", nullable: true),
                    HeelBreadthMm = table.Column<double>(type: "REAL", nullable: true),
                    CrownDepthMm = table.Column<double>(type: "REAL", nullable: true),
                    ToeSlopeMm = table.Column<double>(type: "REAL", nullable: true),
                    VampMm = table.Column<double>(type: "REAL", nullable: true),
                    ShankPoints = table.Column<double>(type: "REAL", nullable: true),
                    EnteredAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Tablet = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    WithdrawnAt = table.Column<DateTime>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_MeasuredSamples", x => x.Id);
                    table.ForeignKey(
                        name: "FK_MeasuredSamples_ShoeModels_ModelId",
                        column: x => x.ModelId,
                        principalTable: "ShoeModels",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_MeasuredSamples_ShoeSizes_SizeId",
                        column: x => x.SizeId,
                        principalTable: "ShoeSizes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "PriceChanges",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ItemId = table.Column<Guid>(type: "TEXT", nullable: false),
                    CommandId = table.Column<Guid>(type: "TEXT", nullable: false),
                    FromMinor = table.Column<long>(type: "INTEGER", nullable: true),
                    ToMinor = table.Column<long>(type: "INTEGER", nullable: false),
                    ChangedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Tablet = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    WithdrawnAt = table.Column<DateTime>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PriceChanges", x => x.Id);
                    table.ForeignKey(
                        name: "FK_PriceChanges_Items_ItemId",
                        column: x => x.ItemId,
                        principalTable: "Items",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "SaleReceipts",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    SaleId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 10, nullable: false),
                    Year = table.Column<int>(type: "INTEGER", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    MadeAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    PaperId = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SaleReceipts", x => x.Id);
                    table.CheckConstraint("CK_SaleReceipts_Number", "\"Number\" > 0");
                    table.ForeignKey(
                        name: "FK_SaleReceipts_Papers_PaperId",
                        column: x => x.PaperId,
                        principalTable: "Papers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_SaleReceipts_Sales_SaleId",
                        column: x => x.SaleId,
                        principalTable: "Sales",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "SaleReturns",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    SaleId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ReturnedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Tablet = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    Reason = table.Column<string>(type: "TEXT", maxLength: 300, nullable: false),
                    TotalMinor = table.Column<long>(type: "INTEGER", nullable: false),
                    TaxMinor = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SaleReturns", x => x.Id);
                    table.CheckConstraint("CK_SaleReturns_Amounts", "\"TotalMinor\" >= 0 AND \"TaxMinor\" BETWEEN 0 AND \"TotalMinor\"");
                    table.ForeignKey(
                        name: "FK_SaleReturns_Sales_SaleId",
                        column: x => x.SaleId,
                        principalTable: "Sales",
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
                name: "Vouchers",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Code = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    PercentBasisPoints = table.Column<int>(type: "INTEGER", nullable: true),
                    AmountMinor = table.Column<long>(type: "INTEGER", nullable: true),
                    ValidFrom = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    ValidTo = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    MostUses = table.Column<int>(type: "INTEGER", nullable: true),
                    Used = table.Column<int>(type: "INTEGER", nullable: false),
                    LeastTotalMinor = table.Column<long>(type: "INTEGER", nullable: false),
                    Categories = table.Column<string>(type: "TEXT", maxLength: 400, nullable: false),
                    MadeAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    EndedAt = table.Column<DateTime>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Vouchers", x => x.Id);
                    table.CheckConstraint("CK_Vouchers_Used", "\"Used\" >= 0 AND (\"MostUses\" IS NULL OR \"Used\" <= \"MostUses\")");
                    table.CheckConstraint("CK_Vouchers_Value", "(\"PercentBasisPoints\" BETWEEN 1 AND 10000 AND \"AmountMinor\" IS NULL) OR (\"PercentBasisPoints\" IS NULL AND \"AmountMinor\" > 0)");
                });

            migrationBuilder.CreateTable(
                name: "SaleReturnLines",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ReturnId = table.Column<Guid>(type: "TEXT", nullable: false),
                    SaleLineId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Quantity = table.Column<int>(type: "INTEGER", nullable: false),
                    TotalMinor = table.Column<long>(type: "INTEGER", nullable: false),
                    TaxMinor = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SaleReturnLines", x => x.Id);
                    table.CheckConstraint("CK_SaleReturnLines_Quantity", "\"Quantity\" > 0");
                    table.ForeignKey(
                        name: "FK_SaleReturnLines_SaleLines_SaleLineId",
                        column: x => x.SaleLineId,
                        principalTable: "SaleLines",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_SaleReturnLines_SaleReturns_ReturnId",
                        column: x => x.ReturnId,
                        principalTable: "SaleReturns",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
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

            migrationBuilder.AddCheckConstraint(
                name: "CK_Shops_FitterDiscountLimit",
                table: "Shops",
                sql: "\"FitterDiscountLimitBasisPoints\" BETWEEN 0 AND 10000");

            migrationBuilder.CreateIndex(
                name: "IX_Sales_VoucherId",
                table: "Sales",
                column: "VoucherId");

            migrationBuilder.AddCheckConstraint(
                name: "CK_SaleLines_Returned",
                table: "SaleLines",
                sql: "\"ReturnedQuantity\" BETWEEN 0 AND \"Quantity\"");

            migrationBuilder.CreateIndex(
                name: "IX_FittingSnapshots_ShopId_FittingId",
                table: "FittingSnapshots",
                columns: new[] { "ShopId", "FittingId" });

            migrationBuilder.CreateIndex(
                name: "IX_FittingSnapshots_SuggestedSizeId",
                table: "FittingSnapshots",
                column: "SuggestedSizeId");

            migrationBuilder.CreateIndex(
                name: "IX_Dancers_StudioId",
                table: "Dancers",
                column: "StudioId");

            migrationBuilder.CreateIndex(
                name: "IX_ArrivalAnswers_FittingId",
                table: "ArrivalAnswers",
                column: "FittingId");

            migrationBuilder.CreateIndex(
                name: "IX_ArrivalAnswers_ShopId_FittingId_SaidAt",
                table: "ArrivalAnswers",
                columns: new[] { "ShopId", "FittingId", "SaidAt" });

            migrationBuilder.CreateIndex(
                name: "IX_FitterHabits_ShopId_PersonId_Tablet",
                table: "FitterHabits",
                columns: new[] { "ShopId", "PersonId", "Tablet" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_FittingWalks_FittingId",
                table: "FittingWalks",
                column: "FittingId");

            migrationBuilder.CreateIndex(
                name: "IX_FittingWalks_ShopId_FittingId_WalkedAt",
                table: "FittingWalks",
                columns: new[] { "ShopId", "FittingId", "WalkedAt" });

            migrationBuilder.CreateIndex(
                name: "IX_LabelMappings_MakerId",
                table: "LabelMappings",
                column: "MakerId");

            migrationBuilder.CreateIndex(
                name: "IX_LabelMappings_ShopId_MakerId",
                table: "LabelMappings",
                columns: new[] { "ShopId", "MakerId" });

            migrationBuilder.CreateIndex(
                name: "IX_MeasuredSamples_ModelId",
                table: "MeasuredSamples",
                column: "ModelId");

            migrationBuilder.CreateIndex(
                name: "IX_MeasuredSamples_ShopId_ModelId",
                table: "MeasuredSamples",
                columns: new[] { "ShopId", "ModelId" });

            migrationBuilder.CreateIndex(
                name: "IX_MeasuredSamples_SizeId",
                table: "MeasuredSamples",
                column: "SizeId");

            migrationBuilder.CreateIndex(
                name: "IX_PriceChanges_ItemId",
                table: "PriceChanges",
                column: "ItemId");

            migrationBuilder.CreateIndex(
                name: "IX_PriceChanges_ShopId_CommandId",
                table: "PriceChanges",
                columns: new[] { "ShopId", "CommandId" });

            migrationBuilder.CreateIndex(
                name: "IX_PriceChanges_ShopId_ItemId",
                table: "PriceChanges",
                columns: new[] { "ShopId", "ItemId" });

            migrationBuilder.CreateIndex(
                name: "IX_SaleReceipts_PaperId",
                table: "SaleReceipts",
                column: "PaperId");

            migrationBuilder.CreateIndex(
                name: "IX_SaleReceipts_SaleId",
                table: "SaleReceipts",
                column: "SaleId");

            migrationBuilder.CreateIndex(
                name: "IX_SaleReceipts_ShopId_SaleId",
                table: "SaleReceipts",
                columns: new[] { "ShopId", "SaleId" });

            migrationBuilder.CreateIndex(
                name: "IX_SaleReceipts_ShopId_Year_Number",
                table: "SaleReceipts",
                columns: new[] { "ShopId", "Year", "Number" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_SaleReturnLines_ReturnId",
                table: "SaleReturnLines",
                column: "ReturnId");

            migrationBuilder.CreateIndex(
                name: "IX_SaleReturnLines_SaleLineId",
                table: "SaleReturnLines",
                column: "SaleLineId");

            migrationBuilder.CreateIndex(
                name: "IX_SaleReturnLines_ShopId_ReturnId",
                table: "SaleReturnLines",
                columns: new[] { "ShopId", "ReturnId" });

            migrationBuilder.CreateIndex(
                name: "IX_SaleReturnLines_ShopId_SaleLineId",
                table: "SaleReturnLines",
                columns: new[] { "ShopId", "SaleLineId" });

            migrationBuilder.CreateIndex(
                name: "IX_SaleReturns_SaleId",
                table: "SaleReturns",
                column: "SaleId");

            migrationBuilder.CreateIndex(
                name: "IX_SaleReturns_ShopId_ReturnedAt",
                table: "SaleReturns",
                columns: new[] { "ShopId", "ReturnedAt" });

            migrationBuilder.CreateIndex(
                name: "IX_SaleReturns_ShopId_SaleId",
                table: "SaleReturns",
                columns: new[] { "ShopId", "SaleId" });

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

            migrationBuilder.CreateIndex(
                name: "IX_Vouchers_ShopId_Code",
                table: "Vouchers",
                columns: new[] { "ShopId", "Code" },
                unique: true);

            migrationBuilder.AddForeignKey(
                name: "FK_Dancers_Studios_StudioId",
                table: "Dancers",
                column: "StudioId",
                principalTable: "Studios",
                principalColumn: "Id",
                onDelete: ReferentialAction.SetNull);

            migrationBuilder.AddForeignKey(
                name: "FK_FittingSnapshots_ShoeSizes_SuggestedSizeId",
                table: "FittingSnapshots",
                column: "SuggestedSizeId",
                principalTable: "ShoeSizes",
                principalColumn: "Id",
                onDelete: ReferentialAction.Restrict);

            migrationBuilder.AddForeignKey(
                name: "FK_Sales_Vouchers_VoucherId",
                table: "Sales",
                column: "VoucherId",
                principalTable: "Vouchers",
                principalColumn: "Id",
                onDelete: ReferentialAction.Restrict);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropForeignKey(
                name: "FK_Dancers_Studios_StudioId",
                table: "Dancers");

            migrationBuilder.DropForeignKey(
                name: "FK_FittingSnapshots_ShoeSizes_SuggestedSizeId",
                table: "FittingSnapshots");

            migrationBuilder.DropForeignKey(
                name: "FK_Sales_Vouchers_VoucherId",
                table: "Sales");

            migrationBuilder.DropTable(
                name: "ArrivalAnswers");

            migrationBuilder.DropTable(
                name: "FitterHabits");

            migrationBuilder.DropTable(
                name: "FittingWalks");

            migrationBuilder.DropTable(
                name: "LabelMappings");

            migrationBuilder.DropTable(
                name: "MeasuredSamples");

            migrationBuilder.DropTable(
                name: "PriceChanges");

            migrationBuilder.DropTable(
                name: "SaleReceipts");

            migrationBuilder.DropTable(
                name: "SaleReturnLines");

            migrationBuilder.DropTable(
                name: "SettingChanges");

            migrationBuilder.DropTable(
                name: "StudioModelWishes");

            migrationBuilder.DropTable(
                name: "Vouchers");

            migrationBuilder.DropTable(
                name: "SaleReturns");

            migrationBuilder.DropTable(
                name: "Studios");

            migrationBuilder.DropCheckConstraint(
                name: "CK_Shops_FitterDiscountLimit",
                table: "Shops");

            migrationBuilder.DropIndex(
                name: "IX_Sales_VoucherId",
                table: "Sales");

            migrationBuilder.DropCheckConstraint(
                name: "CK_SaleLines_Returned",
                table: "SaleLines");

            migrationBuilder.DropIndex(
                name: "IX_FittingSnapshots_ShopId_FittingId",
                table: "FittingSnapshots");

            migrationBuilder.DropIndex(
                name: "IX_FittingSnapshots_SuggestedSizeId",
                table: "FittingSnapshots");

            migrationBuilder.DropIndex(
                name: "IX_Dancers_StudioId",
                table: "Dancers");

            migrationBuilder.DropColumn(
                name: "DancersVersion",
                table: "Shops");

            migrationBuilder.DropColumn(
                name: "FitterDiscountLimitBasisPoints",
                table: "Shops");

            migrationBuilder.DropColumn(
                name: "KindsLeftOut",
                table: "Shops");

            migrationBuilder.DropColumn(
                name: "Version",
                table: "Shops");

            migrationBuilder.DropColumn(
                name: "VoidReason",
                table: "Sales");

            migrationBuilder.DropColumn(
                name: "VoidedBy",
                table: "Sales");

            migrationBuilder.DropColumn(
                name: "VoucherId",
                table: "Sales");

            migrationBuilder.DropColumn(
                name: "ReturnedQuantity",
                table: "SaleLines");

            migrationBuilder.DropColumn(
                name: "CataloguePriceMinor",
                table: "Items");

            migrationBuilder.DropColumn(
                name: "PricedByHand",
                table: "Items");

            migrationBuilder.DropColumn(
                name: "TagsJson",
                table: "FittingTryOns");

            migrationBuilder.DropColumn(
                name: "SuggestedChance",
                table: "FittingSnapshots");

            migrationBuilder.DropColumn(
                name: "SuggestedSizeId",
                table: "FittingSnapshots");

            migrationBuilder.DropColumn(
                name: "TimesReopened",
                table: "Fittings");

            migrationBuilder.DropColumn(
                name: "DueOn",
                table: "FittingDecisions");

            migrationBuilder.DropColumn(
                name: "OverruleCode",
                table: "FittingDecisions");

            migrationBuilder.DropColumn(
                name: "AdvisedPair",
                table: "FittingChoices");

            migrationBuilder.DropColumn(
                name: "AskedLabel",
                table: "FittingChoices");

            migrationBuilder.DropColumn(
                name: "DiscountJson",
                table: "FittingChoices");

            migrationBuilder.DropColumn(
                name: "OverruleCode",
                table: "FittingChoices");

            migrationBuilder.DropColumn(
                name: "SuggestedSizeId",
                table: "FittingChoices");

            migrationBuilder.DropColumn(
                name: "SaidUnderAge",
                table: "Dancers");

            migrationBuilder.DropColumn(
                name: "StudioId",
                table: "Dancers");

            migrationBuilder.DropColumn(
                name: "Version",
                table: "Dancers");

            migrationBuilder.DropColumn(
                name: "WithdrawnAt",
                table: "Consents");

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

            migrationBuilder.CreateIndex(
                name: "IX_FittingSnapshots_ShopId_FittingId",
                table: "FittingSnapshots",
                columns: new[] { "ShopId", "FittingId" },
                unique: true);
        }
    }
}
