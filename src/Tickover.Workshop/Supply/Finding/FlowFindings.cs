using Tickover.Physics.Supply;
using Tickover.Workshop.Mixture;
using static Tickover.Workshop.Supply.SupplyWords;

namespace Tickover.Workshop.Supply.Finding;

/// <summary>Whether enough comes: at the float valves in each case, and out of the open line.</summary>
internal static class FlowFindings
{
    public static IEnumerable<SupplyFinding> Of(SupplyAnalysis analysis)
    {
        foreach (var one in analysis.Cases)
        {
            yield return Case(analysis.Supply, one);
        }

        if (analysis.OpenFlow is { } open)
        {
            yield return Open(analysis, open);
        }

        if (analysis.Supply.Readings.TryGetValue(SupplyReadingKind.FlowAtChamber, out var read))
        {
            yield return AsRead(analysis, read);
        }
    }

    private static SupplyFinding Case(FuelSupply supply, SupplyCase one)
    {
        var worst = one.Point.Valves.MinBy(valve => valve.DemandKilogramsPerSecond > 0 ? valve.MassFlow / valve.DemandKilogramsPerSecond : double.MaxValue)!;
        var lowest = one.Point.Valves.MinBy(valve => valve.InletGaugePascals)!;
        var demand = one.Point.Valves.Sum(valve => valve.DemandKilogramsPerSecond) / Density(one, worst);
        var standing = one.Point.Ending != SupplyEnding.Converged ? SupplyStanding.Unknown
            : one.Margin.Factor < 1 ? SupplyStanding.Short
            : one.Margin.Factor < SupplyBands.FlowMargin ? SupplyStanding.Close : SupplyStanding.Enough;
        var first = one.Margin.FirstToStarve is { } name ? $" {Capital(name)} would run short first." : "";
        var words = standing == SupplyStanding.Short
            ? $"{LitresHour(demand)} wanted, {LitresHour(one.Point.Valves.Sum(valve => valve.MassFlow) / Density(one, worst))} comes. {Capital(worst.Valve.Name)} gets {Share(worst)} of what it needs and draws air after {Seconds(worst.RunsDrySeconds)}."
            : $"{LitresHour(demand)} wanted; the line carries {Times(one.Margin.Factor)} that. Least pressure at a float valve {Pressure(supply.Unit, lowest.InletGaugePascals)}, at {lowest.Valve.Name}.{first}";
        return new SupplyFinding
        {
            Heading = $"Flow, {one.Name}",
            Standing = standing,
            Margin = Times(one.Margin.Factor),
            Words = standing == SupplyStanding.Unknown ? "The search for the flows did not settle; look at the figures of the line." : words,
            Next = standing is SupplyStanding.Enough ? "" : Largest(supply, one),
            Working = [Demand(supply, one, demand), Through(supply, one, lowest)],
        };
    }

    private static string Largest(FuelSupply supply, SupplyCase one)
    {
        var part = one.Point.Parts.Where(p => p.Part is not (FuelPump or FloatValve or TankReturn)).MaxBy(p => p.DropPascals);
        var returned = one.Point.Parts.FirstOrDefault(p => p.Part is TankReturn);
        var tail = returned is null ? "" : $" The return takes {LitresHour(returned.VolumeFlow)} of what the pump gives.";
        return part is null ? "Look at the pump." : $"Most of the pressure goes in {part.Part.Name}, {Pressure(supply.Unit, part.DropPascals)}; look there and at the pump first.{tail}";
    }

    private static double Density(SupplyCase one, ValvePoint valve) => one.Point.Of(valve.Valve.Name)!.Density;

    private static string Share(ValvePoint valve) => Shown(100 * valve.MassFlow / valve.DemandKilogramsPerSecond) + "\u2009%";

    private static string Seconds(double seconds) => seconds < 100 ? Shown(seconds) + "\u2009s" : Shown(seconds / 60) + "\u2009min";

    private static string Shown(double value) => WorkingNumber.Fixed(value, 0);

    private static WorkingStep Demand(FuelSupply supply, SupplyCase one, double demand) => new()
    {
        Title = $"Fuel wanted, {one.Name}",
        Formula = one.Setting.Load is null ? "fuel at idle" : "part of the fuel at full load",
        NumbersIn = one.Setting.Load is { } load ? $"{Shown(100 * load)}\u2009% of {supply.Engine.Origin}" : supply.Engine.IdleOrigin,
        Answer = LitresHour(demand),
        Equation = supply.Engine.Working.Count > 0 ? supply.Engine.Working[0].Equation : "supply (30)",
        Inputs = [],
    };

    private static WorkingStep Through(FuelSupply supply, SupplyCase one, ValvePoint valve)
    {
        var density = Density(one, valve);
        return new WorkingStep
        {
            Title = $"What {valve.Valve.Name} passes wide open",
            Formula = "flow = Cd × seat × √(2 × pressure ÷ density)",
            NumbersIn = $"{WorkingNumber.Fixed(valve.Valve.DischargeCoefficient, 2)} × Ø{WorkingNumber.Millimetres(valve.Valve.SeatMetres)} at {Pressure(supply.Unit, valve.InletGaugePascals)}, {WorkingNumber.Density(density)}",
            Answer = $"{LitresHour(valve.WideOpenKilogramsPerSecond / density)}, of which {LitresHour(valve.MassFlow / density)} is taken",
            Equation = "supply (14)",
            Inputs = [],
            Note = "As more is taken the pressure sinks; the margin is where demand and this meet, searched with the whole line.",
        };
    }

    private static double Need(SupplyAnalysis analysis)
    {
        var full = analysis.Of(SupplyCaseKind.FullLoad);
        return analysis.Supply.Engine.FullLoadKilogramsPerSecond / Density(full, full.Point.Valves[0]);
    }

    private static SupplyStanding Stands(double times) => times < 1 ? SupplyStanding.Short : times < SupplyBands.OpenFlow ? SupplyStanding.Close : SupplyStanding.Enough;

    private static SupplyFinding Open(SupplyAnalysis analysis, double open)
    {
        var need = Need(analysis);
        return new SupplyFinding
        {
            Heading = "Open flow at the last chamber",
            Standing = Stands(open / need),
            Margin = Times(open / need),
            Words = $"Taken off and held into a can, the line should give {LitresMinute(open)}, {Times(open / need)} the full-load need of {LitresMinute(need)}. Twice is common practice.",
            Next = Stands(open / need) == SupplyStanding.Enough ? "" : "Time it; if it gives less than this, read the flow before the filter too and enter both.",
            Working = [Over("flow where pump and open line meet", open, need)],
        };
    }

    // What was measured stands above what was described.
    private static SupplyFinding AsRead(SupplyAnalysis analysis, double read)
    {
        var need = Need(analysis);
        return new SupplyFinding
        {
            Heading = "Open flow as read",
            Standing = Stands(read / need),
            Margin = Times(read / need),
            Words = $"The car gives {LitresMinute(read)} into the can, {Times(read / need)} the full-load need of {LitresMinute(need)}. Twice is common practice.",
            Next = Stands(read / need) == SupplyStanding.Enough ? "" : "Follow what the readings say, then time it again.",
            Working = [Over("flow as read", read, need)],
        };
    }

    private static WorkingStep Over(string flow, double open, double need) => new()
    {
        Title = "Open flow over need",
        Formula = $"{flow} ÷ full-load need",
        NumbersIn = $"{LitresHour(open)} ÷ {LitresHour(need)}",
        Answer = Times(open / need),
        Equation = "supply (15)",
        Inputs = [],
    };
}
