using Tickover.Physics.Supply;
using Tickover.Workshop.Mixture;
using static Tickover.Workshop.Supply.SupplyWords;

namespace Tickover.Workshop.Supply.Finding;

/// <summary>Whether the fuel boils: before the pump, behind it, in the float chambers; and how readily this fuel does.</summary>
internal static class VapourFindings
{
    private const double Gravity = Physics.Air.AirConstants.StandardGravityMetresPerSecondSquared;

    public static IEnumerable<SupplyFinding> Of(SupplyAnalysis analysis)
    {
        if (analysis.Supply.Line.Pump is not null)
        {
            yield return Suction(analysis);
        }

        yield return Behind(analysis);
        yield return Chamber(analysis);
        if (analysis.Supply.Fuel.EvaporatedAt70Fraction is { } evaporated)
        {
            yield return Index(analysis.Supply, evaporated);
        }
    }

    private static SupplyFinding Suction(SupplyAnalysis analysis)
    {
        var (one, part) = analysis.Cases.Where(c => c.Point.WorstSuction is not null).Select(c => (Case: c, Part: c.Point.WorstSuction!)).MinBy(pair => Head(pair.Part));
        var needed = analysis.Supply.Line.Pump!.RequiredSuctionHeadMetres;
        var head = Head(part) - needed;
        var standing = head < 0 ? SupplyStanding.Short : head < SupplyBands.SuctionMetres ? SupplyStanding.Close : SupplyStanding.Enough;
        var pull = one.Point.Duty.AirPascals - part.StaticPascals;
        return new SupplyFinding
        {
            Heading = "Suction before the pump",
            Standing = standing,
            Margin = Metres(head),
            Words = $"Worst {one.Name}, behind {part.Part.Name}: {Pull(analysis.Supply, pull)} at {Celsius(part.OutletKelvin)}, which leaves {Metres(head)} of fuel above boiling.",
            Next = standing == SupplyStanding.Enough ? "" : "Keep the way to the pump short, wide, low and cool: look at gauze and hoses, move the pump to the tank, shield it from heat.",
            Working = [Boils(analysis.Supply, part), Left(part, needed)],
        };
    }

    private static string Pull(FuelSupply supply, double pull) =>
        pull >= 0 ? $"{Pressure(supply.Unit, pull)} of suction" : $"{Pressure(supply.Unit, -pull)} above the air";

    private static double Head(PartPoint part) => FuelVapour.SuctionHead(part.StaticPascals, part.VapourPascals, part.Density);

    private static SupplyFinding Behind(SupplyAnalysis analysis)
    {
        var pumped = analysis.Supply.Line.Pump is { } pump ? pump.Name : null;
        IEnumerable<PartPoint> Parts(SupplyCase one) => pumped is null ? one.Point.Parts : one.Point.Parts.SkipWhile(part => !part.Part.Name.Equals(pumped, StringComparison.Ordinal));
        var (worst, part) = analysis.Cases.Select(one => (Case: one, Part: Parts(one).MinBy(p => p.VapourMarginPascals)!)).MinBy(pair => pair.Part.VapourMarginPascals);
        var margin = part.VapourMarginPascals;
        var standing = margin < 0 ? SupplyStanding.Short : margin < SupplyBands.VapourPascals ? SupplyStanding.Close : SupplyStanding.Enough;
        return new SupplyFinding
        {
            Heading = pumped is null ? "Vapour in the line" : "Vapour behind the pump",
            Standing = standing,
            Margin = Pressure(analysis.Supply.Unit, margin),
            Words = $"Worst {worst.Name}, at {part.Part.Name}: {Celsius(part.OutletKelvin)}, {Pressure(analysis.Supply.Unit, margin)} above boiling. It would boil at {Celsius(FuelVapour.BoilingKelvin(analysis.Supply.Fuel.VapourPressureAt38Pascals, part.StaticPascals))} there.",
            Next = standing == SupplyStanding.Enough ? "" : "Lead the hose away from the exhaust, sleeve it, or let a little fuel run back to the tank through a restrictor.",
            Working = [Boils(analysis.Supply, part)],
        };
    }

