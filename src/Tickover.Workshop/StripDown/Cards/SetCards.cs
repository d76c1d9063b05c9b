using System.Globalization;
using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Measures;

namespace Tickover.Workshop.StripDown.Cards;

/// <summary>Lays a visit's readings out as one card for each carburettor, and compares the cards with each other.</summary>
/// <remarks>
/// Sizes, codes and states have to be the same in all barrels; figures with a limit are held against it. Nothing is compared that no
/// rule asks to be alike, such as stop screws. Readings struck out or stood in for do not count; of each place the last one does.
/// </remarks>
public static class SetCards
{
    private static readonly SubStep[] AsFoundSteps = [SubStep.AsFoundSettings, SubStep.JetsAndChokes, SubStep.Wear];
    private static readonly SubStep[] AsBuiltSteps = [SubStep.Specification, SubStep.Bench, SubStep.Linkage];

    /// <summary>The measures a card of a stage has, under their headings; those of the whole car are left out.</summary>
    /// <param name="stage">Strip-down or Build.</param>
    /// <returns>The groups in the order of the work.</returns>
    public static IReadOnlyList<MeasureGroup> Measures(Stage stage) =>
    [
        .. from step in stage == Stage.Build ? AsBuiltSteps : AsFoundSteps
           from @group in MeasureCatalogue.Of(stage)
           where @group.Step == step
           select @group with { Measures = [.. @group.Measures.Where(m => m.Per is PlaceKind.Carburettor or PlaceKind.Barrel)] },
    ];

    /// <summary>The moment a stage's cards speak of: as found at Strip-down, as left at Build.</summary>
    /// <param name="stage">Strip-down or Build.</param>
    /// <returns>The moment.</returns>
    public static Moment MomentOf(Stage stage) => stage == Stage.Build ? Moment.AsLeft : Moment.AsFound;

    /// <summary>The set of a visit.</summary>
    /// <param name="record">The visit.</param>
    /// <param name="stage">Strip-down for the set as found, Build for the set as left.</param>
    /// <returns>The sheet.</returns>
    public static SetSheet Of(VisitRecord record, Stage stage)
    {
        ArgumentNullException.ThrowIfNull(record);
        var moment = MomentOf(stage);
        var last = Last(record, moment);
        var judge = new SetJudge(record, last);
        var groups = Measures(stage).Select(g => new SetGroup(g.Heading, [.. g.Measures.Select(judge.Row)])).ToList();
        var rows = groups.SelectMany(g => g.Rows).ToList();
        return new SetSheet(moment, [.. Carburettors(record).Select(c => Card(c.Carburettor, c.Barrels, rows, last))], groups);
    }

    /// <summary>The carburettors of a visit's car with their barrels, from its description or its plan.</summary>
    /// <param name="record">The visit.</param>
    /// <returns>In engine order; where nothing says which barrel is whose, the barrels are shared out evenly.</returns>
    public static IReadOnlyList<(Place Carburettor, IReadOnlyList<Place> Barrels)> Carburettors(VisitRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        var carburettors = Places.Of(record, PlaceKind.Carburettor);
        var barrels = Places.Of(record, PlaceKind.Barrel);
        var known = Known(record);
        if (known.Count > 0)
        {
            return [.. carburettors.Select(c => (c, (IReadOnlyList<Place>)[.. barrels.Where(b => known.GetValueOrDefault(b.Name) is { } of && string.Equals(of, c.Name, StringComparison.Ordinal))]))];
        }

        var each = Math.Max(1, barrels.Count / carburettors.Count);
        return [.. carburettors.Select((c, k) => (c, (IReadOnlyList<Place>)[.. k == carburettors.Count - 1 ? barrels.Skip(k * each) : barrels.Skip(k * each).Take(each)]))];
    }

    /// <summary>The last reading that counts, by measure and place.</summary>
    /// <param name="record">The visit.</param>
    /// <param name="moment">As found, working or as left.</param>
    /// <returns>The readings.</returns>
    public static IReadOnlyDictionary<(string Measure, Place Place), Reading> Last(VisitRecord record, Moment moment)
    {
        ArgumentNullException.ThrowIfNull(record);
        var last = new Dictionary<(string, Place), Reading>();
        foreach (var reading in Rounds.Valid(record.Readings).Where(r => r.Moment == moment))
        {
            last[(reading.Measure, reading.Place)] = reading;
        }

        return last;
    }

    private static Dictionary<string, string> Known(VisitRecord record)
    {
        var pairs = Places.CarOf(record) is { } car
            ? car.Barrels.Select(b => (b.Number, b.Carburettor))
            : PlanOfVisit.OnSheet(record)?.Barrels.Select(b => (b.Number, b.Carburettor)) ?? [];
        return pairs.ToDictionary(p => Text(p.Number), p => Text(p.Carburettor), StringComparer.Ordinal);
    }

    private static CardOfSet Card(Place carburettor, IReadOnlyList<Place> barrels, List<SetRow> rows, IReadOnlyDictionary<(string Measure, Place Place), Reading> last)
    {
        var places = new HashSet<Place>(barrels) { carburettor };
        var asked = rows.Sum(r => r.Measure.Per == PlaceKind.Carburettor ? 1 : barrels.Count);
        var noted = rows.Sum(r => places.Count(p => last.ContainsKey((r.Measure.Key, p))));
        var odd = from row in rows
                  where row.Standing == SetStanding.Differs
                  from one in row.Odd
                  where places.Contains(one.Place)
                  select Words(row, one);
        return new CardOfSet(carburettor, barrels, noted, asked, [.. odd]);
    }

    private static string Words(SetRow row, SetOdd one)
    {
        var where = one.Place.Kind == PlaceKind.Barrel ? $" in {one.Place.Words().ToLowerInvariant()}" : "";
        var others = (row.Usual.Length, row.IsRange) switch
        {
            (0, _) => "",
            (_, true) => $"; {row.Usual} over the set",
            _ => $"; {row.Usual} in the others",
        };
        return $"{row.Measure.Label} {one.Text}{where}{others}{(one.Reason.Length > 0 ? $". Noted: {one.Reason}" : "")}";
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
