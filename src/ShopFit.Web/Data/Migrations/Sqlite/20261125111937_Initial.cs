using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopFit.Web.Data.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class Initial : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "ApiKeys",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    KeyHash = table.Column<byte[]>(type: "BLOB", maxLength: 32, nullable: false),
                    CreatedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    RevokedAt = table.Column<DateTime>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ApiKeys", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "AspNetRoles",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    NormalizedName = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    ConcurrencyStamp = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_AspNetRoles", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Commands",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Tablet = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    Action = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    OutcomeJson = table.Column<string>(type: "TEXT", nullable: false),
                    DoneAt = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Commands", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "DataProtectionKeys",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    FriendlyName = table.Column<string>(type: "TEXT", nullable: true),
                    Xml = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_DataProtectionKeys", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Guardians",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    Contact = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Guardians", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Items",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Code = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 300, nullable: false),
                    Category = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    PriceMinor = table.Column<long>(type: "INTEGER", nullable: true),
                    Gtin = table.Column<string>(type: "TEXT", maxLength: 14, nullable: true),
                    TracksStock = table.Column<bool>(type: "INTEGER", nullable: false),
                    PadId = table.Column<string>(type: "TEXT", maxLength: 40, nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Items", x => x.Id);
                    table.CheckConstraint("CK_Items_Price", "\"PriceMinor\" >= 0");
                });

            migrationBuilder.CreateTable(
                name: "Makers",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Makers", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "ShelfPlaces",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Code = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    Sells = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ShelfPlaces", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Shops",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    Address = table.Column<string>(type: "TEXT", maxLength: 500, nullable: false),
                    Contact = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    TimeZone = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    Currency = table.Column<string>(type: "TEXT", maxLength: 3, nullable: false),
                    Paper = table.Column<string>(type: "TEXT", maxLength: 10, nullable: false),
                    Units = table.Column<string>(type: "TEXT", maxLength: 2, nullable: false),
                    SizeSystemShown = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    PricesIncludeTax = table.Column<bool>(type: "INTEGER", nullable: false),
                    ReturnDays = table.Column<int>(type: "INTEGER", nullable: false),
                    FitOverridesJson = table.Column<string>(type: "TEXT", nullable: true),
                    ShelfVersion = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Shops", x => x.Id);
                    table.CheckConstraint("CK_Shops_Paper", "\"Paper\" IN ('A4', 'Letter')");
                    table.CheckConstraint("CK_Shops_ReturnDays", "\"ReturnDays\" >= 0");
                    table.CheckConstraint("CK_Shops_Units", "\"Units\" IN ('mm', 'in')");
                });

            migrationBuilder.CreateTable(
                name: "TaxRates",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Category = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    RateBasisPoints = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_TaxRates", x => x.Id);
                    table.CheckConstraint("CK_TaxRates_Rate", "\"RateBasisPoints\" BETWEEN 0 AND 10000");
                });

            migrationBuilder.CreateTable(
                name: "AspNetRoleClaims",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    RoleId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ClaimType = table.Column<string>(type: "TEXT", nullable: true),
                    ClaimValue = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_AspNetRoleClaims", x => x.Id);
                    table.ForeignKey(
                        name: "FK_AspNetRoleClaims_AspNetRoles_RoleId",
                        column: x => x.RoleId,
                        principalTable: "AspNetRoles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "Dancers",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    KnownAs = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    BirthDate = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    Sex = table.Column<string>(type: "TEXT", maxLength: 10, nullable: true),
                    Studio = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    Teacher = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    GuardianId = table.Column<Guid>(type: "TEXT", nullable: true),
                    Language = table.Column<string>(type: "TEXT", maxLength: 35, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Dancers", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Dancers_Guardians_GuardianId",
                        column: x => x.GuardianId,
                        principalTable: "Guardians",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.SetNull);
                });

            migrationBuilder.CreateTable(
                name: "ShoeModels",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    MakerId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    Construction = table.Column<string>(type: "TEXT", maxLength: 20, nullable: true),
                    Discontinued = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ShoeModels", x => x.Id);
                    table.CheckConstraint("CK_ShoeModels_Construction", "\"Construction\" IN ('paste', 'moulded', 'soft')");
                    table.ForeignKey(
                        name: "FK_ShoeModels_Makers_MakerId",
                        column: x => x.MakerId,
                        principalTable: "Makers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "StockLevels",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ItemId = table.Column<Guid>(type: "TEXT", nullable: false),
                    PlaceId = table.Column<Guid>(type: "TEXT", nullable: false),
                    OnHand = table.Column<int>(type: "INTEGER", nullable: false),
                    Reserved = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_StockLevels", x => x.Id);
                    table.CheckConstraint("CK_StockLevels_OnHand", "\"OnHand\" >= 0");
                    table.CheckConstraint("CK_StockLevels_Reserved", "\"Reserved\" BETWEEN 0 AND \"OnHand\"");
                    table.ForeignKey(
                        name: "FK_StockLevels_Items_ItemId",
                        column: x => x.ItemId,
                        principalTable: "Items",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_StockLevels_ShelfPlaces_PlaceId",
                        column: x => x.PlaceId,
                        principalTable: "ShelfPlaces",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "AspNetUsers",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    DisplayName = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    UserName = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    NormalizedUserName = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    Email = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    NormalizedEmail = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    EmailConfirmed = table.Column<bool>(type: "INTEGER", nullable: false),
                    PasswordHash = table.Column<string>(type: "TEXT", nullable: true),
                    SecurityStamp = table.Column<string>(type: "TEXT", nullable: true),
                    ConcurrencyStamp = table.Column<string>(type: "TEXT", nullable: true),
                    PhoneNumber = table.Column<string>(type: "TEXT", maxLength: 256, nullable: true),
                    PhoneNumberConfirmed = table.Column<bool>(type: "INTEGER", nullable: false),
                    TwoFactorEnabled = table.Column<bool>(type: "INTEGER", nullable: false),
                    LockoutEnd = table.Column<DateTime>(type: "TEXT", nullable: true),
                    LockoutEnabled = table.Column<bool>(type: "INTEGER", nullable: false),
                    AccessFailedCount = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_AspNetUsers", x => x.Id);
                    table.ForeignKey(
                        name: "FK_AspNetUsers_Shops_ShopId",
                        column: x => x.ShopId,
                        principalTable: "Shops",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Consents",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    DancerId = table.Column<Guid>(type: "TEXT", nullable: false),
                    GivenBy = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    GivenAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Consents", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Consents_Dancers_DancerId",
                        column: x => x.DancerId,
                        principalTable: "Dancers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "Fittings",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    DancerId = table.Column<Guid>(type: "TEXT", nullable: true),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    FirstPair = table.Column<bool>(type: "INTEGER", nullable: false),
                    OpenedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    OpenedBy = table.Column<Guid>(type: "TEXT", nullable: false),
                    Tablet = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    ClosedAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    AgeYears = table.Column<double>(type: "REAL", nullable: true),
                    Sex = table.Column<string>(type: "TEXT", maxLength: 10, nullable: true),
                    SoreLeft = table.Column<bool>(type: "INTEGER", nullable: false),
                    SoreRight = table.Column<bool>(type: "INTEGER", nullable: false),
                    SkinBroken = table.Column<bool>(type: "INTEGER", nullable: false),
                    TeacherAgreedOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Fittings", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Fittings_Dancers_DancerId",
                        column: x => x.DancerId,
                        principalTable: "Dancers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.SetNull);
                });

            migrationBuilder.CreateTable(
                name: "ShoeSizes",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ModelId = table.Column<Guid>(type: "TEXT", nullable: false),
                    SizeSystem = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    Size = table.Column<double>(type: "REAL", nullable: false),
                    Width = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Option = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    ShankName = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    LeadTimeDays = table.Column<int>(type: "INTEGER", nullable: true),
                    Form_BallGirthMm = table.Column<double>(type: "REAL", nullable: true),
                    Form_BoxBreadthMm = table.Column<double>(type: "REAL", nullable: true),
                    Form_BoxStep = table.Column<double>(type: "REAL", nullable: false),
                    Form_CrownDepthMm = table.Column<double>(type: "REAL", nullable: true),
                    Form_HeelBreadthMm = table.Column<double>(type: "REAL", nullable: true),
                    Form_LengthMm = table.Column<double>(type: "REAL", nullable: true),
                    Form_ShankPoints = table.Column<double>(type: "REAL", nullable: true),
                    Form_Source = table.Column<string>(type: "TEXT", maxLength: 10, nullable: false),
                    Form_ToeSlopeMm = table.Column<double>(type: "REAL", nullable: true),
                    Form_VampMm = table.Column<double>(type: "REAL", nullable: true),
                    Form_VampStep = table.Column<double>(type: "REAL", nullable: false),
                    Form_WidthStep = table.Column<double>(type: "REAL", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ShoeSizes", x => x.Id);
                    table.CheckConstraint("CK_ShoeSizes_LeadTime", "\"LeadTimeDays\" >= 0");
                    table.ForeignKey(
                        name: "FK_ShoeSizes_Items_Id",
                        column: x => x.Id,
                        principalTable: "Items",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_ShoeSizes_ShoeModels_ModelId",
                        column: x => x.ModelId,
                        principalTable: "ShoeModels",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "AspNetUserClaims",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    UserId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ClaimType = table.Column<string>(type: "TEXT", nullable: true),
                    ClaimValue = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_AspNetUserClaims", x => x.Id);
                    table.ForeignKey(
                        name: "FK_AspNetUserClaims_AspNetUsers_UserId",
                        column: x => x.UserId,
                        principalTable: "AspNetUsers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "AspNetUserLogins",
                columns: table => new
                {
                    LoginProvider = table.Column<string>(type: "TEXT", maxLength: 128, nullable: false),
                    ProviderKey = table.Column<string>(type: "TEXT", maxLength: 128, nullable: false),
                    ProviderDisplayName = table.Column<string>(type: "TEXT", nullable: true),
                    UserId = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_AspNetUserLogins", x => new { x.LoginProvider, x.ProviderKey });
                    table.ForeignKey(
                        name: "FK_AspNetUserLogins_AspNetUsers_UserId",
                        column: x => x.UserId,
                        principalTable: "AspNetUsers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "AspNetUserPasskeys",
                columns: table => new
                {
                    CredentialId = table.Column<byte[]>(type: "BLOB", maxLength: 1024, nullable: false),
                    UserId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Data = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_AspNetUserPasskeys", x => x.CredentialId);
                    table.ForeignKey(
                        name: "FK_AspNetUserPasskeys_AspNetUsers_UserId",
                        column: x => x.UserId,
                        principalTable: "AspNetUsers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "AspNetUserRoles",
                columns: table => new
                {
                    UserId = table.Column<Guid>(type: "TEXT", nullable: false),
                    RoleId = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_AspNetUserRoles", x => new { x.UserId, x.RoleId });
                    table.ForeignKey(
                        name: "FK_AspNetUserRoles_AspNetRoles_RoleId",
                        column: x => x.RoleId,
                        principalTable: "AspNetRoles",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "FK_AspNetUserRoles_AspNetUsers_UserId",
                        column: x => x.UserId,
                        principalTable: "AspNetUsers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "AspNetUserTokens",
                columns: table => new
                {
                    UserId = table.Column<Guid>(type: "TEXT", nullable: false),
                    LoginProvider = table.Column<string>(type: "TEXT", maxLength: 128, nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 128, nullable: false),
                    Value = table.Column<string>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_AspNetUserTokens", x => new { x.UserId, x.LoginProvider, x.Name });
                    table.ForeignKey(
                        name: "FK_AspNetUserTokens_AspNetUsers_UserId",
                        column: x => x.UserId,
                        principalTable: "AspNetUsers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "FittingReadings",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    FittingId = table.Column<Guid>(type: "TEXT", nullable: false),
                    TakenAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Tablet = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    Foot = table.Column<string>(type: "TEXT", maxLength: 10, nullable: false),
                    Trait = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Value = table.Column<double>(type: "REAL", nullable: false),
                    Unit = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    SizeSystem = table.Column<string>(type: "TEXT", maxLength: 20, nullable: true),
                    Method = table.Column<string>(type: "TEXT", maxLength: 40, nullable: true),
                    WithdrawnAt = table.Column<DateTime>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_FittingReadings", x => x.Id);
                    table.ForeignKey(
                        name: "FK_FittingReadings_Fittings_FittingId",
                        column: x => x.FittingId,
                        principalTable: "Fittings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "FittingSnapshots",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    FittingId = table.Column<Guid>(type: "TEXT", nullable: false),
                    DefaultsFingerprint = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    OffsetsVersion = table.Column<int>(type: "INTEGER", nullable: false),
                    ChanceOfFit = table.Column<double>(type: "REAL", nullable: true),
                    Score = table.Column<double>(type: "REAL", nullable: true),
                    PadsJson = table.Column<string>(type: "TEXT", nullable: false),
                    CriteriaJson = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_FittingSnapshots", x => x.Id);
                    table.ForeignKey(
                        name: "FK_FittingSnapshots_Fittings_FittingId",
                        column: x => x.FittingId,
                        principalTable: "Fittings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Sales",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    FittingId = table.Column<Guid>(type: "TEXT", nullable: true),
                    DancerId = table.Column<Guid>(type: "TEXT", nullable: true),
                    SoldAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Tablet = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    Currency = table.Column<string>(type: "TEXT", maxLength: 3, nullable: false),
                    TotalMinor = table.Column<long>(type: "INTEGER", nullable: false),
                    TaxMinor = table.Column<long>(type: "INTEGER", nullable: false),
                    VoidedAt = table.Column<DateTime>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Sales", x => x.Id);
                    table.CheckConstraint("CK_Sales_Amounts", "\"TotalMinor\" >= 0 AND \"TaxMinor\" BETWEEN 0 AND \"TotalMinor\"");
                    table.ForeignKey(
                        name: "FK_Sales_Dancers_DancerId",
                        column: x => x.DancerId,
                        principalTable: "Dancers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.SetNull);
                    table.ForeignKey(
                        name: "FK_Sales_Fittings_FittingId",
                        column: x => x.FittingId,
                        principalTable: "Fittings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "FittingChoices",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    FittingId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ChosenAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Tablet = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    SizeId = table.Column<Guid>(type: "TEXT", nullable: false),
                    PadsJson = table.Column<string>(type: "TEXT", nullable: true),
                    ExtrasJson = table.Column<string>(type: "TEXT", nullable: false),
                    OverruleReason = table.Column<string>(type: "TEXT", maxLength: 1000, nullable: false),
                    AdviceNote = table.Column<string>(type: "TEXT", maxLength: 1000, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_FittingChoices", x => x.Id);
                    table.ForeignKey(
                        name: "FK_FittingChoices_Fittings_FittingId",
                        column: x => x.FittingId,
                        principalTable: "Fittings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_FittingChoices_ShoeSizes_SizeId",
                        column: x => x.SizeId,
                        principalTable: "ShoeSizes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "FittingDecisions",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    FittingId = table.Column<Guid>(type: "TEXT", nullable: false),
                    DecidedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Tablet = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    Reason = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    Why = table.Column<string>(type: "TEXT", maxLength: 1000, nullable: false),
                    SizeId = table.Column<Guid>(type: "TEXT", nullable: true),
                    PadsJson = table.Column<string>(type: "TEXT", nullable: false),
                    AdviceNote = table.Column<string>(type: "TEXT", maxLength: 1000, nullable: false),
                    OverruleReason = table.Column<string>(type: "TEXT", maxLength: 1000, nullable: false),
                    WithdrawnAt = table.Column<DateTime>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_FittingDecisions", x => x.Id);
                    table.CheckConstraint("CK_FittingDecisions_Kind", "\"Kind\" IN ('sold', 'order', 'come-back', 'not-today')");
                    table.ForeignKey(
                        name: "FK_FittingDecisions_Fittings_FittingId",
                        column: x => x.FittingId,
                        principalTable: "Fittings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_FittingDecisions_ShoeSizes_SizeId",
                        column: x => x.SizeId,
                        principalTable: "ShoeSizes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "FittingTryOns",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    FittingId = table.Column<Guid>(type: "TEXT", nullable: false),
                    SizeId = table.Column<Guid>(type: "TEXT", nullable: false),
                    TriedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Tablet = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    Fits = table.Column<bool>(type: "INTEGER", nullable: true),
                    PadsJson = table.Column<string>(type: "TEXT", nullable: false),
                    Note = table.Column<string>(type: "TEXT", maxLength: 1000, nullable: false),
                    WithdrawnAt = table.Column<DateTime>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_FittingTryOns", x => x.Id);
                    table.ForeignKey(
                        name: "FK_FittingTryOns_Fittings_FittingId",
                        column: x => x.FittingId,
                        principalTable: "Fittings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_FittingTryOns_ShoeSizes_SizeId",
                        column: x => x.SizeId,
                        principalTable: "ShoeSizes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "LedgerLines",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ItemId = table.Column<Guid>(type: "TEXT", nullable: false),
                    PlaceId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Change = table.Column<int>(type: "INTEGER", nullable: false),
                    Reason = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    CommandId = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Tablet = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    SaleId = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_LedgerLines", x => x.Id);
                    table.CheckConstraint("CK_LedgerLines_Change", "\"Change\" <> 0");
                    table.ForeignKey(
                        name: "FK_LedgerLines_Items_ItemId",
                        column: x => x.ItemId,
                        principalTable: "Items",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LedgerLines_Sales_SaleId",
                        column: x => x.SaleId,
                        principalTable: "Sales",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_LedgerLines_ShelfPlaces_PlaceId",
                        column: x => x.PlaceId,
                        principalTable: "ShelfPlaces",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Papers",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    FittingId = table.Column<Guid>(type: "TEXT", nullable: true),
                    SaleId = table.Column<Guid>(type: "TEXT", nullable: true),
                    MadeAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    FormatVersion = table.Column<int>(type: "INTEGER", nullable: false),
                    FactsJson = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Papers", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Papers_Fittings_FittingId",
                        column: x => x.FittingId,
                        principalTable: "Fittings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Papers_Sales_SaleId",
                        column: x => x.SaleId,
                        principalTable: "Sales",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "SaleLines",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ShopId = table.Column<Guid>(type: "TEXT", nullable: false),
                    SaleId = table.Column<Guid>(type: "TEXT", nullable: false),
                    ItemId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Text = table.Column<string>(type: "TEXT", maxLength: 300, nullable: false),
                    Quantity = table.Column<int>(type: "INTEGER", nullable: false),
                    UnitPriceMinor = table.Column<long>(type: "INTEGER", nullable: false),
                    DiscountMinor = table.Column<long>(type: "INTEGER", nullable: false),
                    TaxRateBasisPoints = table.Column<int>(type: "INTEGER", nullable: false),
                    TaxMinor = table.Column<long>(type: "INTEGER", nullable: false),
                    TotalMinor = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SaleLines", x => x.Id);
                    table.CheckConstraint("CK_SaleLines_Amounts", "\"UnitPriceMinor\" >= 0 AND \"DiscountMinor\" >= 0 AND \"TaxMinor\" >= 0 AND \"TotalMinor\" >= 0");
                    table.CheckConstraint("CK_SaleLines_Quantity", "\"Quantity\" > 0");
                    table.ForeignKey(
                        name: "FK_SaleLines_Items_ItemId",
                        column: x => x.ItemId,
                        principalTable: "Items",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_SaleLines_Sales_SaleId",
                        column: x => x.SaleId,
                        principalTable: "Sales",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_ApiKeys_KeyHash",
                table: "ApiKeys",
                column: "KeyHash",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ApiKeys_ShopId_Name",
                table: "ApiKeys",
                columns: new[] { "ShopId", "Name" });

            migrationBuilder.CreateIndex(
                name: "IX_AspNetRoleClaims_RoleId",
                table: "AspNetRoleClaims",
                column: "RoleId");

            migrationBuilder.CreateIndex(
                name: "RoleNameIndex",
                table: "AspNetRoles",
                column: "NormalizedName",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_AspNetUserClaims_UserId",
                table: "AspNetUserClaims",
                column: "UserId");

            migrationBuilder.CreateIndex(
                name: "IX_AspNetUserLogins_UserId",
                table: "AspNetUserLogins",
                column: "UserId");

            migrationBuilder.CreateIndex(
                name: "IX_AspNetUserPasskeys_UserId",
                table: "AspNetUserPasskeys",
                column: "UserId");

            migrationBuilder.CreateIndex(
                name: "IX_AspNetUserRoles_RoleId",
                table: "AspNetUserRoles",
                column: "RoleId");

            migrationBuilder.CreateIndex(
                name: "EmailIndex",
                table: "AspNetUsers",
                column: "NormalizedEmail");

            migrationBuilder.CreateIndex(
                name: "IX_AspNetUsers_ShopId",
                table: "AspNetUsers",
                column: "ShopId");

            migrationBuilder.CreateIndex(
                name: "UserNameIndex",
                table: "AspNetUsers",
                column: "NormalizedUserName",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Commands_ShopId_DoneAt",
                table: "Commands",
                columns: new[] { "ShopId", "DoneAt" });

            migrationBuilder.CreateIndex(
                name: "IX_Consents_DancerId",
                table: "Consents",
                column: "DancerId");

            migrationBuilder.CreateIndex(
                name: "IX_Consents_ShopId_DancerId",
                table: "Consents",
                columns: new[] { "ShopId", "DancerId" });

            migrationBuilder.CreateIndex(
                name: "IX_Dancers_GuardianId",
                table: "Dancers",
                column: "GuardianId");

            migrationBuilder.CreateIndex(
                name: "IX_Dancers_ShopId_Name",
                table: "Dancers",
                columns: new[] { "ShopId", "Name" });

            migrationBuilder.CreateIndex(
                name: "IX_FittingChoices_FittingId",
                table: "FittingChoices",
                column: "FittingId");

            migrationBuilder.CreateIndex(
                name: "IX_FittingChoices_ShopId_FittingId_ChosenAt",
                table: "FittingChoices",
                columns: new[] { "ShopId", "FittingId", "ChosenAt" });

            migrationBuilder.CreateIndex(
                name: "IX_FittingChoices_SizeId",
                table: "FittingChoices",
                column: "SizeId");

            migrationBuilder.CreateIndex(
                name: "IX_FittingDecisions_FittingId",
                table: "FittingDecisions",
                column: "FittingId");

            migrationBuilder.CreateIndex(
                name: "IX_FittingDecisions_ShopId_FittingId_DecidedAt",
                table: "FittingDecisions",
                columns: new[] { "ShopId", "FittingId", "DecidedAt" });

            migrationBuilder.CreateIndex(
                name: "IX_FittingDecisions_SizeId",
                table: "FittingDecisions",
                column: "SizeId");

            migrationBuilder.CreateIndex(
                name: "IX_FittingReadings_FittingId",
                table: "FittingReadings",
                column: "FittingId");

            migrationBuilder.CreateIndex(
                name: "IX_FittingReadings_ShopId_FittingId_TakenAt",
                table: "FittingReadings",
                columns: new[] { "ShopId", "FittingId", "TakenAt" });

            migrationBuilder.CreateIndex(
                name: "IX_Fittings_DancerId",
                table: "Fittings",
                column: "DancerId");

            migrationBuilder.CreateIndex(
                name: "IX_Fittings_ShopId_ClosedAt",
                table: "Fittings",
                columns: new[] { "ShopId", "ClosedAt" });

            migrationBuilder.CreateIndex(
                name: "IX_Fittings_ShopId_DancerId_OpenedAt",
                table: "Fittings",
                columns: new[] { "ShopId", "DancerId", "OpenedAt" });

            migrationBuilder.CreateIndex(
                name: "IX_FittingSnapshots_FittingId",
                table: "FittingSnapshots",
                column: "FittingId");

            migrationBuilder.CreateIndex(
                name: "IX_FittingSnapshots_ShopId_FittingId",
                table: "FittingSnapshots",
                columns: new[] { "ShopId", "FittingId" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_FittingTryOns_FittingId",
                table: "FittingTryOns",
                column: "FittingId");

            migrationBuilder.CreateIndex(
                name: "IX_FittingTryOns_ShopId_FittingId_TriedAt",
                table: "FittingTryOns",
                columns: new[] { "ShopId", "FittingId", "TriedAt" });

            migrationBuilder.CreateIndex(
                name: "IX_FittingTryOns_SizeId",
                table: "FittingTryOns",
                column: "SizeId");

            migrationBuilder.CreateIndex(
                name: "IX_Guardians_ShopId",
                table: "Guardians",
                column: "ShopId");

            migrationBuilder.CreateIndex(
                name: "IX_Items_ShopId_Category",
                table: "Items",
                columns: new[] { "ShopId", "Category" });

            migrationBuilder.CreateIndex(
                name: "IX_Items_ShopId_Code",
                table: "Items",
                columns: new[] { "ShopId", "Code" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Items_ShopId_Gtin",
                table: "Items",
                columns: new[] { "ShopId", "Gtin" });

            migrationBuilder.CreateIndex(
                name: "IX_LedgerLines_ItemId",
                table: "LedgerLines",
                column: "ItemId");

            migrationBuilder.CreateIndex(
                name: "IX_LedgerLines_PlaceId",
                table: "LedgerLines",
                column: "PlaceId");

            migrationBuilder.CreateIndex(
                name: "IX_LedgerLines_SaleId",
                table: "LedgerLines",
                column: "SaleId");

            migrationBuilder.CreateIndex(
                name: "IX_LedgerLines_ShopId_CommandId",
                table: "LedgerLines",
                columns: new[] { "ShopId", "CommandId" });

            migrationBuilder.CreateIndex(
                name: "IX_LedgerLines_ShopId_ItemId_At",
                table: "LedgerLines",
                columns: new[] { "ShopId", "ItemId", "At" });

            migrationBuilder.CreateIndex(
                name: "IX_Makers_ShopId_Name",
                table: "Makers",
                columns: new[] { "ShopId", "Name" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Papers_FittingId",
                table: "Papers",
                column: "FittingId");

            migrationBuilder.CreateIndex(
                name: "IX_Papers_SaleId",
                table: "Papers",
                column: "SaleId");

            migrationBuilder.CreateIndex(
                name: "IX_Papers_ShopId_FittingId",
                table: "Papers",
                columns: new[] { "ShopId", "FittingId" });

            migrationBuilder.CreateIndex(
                name: "IX_Papers_ShopId_SaleId",
                table: "Papers",
                columns: new[] { "ShopId", "SaleId" });

            migrationBuilder.CreateIndex(
                name: "IX_SaleLines_ItemId",
                table: "SaleLines",
                column: "ItemId");

            migrationBuilder.CreateIndex(
                name: "IX_SaleLines_SaleId",
                table: "SaleLines",
                column: "SaleId");

            migrationBuilder.CreateIndex(
                name: "IX_SaleLines_ShopId_SaleId",
                table: "SaleLines",
                columns: new[] { "ShopId", "SaleId" });

            migrationBuilder.CreateIndex(
                name: "IX_Sales_DancerId",
                table: "Sales",
                column: "DancerId");

            migrationBuilder.CreateIndex(
                name: "IX_Sales_FittingId",
                table: "Sales",
                column: "FittingId");

            migrationBuilder.CreateIndex(
                name: "IX_Sales_ShopId_FittingId",
                table: "Sales",
                columns: new[] { "ShopId", "FittingId" },
                unique: true,
                filter: "\"VoidedAt\" IS NULL");

            migrationBuilder.CreateIndex(
                name: "IX_Sales_ShopId_SoldAt",
                table: "Sales",
                columns: new[] { "ShopId", "SoldAt" });

            migrationBuilder.CreateIndex(
                name: "IX_ShelfPlaces_ShopId_Code",
                table: "ShelfPlaces",
                columns: new[] { "ShopId", "Code" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ShoeModels_MakerId",
                table: "ShoeModels",
                column: "MakerId");

            migrationBuilder.CreateIndex(
                name: "IX_ShoeModels_ShopId_MakerId_Name",
                table: "ShoeModels",
                columns: new[] { "ShopId", "MakerId", "Name" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_ShoeSizes_ModelId",
                table: "ShoeSizes",
                column: "ModelId");

            migrationBuilder.CreateIndex(
                name: "IX_ShoeSizes_ShopId_ModelId",
                table: "ShoeSizes",
                columns: new[] { "ShopId", "ModelId" });

            migrationBuilder.CreateIndex(
                name: "IX_StockLevels_ItemId",
                table: "StockLevels",
                column: "ItemId");

            migrationBuilder.CreateIndex(
                name: "IX_StockLevels_PlaceId",
                table: "StockLevels",
                column: "PlaceId");

            migrationBuilder.CreateIndex(
                name: "IX_StockLevels_ShopId_ItemId_PlaceId",
                table: "StockLevels",
                columns: new[] { "ShopId", "ItemId", "PlaceId" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_TaxRates_ShopId_Category",
                table: "TaxRates",
                columns: new[] { "ShopId", "Category" },
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "ApiKeys");

            migrationBuilder.DropTable(
                name: "AspNetRoleClaims");

            migrationBuilder.DropTable(
                name: "AspNetUserClaims");

            migrationBuilder.DropTable(
                name: "AspNetUserLogins");

            migrationBuilder.DropTable(
                name: "AspNetUserPasskeys");

            migrationBuilder.DropTable(
                name: "AspNetUserRoles");

            migrationBuilder.DropTable(
                name: "AspNetUserTokens");

            migrationBuilder.DropTable(
                name: "Commands");

            migrationBuilder.DropTable(
                name: "Consents");

            migrationBuilder.DropTable(
                name: "DataProtectionKeys");

            migrationBuilder.DropTable(
                name: "FittingChoices");

            migrationBuilder.DropTable(
                name: "FittingDecisions");

            migrationBuilder.DropTable(
                name: "FittingReadings");

            migrationBuilder.DropTable(
                name: "FittingSnapshots");

            migrationBuilder.DropTable(
                name: "FittingTryOns");

            migrationBuilder.DropTable(
                name: "LedgerLines");

            migrationBuilder.DropTable(
                name: "Papers");

            migrationBuilder.DropTable(
                name: "SaleLines");

            migrationBuilder.DropTable(
                name: "StockLevels");

            migrationBuilder.DropTable(
                name: "TaxRates");

            migrationBuilder.DropTable(
                name: "AspNetRoles");

            migrationBuilder.DropTable(
                name: "AspNetUsers");

            migrationBuilder.DropTable(
                name: "ShoeSizes");

            migrationBuilder.DropTable(
                name: "Sales");

            migrationBuilder.DropTable(
                name: "ShelfPlaces");

            migrationBuilder.DropTable(
                name: "Shops");

            migrationBuilder.DropTable(
                name: "Items");

            migrationBuilder.DropTable(
                name: "ShoeModels");

            migrationBuilder.DropTable(
                name: "Fittings");

            migrationBuilder.DropTable(
                name: "Makers");

            migrationBuilder.DropTable(
                name: "Dancers");

            migrationBuilder.DropTable(
                name: "Guardians");
        }
    }
}
