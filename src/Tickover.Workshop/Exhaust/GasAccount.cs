using Tickover.Physics;
using Tickover.Physics.Exhaust;
using Tickover.Physics.Fuels;

namespace Tickover.Workshop.Exhaust;

/// <summary>What a gas reading says: λ with its band, the cross-checks, and what is wrong with the sample.</summary>
/// <remarks>Numbers are in the units of <see cref="GasReading"/>. The faults come first: while one spoils the reading, λ is no reason to change a jet.</remarks>
public sealed record GasAccount
{
    private const double Percent = 100;

    /// <summary>The reading.</summary>
    public required GasReading Reading { get; init; }

    /// <summary>Name of the fuel in the tank, such as "E5".</summary>
    public required string FuelName { get; init; }

    /// <summary>Which fuel's constants <see cref="Lambda"/> was made with.</summary>
    public required FuelConstants Constants { get; init; }

    /// <summary>λ by the formula with the chosen constants.</summary>
    public required double Lambda { get; init; }

    /// <summary>Half the band of <see cref="Lambda"/> from an analyser's permitted errors, 1.</summary>
    public required double LambdaBand { get; init; }

    /// <summary>Whether λ lies where the formula is stated.</summary>
    public required Validity Validity { get; init; }

    /// <summary>λ with the constants of the regulation.</summary>
    public required double LambdaOfRegulation { get; init; }

    /// <summary>λ with the constants of the fuel in the tank.</summary>
    public required double LambdaOfFuel { get; init; }

    /// <summary>Air to fuel by mass: λ times what the fuel in the tank needs.</summary>
    public required double AirFuelRatio { get; init; }

    /// <summary>Spindt's air to fuel by mass, by his own atoms and air.</summary>
    public required double SpindtRatio { get; init; }

    /// <summary>Spindt's ratio as λ.</summary>
    public required double SpindtLambda { get; init; }

    /// <summary>CO an undiluted sample of this λ has, per cent; zero from λ 1 on, where a real engine leaves 0.1 to 0.5. Null where λ is out of the model.</summary>
    public required double? ExpectedMonoxidePercent { get; init; }

    /// <summary>CO + CO₂ an undiluted sample of this [CO]/[CO₂] has, per cent.</summary>
    public required double ExpectedCarbonSumPercent { get; init; }

    /// <summary>CO carried back to a sample with 15 % of CO + CO₂, per cent.</summary>
    public required double CorrectedMonoxidePercent { get; init; }

    /// <summary>All gases together, with the nitrogen and hydrogen that belong to them, per cent; 100 where they add up.</summary>
    public required double DryTotalPercent { get; init; }

    /// <summary>λ before air got in, from CO against CO₂; null where there is too little CO to say.</summary>
    public required double? UndilutedLambda { get; init; }

    /// <summary>Air in the sample from behind the engine, per cent; null likewise.</summary>
    public required double? AirPercent { get; init; }

    /// <summary>What is wrong, worst first.</summary>
    public required IReadOnlyList<GasFault> Faults { get; init; }

    /// <summary>What the reading is worth.</summary>
    public GasStanding Standing => Faults.Count == 0 ? GasStanding.Good : Faults.Max(fault => fault.Leaves);

    /// <summary>Judges a reading.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="grade">Fuel in the tank.</param>
    /// <param name="constants">Whose constants the formula takes.</param>
    /// <returns>The account.</returns>
    public static GasAccount Of(GasReading reading, FuelGrade grade, FuelConstants constants = FuelConstants.Regulation)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(grade);
        var sample = reading.ToExhaustSample();
        var fuel = ExhaustFuel.Of(grade.Blend);
        var chosen = constants == FuelConstants.Fuel ? fuel : ExhaustFuel.Regulation;
        var lambda = LambdaFormula.Of(sample, chosen);
        var balance = ExhaustBalance.Of(sample, fuel);
        var spindt = Physics.Exhaust.SpindtRatio.Of(sample, fuel);
        var toldByMonoxide = GasThresholds.MonoxideTells(reading);
        var account = new GasAccount
        {
            Reading = reading,
            FuelName = grade.Name,
            Constants = constants,
            Lambda = lambda.Value,
            LambdaBand = AnalyserErrors.LambdaBand(sample, chosen),
            Validity = lambda.Validity,
            LambdaOfRegulation = LambdaFormula.Of(sample, ExhaustFuel.Regulation).Value,
            LambdaOfFuel = LambdaFormula.Of(sample, fuel).Value,
            AirFuelRatio = lambda.Value * fuel.StoichiometricRatio,
            SpindtRatio = spindt,
            SpindtLambda = spindt / Physics.Exhaust.SpindtRatio.Stoichiometric(fuel),
            ExpectedMonoxidePercent = lambda.Validity.Kind == ValidityKind.Outside ? null : WaterGasEquilibrium.At(lambda.Value, fuel).CarbonMonoxide * Percent,
            ExpectedCarbonSumPercent = balance.UndilutedCarbon * Percent,
            CorrectedMonoxidePercent = sample.CorrectedMonoxide() * Percent,
            DryTotalPercent = balance.DryTotal * Percent,
            UndilutedLambda = toldByMonoxide ? balance.RichLambda : null,
            AirPercent = toldByMonoxide ? balance.AirShare * Percent : null,
            Faults = [],
        };
        return account with { Faults = GasFaults.Of(account) };
    }
}
