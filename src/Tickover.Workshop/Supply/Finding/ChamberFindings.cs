using Tickover.Physics.Supply;
using Tickover.Workshop.Mixture;
using static Tickover.Workshop.Supply.SupplyWords;

namespace Tickover.Workshop.Supply.Finding;

/// <summary>What the pressure does in the float chambers: flooding, the running level, bends and hills.</summary>
internal static class ChamberFindings
{
    private const double Gravity = Physics.Air.AirConstants.StandardGravityMetresPerSecondSquared;

    public static IEnumerable<SupplyFinding> Of(SupplyAnalysis analysis) => [Flooding(analysis), Level(analysis), Tilt(analysis)];

    private static SupplyFinding Flooding(SupplyAnalysis analysis)
    {
        // The needles shut: what they have to hold when the engine stops or overruns.
        var line = analysis.Supply.Line;
        var none = new Dictionary<string, double>(StringComparer.Ordinal);
        var (one, valve) = analysis.Cases.SelectMany(c => SupplySolver.Solve(line, c.Point.Duty with { DemandKilogramsPerSecond = none }).Valves.Select(v => (Case: c, Valve: v)))
            .MaxBy(pair => pair.Valve.InletGaugePascals / pair.Valve.FloodingGaugePascals);
        var share = valve.InletGaugePascals / valve.FloodingGaugePascals;
        var standing = share > 1 ? SupplyStanding.Short : share > SupplyBands.FloodingShare ? SupplyStanding.Close : SupplyStanding.Enough;
        var unit = analysis.Supply.Unit;
        return new SupplyFinding
        {
            Heading = "Flooding",
            Standing = standing,
            Margin = $"{WorkingNumber.Fixed(100 * share, 0)}\u2009%",
            Words = $"With the needles shut {Pressure(unit, valve.InletGaugePascals)} stands on {valve.Valve.Name}, worst {one.Name}; at {Pressure(unit, valve.FloodingGaugePascals)} its float would let the fuel rise to the spill.",
            Next = standing == SupplyStanding.Enough ? "" : "Read the pressure before fitting a regulator; then regulator, smaller seat, longer arm or larger float. A worn needle floods long before this.",
            Working = [Balance(analysis, valve)],
        };
    }

    private static WorkingStep Balance(SupplyAnalysis analysis, ValvePoint point)
    {
        var (valve, unit) = (point.Valve, analysis.Supply.Unit);
        var density = analysis.Cases[0].Point.Of(valve.Name)!.Density;
        return new WorkingStep
        {
            Title = $"Flooding pressure of {valve.Name}",
            Formula = "setting pressure + lever ratio × density × g × float area × height of the spill ÷ seat area",
            NumbersIn = $"{Pressure(unit, valve.SetAtGaugePascals)} + {WorkingNumber.Fixed(valve.LeverRatio, 1)} × {WorkingNumber.Density(density)} × {WorkingNumber.Fixed(Gravity, 2)}\u2009m/s² × {WorkingNumber.Fixed(1e4 * valve.FloatAreaSquareMetres, 1)}\u2009cm² × {Millimetres(valve.SpillMetres)} ÷ Ø{WorkingNumber.Millimetres(valve.SeatMetres)}",
            Answer = Pressure(unit, point.FloodingGaugePascals),
            Equation = "supply (27)",
            Inputs = [],
        };
    }

    private static SupplyFinding Level(SupplyAnalysis analysis)
    {
        var fed = analysis.Cases.SelectMany(one => one.Point.Valves.Where(v => !v.IsStarved).Select(v => (Case: one, Valve: v))).ToList();
        if (fed.Count == 0)
        {
            return new SupplyFinding { Heading = "Running level", Standing = SupplyStanding.Unknown, Margin = "–", Words = "No chamber holds a level: none gets what it needs." };
        }

        var (low, high) = (fed.MinBy(pair => pair.Valve.LevelChangeMetres), fed.MaxBy(pair => pair.Valve.LevelChangeMetres));
        var span = high.Valve.LevelChangeMetres - low.Valve.LevelChangeMetres;
        var standing = span <= SupplyBands.LevelMetres ? SupplyStanding.Enough : SupplyStanding.Close;
        return new SupplyFinding
        {
            Heading = "Running level",
            Standing = standing,
            Margin = Millimetres(span),
            Words = $"From {Signed(low.Valve.LevelChangeMetres)} ({low.Valve.Valve.Name}, {low.Case.Name}) to {Signed(high.Valve.LevelChangeMetres)} ({high.Valve.Valve.Name}, {high.Case.Name}) against the level set.",
            Next = span > SupplyBands.LevelMostMetres ? "Set the level at the pressure it runs with, or steady the pressure: this much shows in the mixture where the main circuit starts." : "",
            Working = [Running(analysis, high.Valve, high.Case), Running(analysis, low.Valve, low.Case)],
        };
    }

