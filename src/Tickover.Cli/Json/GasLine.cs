using System.Globalization;
using Tickover.Physics;
using Tickover.Workshop.Exhaust;

namespace Tickover.Cli.Json;

/// <summary>One gas reading judged, as JSON and as a line of a table.</summary>
internal sealed record GasLine
{
    private const int Digits = 5; // λ beyond the fifth is the analyser's noise a thousand times over

    /// <summary>Line of the file, from 1; null for a reading from the command line.</summary>
    public required int? Line { get; init; }

    /// <summary>Fuel in the tank.</summary>
    public required string Fuel { get; init; }

    /// <summary>Whose constants λ was made with.</summary>
    public required FuelConstants Constants { get; init; }

    /// <summary>CO, per cent.</summary>
    public required double Co { get; init; }

    /// <summary>HC as hexane, ppm.</summary>
    public required double Hc { get; init; }

    /// <summary>CO₂, per cent.</summary>
    public required double Co2 { get; init; }

    /// <summary>O₂, per cent.</summary>
    public required double O2 { get; init; }

    /// <summary>λ the instrument shows.</summary>
    public required double? LambdaShown { get; init; }

    /// <summary>Speed, rpm.</summary>
    public required double? Rpm { get; init; }

    /// <summary>Oil temperature, °C.</summary>
    public required double? Oil { get; init; }

    /// <summary>λ by the formula.</summary>
    public required double Lambda { get; init; }

    /// <summary>Half its band.</summary>
    public required double LambdaBand { get; init; }

    /// <summary>λ with the regulation's constants.</summary>
    public required double LambdaOfRegulation { get; init; }

    /// <summary>λ with the fuel's constants.</summary>
    public required double LambdaOfFuel { get; init; }

    /// <summary>Air to fuel by mass.</summary>
    public required double AirFuelRatio { get; init; }

    /// <summary>Spindt's air to fuel by mass.</summary>
    public required double SpindtRatio { get; init; }

    /// <summary>The same as λ.</summary>
    public required double SpindtLambda { get; init; }

    /// <summary>CO expected at this λ, per cent.</summary>
    public required double? ExpectedCo { get; init; }

    /// <summary>CO + CO₂, per cent.</summary>
    public required double CarbonSum { get; init; }

    /// <summary>CO + CO₂ expected of an undiluted sample, per cent.</summary>
    public required double ExpectedCarbonSum { get; init; }

    /// <summary>CO at 15 % of CO + CO₂, per cent.</summary>
    public required double CorrectedCo { get; init; }

    /// <summary>All dry gases together, per cent.</summary>
    public required double DryTotal { get; init; }

    /// <summary>λ before air got in.</summary>
    public required double? UndilutedLambda { get; init; }

    /// <summary>Air in the sample, per cent.</summary>
    public required double? Air { get; init; }

    /// <summary>Whether λ lies where the formula is stated.</summary>
    public required ValidityKind Validity { get; init; }

    /// <summary>What the reading is worth.</summary>
    public required GasStanding Standing { get; init; }

    /// <summary>What is wrong.</summary>
    public required IReadOnlyList<GasFaultLine> Faults { get; init; }

    /// <summary>The line of an account.</summary>
    /// <param name="account">The account.</param>
    /// <param name="line">Line of the file; null where there is none.</param>
    /// <returns>The line.</returns>
    public static GasLine Of(GasAccount account, int? line) => new()
    {
        Line = line,
        Fuel = account.FuelName,
        Constants = account.Constants,
        Co = account.Reading.CarbonMonoxidePercent,
        Hc = account.Reading.HydrocarbonsPpm,
        Co2 = account.Reading.CarbonDioxidePercent,
        O2 = account.Reading.OxygenPercent,
        LambdaShown = account.Reading.LambdaShown,
        Rpm = account.Reading.SpeedRpm,
        Oil = account.Reading.OilCelsius,
        Lambda = Rounded(account.Lambda),
        LambdaBand = Rounded(account.LambdaBand),
        LambdaOfRegulation = Rounded(account.LambdaOfRegulation),
        LambdaOfFuel = Rounded(account.LambdaOfFuel),
        AirFuelRatio = Rounded(account.AirFuelRatio),
        SpindtRatio = Rounded(account.SpindtRatio),
        SpindtLambda = Rounded(account.SpindtLambda),
        ExpectedCo = Rounded(account.ExpectedMonoxidePercent),
        CarbonSum = Rounded(account.Reading.CarbonSumPercent),
        ExpectedCarbonSum = Rounded(account.ExpectedCarbonSumPercent),
        CorrectedCo = Rounded(account.CorrectedMonoxidePercent),
        DryTotal = Rounded(account.DryTotalPercent),
        UndilutedLambda = Rounded(account.UndilutedLambda),
        Air = Rounded(account.AirPercent),
        Validity = account.Validity.Kind,
        Standing = account.Standing,
        Faults = [.. account.Faults.Select(fault => new GasFaultLine(fault.Kind, fault.Words, fault.WhatToDo))],
    };

    /// <summary>Columns of a table: the names are those of the JSON.</summary>
    /// <returns>Names and values as text, invariant.</returns>
    public IEnumerable<(string Name, string Value)> Cells()
    {
        (string, object?)[] cells =
        [
            ("line", Line), ("fuel", Fuel), ("constants", Constants), ("co", Co), ("hc", Hc), ("co2", Co2), ("o2", O2), ("lambdaShown", LambdaShown), ("rpm", Rpm), ("oil", Oil),
            ("lambda", Lambda), ("lambdaBand", LambdaBand), ("lambdaOfRegulation", LambdaOfRegulation), ("lambdaOfFuel", LambdaOfFuel),
            ("airFuelRatio", AirFuelRatio), ("spindtRatio", SpindtRatio), ("spindtLambda", SpindtLambda), ("expectedCo", ExpectedCo),
            ("carbonSum", CarbonSum), ("expectedCarbonSum", ExpectedCarbonSum), ("correctedCo", CorrectedCo), ("dryTotal", DryTotal),
            ("undilutedLambda", UndilutedLambda), ("air", Air), ("validity", Validity), ("standing", Standing),
            ("faults", string.Join(' ', Faults.Select(fault => fault.Kind))),
        ];
        return cells.Select(cell => (cell.Item1, Convert.ToString(cell.Item2, CultureInfo.InvariantCulture) ?? ""));
    }

    private static double Rounded(double value) => Math.Round(value, Digits);

    private static double? Rounded(double? value) => value is { } given ? Rounded(given) : null;
}
