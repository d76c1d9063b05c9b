using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Tickover.Records.Migrations.Sqlite
{
    /// <inheritdoc />
    public partial class First : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "Acts",
                columns: table => new
                {
                    Number = table.Column<long>(type: "INTEGER", nullable: false),
                    Key = table.Column<Guid>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    Words = table.Column<string>(type: "TEXT", nullable: false),
                    At = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    Person = table.Column<Guid>(type: "TEXT", nullable: true),
                    Device = table.Column<string>(type: "TEXT", nullable: false),
                    Visit = table.Column<Guid>(type: "TEXT", nullable: true),
                    Undoes = table.Column<long>(type: "INTEGER", nullable: true),
                    UndoneBy = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Acts", x => x.Number);
                });

            migrationBuilder.CreateTable(
                name: "House",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Address = table.Column<string>(type: "TEXT", nullable: false),
                    Telephone = table.Column<string>(type: "TEXT", nullable: false),
                    Country = table.Column<string>(type: "TEXT", nullable: false),
                    OwnAuthorities = table.Column<string>(type: "TEXT", nullable: false),
                    Units = table.Column<string>(type: "TEXT", nullable: false),
                    Words = table.Column<string>(type: "TEXT", nullable: false),
                    Paper = table.Column<string>(type: "TEXT", nullable: false),
                    Currency = table.Column<string>(type: "TEXT", nullable: false),
                    Guarantee = table.Column<string>(type: "TEXT", nullable: false),
                    Privacy = table.Column<string>(type: "TEXT", nullable: false),
                    Demonstration = table.Column<bool>(type: "INTEGER", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_House", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Instrument",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    SerialNumber = table.Column<string>(type: "TEXT", nullable: false),
                    GoodTo = table.Column<string>(type: "TEXT", nullable: false),
                    CalibratedOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    DueOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    Note = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Instrument", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Owner",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Telephone = table.Column<string>(type: "TEXT", nullable: false),
                    Email = table.Column<string>(type: "TEXT", nullable: false),
                    Address = table.Column<string>(type: "TEXT", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Owner", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Person",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Initials = table.Column<string>(type: "TEXT", nullable: false),
                    Role = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Person", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Pictures",
                columns: table => new
                {
                    Photograph = table.Column<Guid>(type: "TEXT", nullable: false),
                    Hash = table.Column<string>(type: "TEXT", nullable: false),
                    Width = table.Column<int>(type: "INTEGER", nullable: false),
                    Height = table.Column<int>(type: "INTEGER", nullable: false),
                    Whole = table.Column<byte[]>(type: "BLOB", nullable: false),
                    Small = table.Column<byte[]>(type: "BLOB", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Pictures", x => x.Photograph);
                });

            migrationBuilder.CreateTable(
                name: "Pins",
                columns: table => new
                {
                    Person = table.Column<Guid>(type: "TEXT", nullable: false),
                    Salt = table.Column<byte[]>(type: "BLOB", nullable: false),
                    Hash = table.Column<byte[]>(type: "BLOB", nullable: false),
                    Iterations = table.Column<int>(type: "INTEGER", nullable: false),
                    WrongTries = table.Column<int>(type: "INTEGER", nullable: false),
                    ShutUntil = table.Column<DateTimeOffset>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Pins", x => x.Person);
                });

            migrationBuilder.CreateTable(
                name: "Search",
                columns: table => new
                {
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    Key = table.Column<Guid>(type: "TEXT", nullable: false),
                    Car = table.Column<Guid>(type: "TEXT", nullable: true),
                    Visit = table.Column<Guid>(type: "TEXT", nullable: true),
                    Text = table.Column<string>(type: "TEXT", nullable: false),
                    Folded = table.Column<string>(type: "TEXT", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Search", x => new { x.Kind, x.Key });
                });

            migrationBuilder.CreateTable(
                name: "Stamps",
                columns: table => new
                {
                    Record = table.Column<Guid>(type: "TEXT", nullable: false),
                    BegunAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Stamps", x => x.Record);
                });

            migrationBuilder.CreateTable(
                name: "Changes",
                columns: table => new
                {
                    Act = table.Column<long>(type: "INTEGER", nullable: false),
                    Ordinal = table.Column<int>(type: "INTEGER", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    Item = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Before = table.Column<string>(type: "TEXT", nullable: true),
                    After = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Changes", x => new { x.Act, x.Ordinal });
                    table.ForeignKey(
                        name: "FK_Changes_Acts_Act",
                        column: x => x.Act,
                        principalTable: "Acts",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "CustomerCar",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Slug = table.Column<string>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Registration = table.Column<string>(type: "TEXT", nullable: false),
                    ChassisNumber = table.Column<string>(type: "TEXT", nullable: false),
                    Year = table.Column<int>(type: "INTEGER", nullable: true),
                    Owner = table.Column<Guid>(type: "TEXT", nullable: true),
                    OdometerUnit = table.Column<string>(type: "TEXT", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CustomerCar", x => x.Id);
                    table.ForeignKey(
                        name: "FK_CustomerCar_Owner_Owner",
                        column: x => x.Owner,
                        principalTable: "Owner",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "CarDescription",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Car = table.Column<Guid>(type: "TEXT", nullable: false),
                    Since = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Document = table.Column<string>(type: "TEXT", nullable: false),
                    Reason = table.Column<string>(type: "TEXT", nullable: false),
                    Visit = table.Column<Guid>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CarDescription", x => x.Id);
                    table.ForeignKey(
                        name: "FK_CarDescription_CustomerCar_Car",
                        column: x => x.Car,
                        principalTable: "CustomerCar",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Component",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Car = table.Column<Guid>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    Place = table.Column<string>(type: "TEXT", nullable: false),
                    What = table.Column<string>(type: "TEXT", nullable: false),
                    SerialNumber = table.Column<string>(type: "TEXT", nullable: false),
                    FittedOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    TakenOffOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    Note = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Component", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Component_CustomerCar_Car",
                        column: x => x.Car,
                        principalTable: "CustomerCar",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Visit",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Car = table.Column<Guid>(type: "TEXT", nullable: false),
                    Owner = table.Column<Guid>(type: "TEXT", nullable: true),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    ArrivedOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    DueOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    LeftOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    Complaint = table.Column<string>(type: "TEXT", nullable: false),
                    Summary = table.Column<string>(type: "TEXT", nullable: false),
                    Wishes = table.Column<string>(type: "TEXT", nullable: false),
                    Story = table.Column<string>(type: "TEXT", nullable: false),
                    Fuel = table.Column<string>(type: "TEXT", nullable: false),
                    Scope = table.Column<string>(type: "TEXT", nullable: false),
                    EstimateHours = table.Column<decimal>(type: "TEXT", nullable: true),
                    Estimate = table.Column<decimal>(type: "TEXT", nullable: true),
                    StopAndAsk = table.Column<decimal>(type: "TEXT", nullable: true),
                    ScopeAgreed = table.Column<string>(type: "TEXT", nullable: false),
                    OdometerIn = table.Column<int>(type: "INTEGER", nullable: true),
                    OdometerOut = table.Column<int>(type: "INTEGER", nullable: true),
                    WaitsOn = table.Column<string>(type: "TEXT", nullable: false),
                    WaitingFor = table.Column<string>(type: "TEXT", nullable: false),
                    WaitingSince = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    WaitingUntil = table.Column<DateTimeOffset>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Visit", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Visit_CustomerCar_Car",
                        column: x => x.Car,
                        principalTable: "CustomerCar",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Visit_Owner_Owner",
                        column: x => x.Owner,
                        principalTable: "Owner",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Approval",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Visit = table.Column<Guid>(type: "TEXT", nullable: false),
                    Finding = table.Column<Guid>(type: "TEXT", nullable: true),
                    Asked = table.Column<string>(type: "TEXT", nullable: false),
                    Price = table.Column<decimal>(type: "TEXT", nullable: true),
                    AskedOn = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Answer = table.Column<string>(type: "TEXT", nullable: false),
                    AnswerWords = table.Column<string>(type: "TEXT", nullable: false),
                    AnsweredOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Approval", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Approval_Visit_Visit",
                        column: x => x.Visit,
                        principalTable: "Visit",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "CautionSeen",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Visit = table.Column<Guid>(type: "TEXT", nullable: false),
                    Caution = table.Column<string>(type: "TEXT", nullable: false),
                    Person = table.Column<Guid>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CautionSeen", x => x.Id);
                    table.ForeignKey(
                        name: "FK_CautionSeen_Visit_Visit",
                        column: x => x.Visit,
                        principalTable: "Visit",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Finding",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Visit = table.Column<Guid>(type: "TEXT", nullable: false),
                    Stage = table.Column<string>(type: "TEXT", nullable: false),
                    Where = table.Column<string>(type: "TEXT", nullable: false),
                    What = table.Column<string>(type: "TEXT", nullable: false),
                    Detail = table.Column<string>(type: "TEXT", nullable: false),
                    Severity = table.Column<string>(type: "TEXT", nullable: false),
                    State = table.Column<string>(type: "TEXT", nullable: false),
                    Decision = table.Column<string>(type: "TEXT", nullable: false),
                    ApprovedBy = table.Column<string>(type: "TEXT", nullable: false),
                    SettledOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Finding", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Finding_Visit_Visit",
                        column: x => x.Visit,
                        principalTable: "Visit",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "PartLine",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Visit = table.Column<Guid>(type: "TEXT", nullable: false),
                    Stage = table.Column<string>(type: "TEXT", nullable: false),
                    What = table.Column<string>(type: "TEXT", nullable: false),
                    Reference = table.Column<string>(type: "TEXT", nullable: false),
                    Quantity = table.Column<string>(type: "TEXT", nullable: false),
                    State = table.Column<string>(type: "TEXT", nullable: false),
                    OrderedOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    PromisedFor = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    FittedOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    Price = table.Column<decimal>(type: "TEXT", nullable: true),
                    OldPart = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PartLine", x => x.Id);
                    table.ForeignKey(
                        name: "FK_PartLine_Visit_Visit",
                        column: x => x.Visit,
                        principalTable: "Visit",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Reading",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Visit = table.Column<Guid>(type: "TEXT", nullable: false),
                    Stage = table.Column<string>(type: "TEXT", nullable: false),
                    Measure = table.Column<string>(type: "TEXT", nullable: false),
                    Place = table.Column<string>(type: "TEXT", nullable: false),
                    Moment = table.Column<string>(type: "TEXT", nullable: false),
                    Typed = table.Column<string>(type: "TEXT", nullable: false),
                    Si = table.Column<double>(type: "REAL", nullable: true),
                    NoReading = table.Column<string>(type: "TEXT", nullable: false),
                    Instrument = table.Column<Guid>(type: "TEXT", nullable: true),
                    EngineSpeedRpm = table.Column<double>(type: "REAL", nullable: true),
                    Round = table.Column<Guid>(type: "TEXT", nullable: true),
                    Corrects = table.Column<Guid>(type: "TEXT", nullable: true),
                    TakenAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Reading", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Reading_Instrument_Instrument",
                        column: x => x.Instrument,
                        principalTable: "Instrument",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Reading_Visit_Visit",
                        column: x => x.Visit,
                        principalTable: "Visit",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Signature",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Visit = table.Column<Guid>(type: "TEXT", nullable: false),
                    Person = table.Column<Guid>(type: "TEXT", nullable: false),
                    On = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    For = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Signature", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Signature_Person_Person",
                        column: x => x.Person,
                        principalTable: "Person",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Signature_Visit_Visit",
                        column: x => x.Visit,
                        principalTable: "Visit",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "SignOff",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Visit = table.Column<Guid>(type: "TEXT", nullable: false),
                    Gate = table.Column<string>(type: "TEXT", nullable: false),
                    Check = table.Column<string>(type: "TEXT", nullable: false),
                    Person = table.Column<Guid>(type: "TEXT", nullable: false),
                    Seen = table.Column<string>(type: "TEXT", nullable: false),
                    Override = table.Column<string>(type: "TEXT", nullable: false),
                    On = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_SignOff", x => x.Id);
                    table.ForeignKey(
                        name: "FK_SignOff_Person_Person",
                        column: x => x.Person,
                        principalTable: "Person",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_SignOff_Visit_Visit",
                        column: x => x.Visit,
                        principalTable: "Visit",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "StageMark",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Visit = table.Column<Guid>(type: "TEXT", nullable: false),
                    Stage = table.Column<string>(type: "TEXT", nullable: false),
                    State = table.Column<string>(type: "TEXT", nullable: false),
                    BegunOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    EndedOn = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    Note = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_StageMark", x => x.Id);
                    table.ForeignKey(
                        name: "FK_StageMark_Visit_Visit",
                        column: x => x.Visit,
                        principalTable: "Visit",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "TimeLine",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Visit = table.Column<Guid>(type: "TEXT", nullable: false),
                    Stage = table.Column<string>(type: "TEXT", nullable: false),
                    Person = table.Column<Guid>(type: "TEXT", nullable: true),
                    On = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Minutes = table.Column<int>(type: "INTEGER", nullable: false),
                    What = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_TimeLine", x => x.Id);
                    table.ForeignKey(
                        name: "FK_TimeLine_Visit_Visit",
                        column: x => x.Visit,
                        principalTable: "Visit",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "WorkNote",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Visit = table.Column<Guid>(type: "TEXT", nullable: false),
                    Stage = table.Column<string>(type: "TEXT", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", nullable: false),
                    What = table.Column<string>(type: "TEXT", nullable: false),
                    Why = table.Column<string>(type: "TEXT", nullable: false),
                    Further = table.Column<string>(type: "TEXT", nullable: false),
                    On = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_WorkNote", x => x.Id);
                    table.ForeignKey(
                        name: "FK_WorkNote_Visit_Visit",
                        column: x => x.Visit,
                        principalTable: "Visit",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Photograph",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Visit = table.Column<Guid>(type: "TEXT", nullable: false),
                    Stage = table.Column<string>(type: "TEXT", nullable: false),
                    Finding = table.Column<Guid>(type: "TEXT", nullable: true),
                    Caption = table.Column<string>(type: "TEXT", nullable: false),
                    Marks = table.Column<string>(type: "TEXT", nullable: false),
                    Hash = table.Column<string>(type: "TEXT", nullable: false),
                    Width = table.Column<int>(type: "INTEGER", nullable: false),
                    Height = table.Column<int>(type: "INTEGER", nullable: false),
                    InHandOver = table.Column<bool>(type: "INTEGER", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Removed = table.Column<bool>(type: "INTEGER", nullable: false),
                    Kept = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false),
                    KeptAt = table.Column<DateTimeOffset>(type: "TEXT", nullable: false),
                    KeptBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Photograph", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Photograph_Finding_Finding",
                        column: x => x.Finding,
                        principalTable: "Finding",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Photograph_Visit_Visit",
                        column: x => x.Visit,
                        principalTable: "Visit",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Acts_Key",
                table: "Acts",
                column: "Key",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Acts_Visit_Number",
                table: "Acts",
                columns: new[] { "Visit", "Number" });

            migrationBuilder.CreateIndex(
                name: "IX_Approval_Kept",
                table: "Approval",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_Approval_Visit",
                table: "Approval",
                column: "Visit");

            migrationBuilder.CreateIndex(
                name: "IX_CarDescription_Car",
                table: "CarDescription",
                column: "Car");

            migrationBuilder.CreateIndex(
                name: "IX_CarDescription_Kept",
                table: "CarDescription",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_CautionSeen_Kept",
                table: "CautionSeen",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_CautionSeen_Visit",
                table: "CautionSeen",
                column: "Visit");

            migrationBuilder.CreateIndex(
                name: "IX_Changes_Item_Version",
                table: "Changes",
                columns: new[] { "Item", "Version" });

            migrationBuilder.CreateIndex(
                name: "IX_Component_Car",
                table: "Component",
                column: "Car");

            migrationBuilder.CreateIndex(
                name: "IX_Component_Kept",
                table: "Component",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_CustomerCar_Kept",
                table: "CustomerCar",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_CustomerCar_Owner",
                table: "CustomerCar",
                column: "Owner");

            migrationBuilder.CreateIndex(
                name: "IX_CustomerCar_Slug",
                table: "CustomerCar",
                column: "Slug",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Finding_Kept",
                table: "Finding",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_Finding_Visit",
                table: "Finding",
                column: "Visit");

            migrationBuilder.CreateIndex(
                name: "IX_House_Kept",
                table: "House",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_Instrument_Kept",
                table: "Instrument",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_Owner_Kept",
                table: "Owner",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_PartLine_Kept",
                table: "PartLine",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_PartLine_Visit",
                table: "PartLine",
                column: "Visit");

            migrationBuilder.CreateIndex(
                name: "IX_Person_Kept",
                table: "Person",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_Photograph_Finding",
                table: "Photograph",
                column: "Finding");

            migrationBuilder.CreateIndex(
                name: "IX_Photograph_Kept",
                table: "Photograph",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_Photograph_Visit",
                table: "Photograph",
                column: "Visit");

            migrationBuilder.CreateIndex(
                name: "IX_Reading_Instrument",
                table: "Reading",
                column: "Instrument");

            migrationBuilder.CreateIndex(
                name: "IX_Reading_Kept",
                table: "Reading",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_Reading_Visit",
                table: "Reading",
                column: "Visit");

            migrationBuilder.CreateIndex(
                name: "IX_Signature_Kept",
                table: "Signature",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_Signature_Person",
                table: "Signature",
                column: "Person");

            migrationBuilder.CreateIndex(
                name: "IX_Signature_Visit",
                table: "Signature",
                column: "Visit");

            migrationBuilder.CreateIndex(
                name: "IX_SignOff_Kept",
                table: "SignOff",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_SignOff_Person",
                table: "SignOff",
                column: "Person");

            migrationBuilder.CreateIndex(
                name: "IX_SignOff_Visit",
                table: "SignOff",
                column: "Visit");

            migrationBuilder.CreateIndex(
                name: "IX_StageMark_Kept",
                table: "StageMark",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_StageMark_Visit",
                table: "StageMark",
                column: "Visit");

            migrationBuilder.CreateIndex(
                name: "IX_TimeLine_Kept",
                table: "TimeLine",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_TimeLine_Visit",
                table: "TimeLine",
                column: "Visit");

            migrationBuilder.CreateIndex(
                name: "IX_Visit_Car",
                table: "Visit",
                column: "Car");

            migrationBuilder.CreateIndex(
                name: "IX_Visit_Kept",
                table: "Visit",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_Visit_Owner",
                table: "Visit",
                column: "Owner");

            migrationBuilder.CreateIndex(
                name: "IX_WorkNote_Kept",
                table: "WorkNote",
                column: "Kept");

            migrationBuilder.CreateIndex(
                name: "IX_WorkNote_Visit",
                table: "WorkNote",
                column: "Visit");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "Approval");

            migrationBuilder.DropTable(
                name: "CarDescription");

            migrationBuilder.DropTable(
                name: "CautionSeen");

            migrationBuilder.DropTable(
                name: "Changes");

            migrationBuilder.DropTable(
                name: "Component");

            migrationBuilder.DropTable(
                name: "House");

            migrationBuilder.DropTable(
                name: "PartLine");

            migrationBuilder.DropTable(
                name: "Photograph");

            migrationBuilder.DropTable(
                name: "Pictures");

            migrationBuilder.DropTable(
                name: "Pins");

            migrationBuilder.DropTable(
                name: "Reading");

            migrationBuilder.DropTable(
                name: "Search");

            migrationBuilder.DropTable(
                name: "Signature");

            migrationBuilder.DropTable(
                name: "SignOff");

            migrationBuilder.DropTable(
                name: "StageMark");

            migrationBuilder.DropTable(
                name: "Stamps");

            migrationBuilder.DropTable(
                name: "TimeLine");

            migrationBuilder.DropTable(
                name: "WorkNote");

            migrationBuilder.DropTable(
                name: "Acts");

            migrationBuilder.DropTable(
                name: "Finding");

            migrationBuilder.DropTable(
                name: "Instrument");

            migrationBuilder.DropTable(
                name: "Person");

            migrationBuilder.DropTable(
                name: "Visit");

            migrationBuilder.DropTable(
                name: "CustomerCar");

            migrationBuilder.DropTable(
                name: "Owner");
        }
    }
}