    private static WorkingStep Running(SupplyAnalysis analysis, ValvePoint point, SupplyCase one)
    {
        var (valve, part) = (point.Valve, one.Point.Of(point.Valve.Name)!);
        var rise = FloatLevel.ShutOffRise(valve, point.InletGaugePascals - valve.SetAtGaugePascals, part.Density);
        var lift = FloatLevel.NeedleLift(valve, point.InletGaugePascals, part.VolumeFlow, part.Density);
        return new WorkingStep
        {
            Title = $"Level in {valve.Name}, {one.Name}",
            Formula = "depth the pressure asks of the float − lever ratio × needle's lift for the flow",
            NumbersIn = $"{Millimetres(rise)} from {Pressure(analysis.Supply.Unit, point.InletGaugePascals)} − {WorkingNumber.Fixed(valve.LeverRatio, 1)} × {WorkingNumber.Millimetres(lift)} for {LitresHour(part.VolumeFlow)}",
            Answer = Signed(point.LevelChangeMetres),
            Equation = "supply (26)",
            Inputs = [],
        };
    }

    private static SupplyFinding Tilt(SupplyAnalysis analysis)
    {
        var attitude = analysis.Supply.Attitude;
        var slope = Gravity * attitude.SlopePart / Math.Sqrt(1 + attitude.SlopePart * attitude.SlopePart);
        var ways = new[]
        {
            ("in a left-hand bend", 0.0, attitude.BendG * Gravity),
            ("in a right-hand bend", 0.0, -attitude.BendG * Gravity),
            ("under braking", -attitude.BrakingG * Gravity, 0.0),
            ("on the hill", slope, 0.0),
        };
        var all = analysis.Supply.Line.Valves.SelectMany(valve => ways.Select(way => (Valve: valve, Way: way, Rise: FloatLevel.TiltRise(valve, way.Item2, way.Item3)))).ToList();
        if (all.TrueForAll(tilt => tilt.Rise == 0))
        {
            return new SupplyFinding { Heading = "Bends and hills", Standing = SupplyStanding.Unknown, Margin = "–", Words = "Where the jets lie from the float's middle is not said (jetsAhead, jetsLeft); with both in one place bends and hills do nothing." };
        }

        var (lost, risen) = (all.MinBy(tilt => tilt.Rise), all.MaxBy(tilt => tilt.Rise));
        var standing = -lost.Rise >= lost.Valve.JetDepthMetres || risen.Rise >= 2 * risen.Valve.SpillMetres ? SupplyStanding.Short
            : -lost.Rise >= lost.Valve.JetDepthMetres / 2 || risen.Rise >= risen.Valve.SpillMetres ? SupplyStanding.Close : SupplyStanding.Enough;
        return new SupplyFinding
        {
            Heading = "Bends and hills",
            Standing = standing,
            Margin = Millimetres(Math.Max(-lost.Rise, risen.Rise)),
            Words = $"The fuel over the jets of {lost.Valve.Name} sinks by {Millimetres(-lost.Rise)} {lost.Way.Item1}, over those of {risen.Valve.Name} it rises by {Millimetres(risen.Rise)} {risen.Way.Item1}. Air below {Millimetres(lost.Valve.JetDepthMetres)}, spill above {Millimetres(risen.Valve.SpillMetres)}.",
            Next = standing == SupplyStanding.Enough ? "" : "A hole in the mixture or a flood in one bend only points here; look at the level first.",
            Working =
            [
                new WorkingStep
                {
                    Title = $"Rise over the jets of {risen.Valve.Name}",
                    Formula = "−(ahead × acceleration ahead + left × acceleration to the left) ÷ g",
                    NumbersIn = $"{Millimetres(risen.Valve.JetAheadMetres)} ahead, {Millimetres(risen.Valve.JetLeftMetres)} left; {WorkingNumber.Fixed(risen.Way.Item2, 1)} and {WorkingNumber.Fixed(risen.Way.Item3, 1)}\u2009m/s²",
                    Answer = Signed(risen.Rise),
                    Equation = "supply (29)",
                    Inputs = [],
                },
            ],
        };
    }

    private static string Signed(double metres) => (metres > 0 ? "+" : "") + Millimetres(metres);
}
