using System.Globalization;
using Tickover.Reports.Paper;
using Tickover.Workshop.Cars;

namespace Tickover.Reports.HandOver.Card;

/// <summary>Which car, when, by whom, and how its cylinders and barrels are counted.</summary>
internal static class CardHead
{
    internal static IEnumerable<Block> Of(Telling t, CardFigures figures)
    {
        var car = t.Record.Car;
        yield return new Masthead(
            car.Name, t.Say("Set-up card: keep it with the car"), [t.House.Name.Length > 0 ? t.House.Name : t.Say("The workshop"), $"{t.Say("Set on")} {t.Day(t.Visit.LeftOn ?? t.Settings.On)}", $"{t.Say("Visit")} {t.Visit.Number}, {t.Odometer()}"]);
        yield return new SideBySide(
            [new Facts([.. Left(t).Select(e => new Fact(t.Say(e.Name), Prose.Of(e.Value.Length > 0 ? e.Value : t.Say("not noted"))))])],
            [new Facts([.. Right(t, figures).Select(e => new Fact(t.Say(e.Name), Prose.Of(e.Value.Length > 0 ? e.Value : t.Say("not noted"))))])]);
    }

    private static IEnumerable<(string Name, string Value)> Left(Telling t)
    {
        yield return ("Registration", t.Record.Car.Registration);
        yield return ("Chassis number", t.Record.Car.ChassisNumber);
        yield return ("Set by", string.Join(", ", t.Record.SignOffs.Select(s => t.Name(s.Person)).Distinct(StringComparer.Ordinal)));
        yield return ("Call", t.House.Telephone);
    }

    private static IEnumerable<(string Name, string Value)> Right(Telling t, CardFigures figures)
    {
        yield return ("Engine", figures.Car?.Layout ?? "");
        yield return ("Firing order", figures.Car is { } car ? string.Join('-', car.FiringOrder.Select(n => n.ToString(CultureInfo.InvariantCulture))) : "");
        yield return ("Barrels", figures.Car is { } known ? Barrels(t, known) : "");
        yield return ("Fuel", t.Visit.Fuel.Length > 0 ? t.Visit.Fuel : figures.Car?.FuelGrade ?? "");
    }

    private static string Barrels(Telling t, Car car)
    {
        var carburettors = car.Barrels.Select(b => b.Carburettor).Distinct().Count();
        var own = car.Barrels.All(b => b.Cylinders.Count == 1 && b.Cylinders[0] == b.Number);
        var feeds = own ? "barrel 1 feeds cylinder 1, and so on" : string.Join(", ", car.Barrels.Select(b => $"{b.Number} feeds {string.Join('+', b.Cylinders)}"));
        return t.Say($"{car.Barrels.Count} in {carburettors} {(carburettors == 1 ? "carburettor" : "carburettors")}; {feeds}");
    }
}
