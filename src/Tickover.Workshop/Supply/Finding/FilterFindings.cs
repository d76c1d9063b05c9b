using Tickover.Physics.Supply;
using Tickover.Workshop.Mixture;
using static Tickover.Workshop.Supply.SupplyWords;

namespace Tickover.Workshop.Supply.Finding;

/// <summary>How loaded the filter may get, and whether it is fine enough for the jets.</summary>
internal static class FilterFindings
{
    private const double Most = 1000;

    public static IEnumerable<SupplyFinding> Of(SupplyAnalysis analysis)
    {
        var filters = analysis.Supply.Line.Parts.OfType<FuelFilter>().ToList();
        if (analysis.Supply.FineFilter is { } name)
        {
            yield return Loaded(analysis, filters.Find(filter => filter.Name.Equals(name, StringComparison.Ordinal))!);
        }

        yield return Fineness(analysis, filters);
    }

    private static SupplyFinding Loaded(SupplyAnalysis analysis, FuelFilter filter)
    {
        var full = analysis.Of(SupplyCaseKind.FullLoad);
        var loading = FeedsAt(analysis, filter, full, Most) ? Most : Largest(analysis, filter, full);
        var standing = loading < filter.Loading ? SupplyStanding.Short : loading < SupplyBands.Loading ? SupplyStanding.Close : SupplyStanding.Enough;
        var part = full.Point.Of(filter.Name)!;
        var clean = filter.Loading > 1 ? $"as it is (loaded {Times(filter.Loading)})" : "clean";
        return new SupplyFinding
        {
            Heading = "Filter loaded",
            Standing = standing,
            Margin = loading >= Most ? $"over {WorkingNumber.Fixed(Most, 0)} times" : Times(loading),
            Words = loading < 1
                ? $"At full load {filter.Name} takes {Pressure(analysis.Supply.Unit, part.DropPascals)} {clean}; a clean one would not cure it."
                : $"At full load {filter.Name} takes {Pressure(analysis.Supply.Unit, part.DropPascals)} {clean}. The engine is fed until its element takes {(loading >= Most ? $"over {WorkingNumber.Fixed(Most, 0)} times" : Times(loading))} as much as a clean one.",
            Next = standing == SupplyStanding.Enough ? "" : "Renew it, or fit a larger one; read the flow before and behind it.",
            Working =
            [
                new WorkingStep
                {
                    Title = $"What {filter.Name} takes at full load",
                    Formula = "loading × element × viscosity × flow + unions × flow²",
                    NumbersIn = $"{WorkingNumber.Fixed(filter.Loading, 1)} × clean element at {LitresHour(part.VolumeFlow)}",
                    Answer = Pressure(analysis.Supply.Unit, part.DropPascals),
                    Equation = "supply (6)",
                    Inputs = [],
                },
            ],
        };
    }

    private static double Largest(SupplyAnalysis analysis, FuelFilter filter, SupplyCase full)
    {
        const int halvings = 16;
        var (low, high) = (0.0, Math.Log(Most));
        if (!FeedsAt(analysis, filter, full, 1))
        {
            return 0;
        }

        for (var i = 0; i < halvings; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = FeedsAt(analysis, filter, full, Math.Exp(middle)) ? (middle, high) : (low, middle);
        }

        return Math.Exp(low);
    }

    private static bool FeedsAt(SupplyAnalysis analysis, FuelFilter filter, SupplyCase full, double loading)
    {
        var line = analysis.Supply.Line;
        return SupplySolver.Solve(line with { Parts = [.. line.Parts.Select(part => ReferenceEquals(part, filter) ? filter with { Loading = loading } : part)] }, full.Point.Duty).Feeds;
    }

    private static SupplyFinding Fineness(SupplyAnalysis analysis, List<FuelFilter> filters)
    {
        const string heading = "Filter against the smallest jet";
        if (analysis.Supply.Engine.SmallestJetMetres is not { } jet)
        {
            return new SupplyFinding { Heading = heading, Standing = SupplyStanding.Unknown, Margin = "–", Words = "The smallest jet is not said (smallestJet under engine)." };
        }

        var coarsest = FilterFineness.CoarsestFor(jet);
        var finest = filters.Select(filter => filter.FinenessMetres).Where(size => size is not null).Min();
        var standing = finest is not { } have ? filters.Count == 0 ? SupplyStanding.Close : SupplyStanding.Unknown
            : have <= coarsest ? SupplyStanding.Enough : have <= jet * FilterFineness.BridgingShare ? SupplyStanding.Close : SupplyStanding.Short;
        var found = finest is { } size2 ? $"The finest filter keeps back {Microns(size2)}." : filters.Count == 0 ? "The line has no filter." : "What the filter keeps back is not said.";
        return new SupplyFinding
        {
            Heading = heading,
            Standing = standing,
            Margin = finest is { } size ? Microns(size) : "–",
            Words = $"{found} A bore of {WorkingNumber.Millimetres(jet)} wants {Microns(coarsest)} or finer, by its absolute rating.",
            Next = standing == SupplyStanding.Enough ? "" : "Fit a filter with an absolute rating at least as fine between pump and carburettors; \"nominal\" has no agreed meaning.",
            Working =
            [
                new WorkingStep
                {
                    Title = "Coarsest filter",
                    Formula = "a tenth of the smallest bore",
                    NumbersIn = $"{WorkingNumber.Millimetres(jet)} ÷ 10",
                    Answer = Microns(coarsest),
                    Equation = "supply (32)",
                    Inputs = [],
                    Note = "A rule of engineering: grains of a third of a bore can bridge it.",
                },
            ],
        };
    }

    private static string Microns(double metres) => WorkingNumber.Fixed(1e6 * metres, 0) + "\u2009µm";
}
