using Tickover.Workshop.Cars;
using Tickover.Workshop.Cars.Text;

namespace Tickover.Workshop.StripDown.Wear;

/// <summary>Tells emulsion tubes by their measured holes.</summary>
/// <param name="sheet">The sheet.</param>
internal sealed class TubeJudge(WearSheet sheet)
{
    private const double DepthTolerance = 0.6e-3;           // m: rule on a small part (assumed)
    private const double HoleTolerance = 0.07e-3;           // m: pin gauges (assumed)

    /// <summary>The tubes of a set, one each barrel that has one measured.</summary>
    /// <returns>What each is.</returns>
    public IEnumerable<WearItem> All()
    {
        var measured = sheet.Barrels.Where(b => b.TubeRows.Count > 0).ToList();
        foreach (var barrel in measured)
        {
            var alike = measured.Count(other => IsLike(barrel.TubeRows, other.TubeRows));
            var odd = alike * 2 < measured.Count || (alike == 1 && measured.Count > 1);
            var code = Code(barrel.TubeRows);
            var wrongStamp = code is not null && barrel.TubeStamp.Length > 0 && !string.Equals(code, barrel.TubeStamp, StringComparison.OrdinalIgnoreCase);
            yield return new WearItem
            {
                Where = $"barrel {barrel.Where}",
                Kind = WearKind.Tube,
                Grade = odd || wrongStamp ? WearGrade.Bad : WearGrade.Good,
                Measured = $"{(barrel.TubeStamp.Length > 0 ? $"stamped {barrel.TubeStamp}: " : "")}{string.Join(", ", barrel.TubeRows.Select(HoleText.Show))}",
                Limit = "all alike (common practice)",
                Words = Words(barrel, odd, wrongStamp, code),
            };
        }
    }

    private string Words(WornBarrel barrel, bool odd, bool wrongStamp, string? code)
    {
        var fits = code is not null ? $"Its holes are those of a {code} on the shelf."
            : sheet.Shelf is { Tubes.Count: > 0 } shelf ? $"No tube of the shelf has these holes; {Nearest(barrel.TubeRows, shelf.Tubes)}"
            : "There is no shelf to compare it with.";
        var stamp = wrongStamp ? $" The stamp says {barrel.TubeStamp}: it was drilled, or stamped wrong." : "";
        return $"{fits}{stamp}{(odd ? " It is not like the others of this set: the start of the main circuit differs on this barrel." : "")}";
    }

    private string? Code(IReadOnlyList<CarHoleRow> rows) => sheet.Shelf?.Tubes.FirstOrDefault(t => IsLike(rows, Rows(t.Holes)))?.Code;

    private static List<CarHoleRow> Rows(IReadOnlyList<string> holes) => [.. holes.Select(h => HoleText.Row(h)!).OrderBy(r => r.DepthMetres)];

    private static bool IsLike(IReadOnlyList<CarHoleRow> a, IReadOnlyList<CarHoleRow> b) => a.Count == b.Count && a.Zip(b).All(pair => IsLike(pair.First, pair.Second));

    private static bool IsLike(CarHoleRow a, CarHoleRow b) =>
        a.Count == b.Count && Math.Abs(a.DepthMetres - b.DepthMetres) <= DepthTolerance && Math.Abs(a.DiameterMetres - b.DiameterMetres) <= HoleTolerance;

    private static string Nearest(IReadOnlyList<CarHoleRow> rows, IReadOnlyList<JetChoice.EmulsionTubeChoice> tubes)
    {
        var nearest = tubes.MaxBy(t => Rows(t.Holes).Count(known => rows.Any(row => IsLike(row, known))))!;
        var shared = Rows(nearest.Holes).Count(known => rows.Any(row => IsLike(row, known)));
        return shared == 0 ? "not a row of it is known." : SheetText.Line($"nearest is {nearest.Code}, with {shared} of {rows.Count} rows alike.");
    }
}