    private static SupplyFinding Chamber(SupplyAnalysis analysis)
    {
        var (worst, valve) = analysis.Cases.SelectMany(one => one.Point.Valves.Select(v => (Case: one, Valve: one.Point.Of(v.Valve.Name)!)))
            .MinBy(pair => Cool(analysis, pair.Case, pair.Valve));
        var boils = Boiling(analysis, worst);
        var cool = boils - valve.OutletKelvin;
        var standing = cool < 0 ? SupplyStanding.Short : cool < SupplyBands.ChamberKelvin ? SupplyStanding.Close : SupplyStanding.Enough;
        return new SupplyFinding
        {
            Heading = "Boiling in the float chamber",
            Standing = standing,
            Margin = WorkingNumber.Fixed(cool, 0) + "\u2009K",
            Words = $"Worst {worst.Name}: the fuel comes to {valve.Part.Name} at {Celsius(valve.OutletKelvin)} and boils in the open chamber at {Celsius(boils)}, {WorkingNumber.Fixed(worst.Setting.AltitudeMetres, 0)}\u2009m up. A chamber on a hot manifold warms it further, most of all after stopping.",
            Next = standing == SupplyStanding.Enough ? "" : "Look at heat shields and insulating blocks under the carburettors, and at winter fuel left in the tank.",
            Working = [Boils(analysis.Supply, valve)],
        };
    }

    private static double Boiling(SupplyAnalysis analysis, SupplyCase one) => FuelVapour.BoilingKelvin(analysis.Supply.Fuel.VapourPressureAt38Pascals, one.Point.Duty.AirPascals);

    private static double Cool(SupplyAnalysis analysis, SupplyCase one, PartPoint valve) => Boiling(analysis, one) - valve.OutletKelvin;

    private static SupplyFinding Index(FuelSupply supply, double evaporated)
    {
        var index = FuelVapour.LockIndex(supply.Fuel.VapourPressureAt38Pascals, evaporated);
        return new SupplyFinding
        {
            Heading = "Vapour lock index of the fuel",
            Standing = index > FuelVapour.TransitionIndexLimit ? SupplyStanding.Close : SupplyStanding.Enough,
            Margin = WorkingNumber.Fixed(index, 0),
            Words = $"{WorkingNumber.Fixed(index, 0)}; EN 228 holds the fuel of spring and autumn to {WorkingNumber.Fixed(FuelVapour.TransitionIndexLimit, 0)}.",
            Next = index > FuelVapour.TransitionIndexLimit ? "Winter fuel in warm weather: drive it out or drain it before the heat." : "",
            Working =
            [
                new WorkingStep
                {
                    Title = "Vapour lock index",
                    Formula = "10 × vapour pressure in kPa + 7 × per cent evaporated at 70 °C",
                    NumbersIn = $"10 × {WorkingNumber.Fixed(supply.Fuel.VapourPressureAt38Pascals / 1000, 1)} + 7 × {WorkingNumber.Fixed(100 * evaporated, 0)}",
                    Answer = WorkingNumber.Fixed(index, 0),
                    Equation = "supply (22)",
                    Inputs = [],
                },
            ],
        };
    }

    private static string Metres(double metres) => WorkingNumber.Fixed(metres, 1) + "\u2009m";

    internal static WorkingStep Boils(FuelSupply supply, PartPoint part) => new()
    {
        Title = $"Vapour pressure at {part.Part.Name}",
        Formula = "ln p = A − B ÷ T, A and B from the vapour pressure at 37.8 °C",
        NumbersIn = $"{Pressure(supply.Unit, supply.Fuel.VapourPressureAt38Pascals)} at 37.8 °C; {Celsius(part.OutletKelvin)}",
        Answer = $"{Pressure(supply.Unit, part.VapourPascals)}, against {Pressure(supply.Unit, part.StaticPascals)} there, both absolute",
        Equation = "supply (18)",
        Inputs = [],
        Note = "Fresh fuel; beyond 38 °C the formula is carried on past the table it was fitted to. Old fuel has lost its light ends and boils later.",
    };

    private static WorkingStep Left(PartPoint part, double needed) => new()
    {
        Title = "Suction head left",
        Formula = "(pressure − vapour pressure) ÷ (density × g) − what the pump needs",
        NumbersIn = $"({WorkingNumber.Pascals(part.StaticPascals)} − {WorkingNumber.Pascals(part.VapourPascals)}) ÷ ({WorkingNumber.Density(part.Density)} × {WorkingNumber.Fixed(Gravity, 2)}\u2009m/s²) − {Metres(needed)}",
        Answer = Metres(Head(part) - needed),
        Equation = "supply (21)",
        Inputs = [],
    };
}
