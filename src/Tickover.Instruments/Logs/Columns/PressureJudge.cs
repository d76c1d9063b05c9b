using System.Globalization;
using Tickover.Instruments.Logs.Mending;

namespace Tickover.Instruments.Logs.Columns;

/// <summary>Settles the unit of a manifold pressure, and whether it is absolute, over or under the atmosphere.</summary>
/// <remarks>Three things tell: what can be behind a throttle, that wide open comes near the barometer, and which way it goes when the throttle opens.</remarks>
internal sealed class PressureJudge(LogReadingSettings settings)
{
    private const double Deepest = 6_000;                // Pa absolute: overrun of a tight engine goes to some 15 kPa (common practice)
    private const double OverBarometer = 6_000;          // Pa: sensors are off by some per cent
    private const double LeastTravel = 12_000;           // Pa between idle or cruise and open throttle
    private const double Moves = 0.25;                   // correlation that tells a direction
    private static readonly string[] Names = ["kPa", "mbar", "mmHg", "inHg", "psi", "bar"];
    private static readonly string[] References = ["abs", "vac", "gauge"];

    /// <summary>Settles one column.</summary>
    /// <param name="choice">The column.</param>
    /// <param name="figures">Its figures.</param>
    /// <param name="load">What rises with the opening: the throttle; empty where there is none.</param>
    /// <param name="said">The heading and the units cell, as they are.</param>
    /// <returns>The column with its unit; null unit where its figures fit none.</returns>
    public ColumnChoice Settle(ColumnChoice choice, ReadOnlySpan<float> figures, ReadOnlySpan<float> load, HeadingText said)
    {
        if (choice.Sureness is HowSure.Told && choice.Unit is not null)
        {
            return choice;
        }

        var (spread, way) = (Spread.Of(figures), Correlation(figures, load));
        var ranked = Ranked(spread, way, said);
        var figuresSaid = string.Create(CultureInfo.InvariantCulture, $"figures of {spread.Low:0.##} to {spread.High:0.##}");
        if (ranked.Length == 0)
        {
            return choice with { Unit = null, Why = $"{choice.Why}; {figuresSaid} fit no pressure behind a throttle" };
        }

        var best = ranked[0];
        var turned = way > Moves ? ", rises with the throttle" : way < -Moves ? ", falls with the throttle" : string.Empty;
        var against = best.Agrees < Agreement(said) ? $", which cannot be as written{(said.Unit.Length > 0 ? $" ({said.Unit})" : string.Empty)}" : string.Empty;
        return choice with
        {
            Unit = best.Unit,
            Sureness = against.Length > 0 || choice.Sureness is HowSure.Guess ? HowSure.Guess : said.Unit.Length > 0 ? HowSure.Sure : HowSure.Likely,
            Why = $"{choice.Why}; {figuresSaid}{turned}{against}",
        };
    }

    // What the words say: two for the unit, one for the reference.
    private static int Agreement(HeadingText said) => (LogUnits.PressureNameIn(said.Unit) is null ? 0 : 2) + (ReferenceOf(said) is null ? 0 : 1);

    private static string? ReferenceOf(HeadingText said) =>
        LogUnits.PressureReferenceIn(said.Unit) ?? (said.HasAny("vac", "vacuum", "depression", "unterdruck", "vacuums") ? "vac" : null);

    private (LogUnit Unit, int Agrees)[] Ranked(Spread spread, double way, HeadingText said)
    {
        var (name, reference) = (LogUnits.PressureNameIn(said.Unit), ReferenceOf(said));
        return
        [
            .. from n in Names
               from r in References
               let unit = LogUnits.PressureUnitOf(n, r)
               let score = Score(unit, r, spread, way)
               where score > 0
               let agrees = (string.Equals(n, name, StringComparison.Ordinal) ? 2 : 0) + (string.Equals(r, reference, StringComparison.Ordinal) ? 1 : 0)
               orderby agrees + score - 0.01 * Array.IndexOf(Names, n) descending
               select (unit, agrees),
        ];
    }

    private double Score(LogUnit unit, string reference, Spread spread, double way)
    {
        var si = spread.In(unit, settings.BarometerPascals);
        if (si.Low < Deepest || si.High > settings.BarometerPascals + OverBarometer || si.High - si.Low < LeastTravel)
        {
            return 0;
        }

        var falls = reference is "vac";
        if ((falls && way > Moves) || (!falls && way < -Moves))
        {
            return 0;
        }

        // Pressures over the atmosphere are negative behind a throttle, depressions are not.
        var signed = reference switch { "gauge" => spread.Median < 0, "vac" => spread.Median > 0, _ => spread.Low > 0 };
        return signed ? 1 - Math.Abs(si.High - settings.BarometerPascals) / settings.BarometerPascals : 0;
    }

    private static double Correlation(ReadOnlySpan<float> a, ReadOnlySpan<float> b)
    {
        double n = 0, sa = 0, sb = 0, saa = 0, sbb = 0, sab = 0;
        for (var i = 0; i < Math.Min(a.Length, b.Length); i++)
        {
            if (float.IsFinite(a[i]) && float.IsFinite(b[i]))
            {
                (n, sa, sb, saa, sbb, sab) = (n + 1, sa + a[i], sb + b[i], saa + a[i] * a[i], sbb + b[i] * b[i], sab + (double)a[i] * b[i]);
            }
        }

        var spread = Math.Sqrt(Math.Max(0, (n * saa - sa * sa) * (n * sbb - sb * sb)));
        return spread > 0 ? (n * sab - sa * sb) / spread : 0;
    }
}
