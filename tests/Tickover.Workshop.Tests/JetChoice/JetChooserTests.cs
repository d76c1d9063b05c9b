using Tickover.Workshop.Calibration;
using Tickover.Workshop.Cars;
using Tickover.Workshop.JetChoice;
using Tickover.Workshop.Mixture;
using Tickover.Workshop.Tests.Calibration;

namespace Tickover.Workshop.Tests.JetChoice;

/// <summary>A choice from readings, judged on the car they came from.</summary>
public sealed class JetChooserTests
{
    private const int Barrels = 6;

    private static readonly (string Path, string Text)[] Hidden = [("barrel.auxiliaryGain", "2.75"), ("barrel.mainAirDischarge", "0.66")];

    private static readonly (string, string)[] Wrong = [("barrel.mainJet", "150"), ("barrel.idleJet", "60")];

    private static readonly Car Fitted = Drives.Sample("tern-2800", Wrong);

    private static readonly Lazy<JetAdvice> Advice = new(() =>
    {
        var readings = Drives.Of(Drives.Sample("tern-2800", [.. Wrong, .. Hidden]), 3);
        var shelf = new JetShelf(
        [
            new(("mainJet", 130), Barrels), new(("mainJet", 125), Barrels), new(("mainJet", 120), Barrels - 1),
            new(("idleJet", 50), Barrels), new(("idleJet", 45), Barrels), new(("airCorrector", 170), Barrels),
        ]);
        return JetChooser.Choose(Fitted, Calibrator.Fit([new("run", Fitted, readings)]).Fit!, new JetChoiceSettings { Shelf = shelf });
    });

    [Fact]
    public void The_real_car_is_better_with_the_jets_chosen_by_as_much_as_was_foretold()
    {
        var (before, after) = (RealShare(Advice.Value.Now.Car), RealShare(Advice.Value.IfOrdered.Car));

        Assert.True(after > before + 0.1, $"{after} after {before}");
        Assert.Equal(Advice.Value.IfOrdered.InTargetOverall, after, 0.1);
    }

    [Fact]
    public void More_freedom_never_costs_more()
    {
        Assert.True(Advice.Value.IfOrdered.Cost <= Advice.Value.Now.Cost);
        Assert.True(Advice.Value.FromShelf!.Cost <= Advice.Value.Now.Cost);
        Assert.True(Advice.Value.IfOrdered.Cost <= Advice.Value.FromShelf.Cost + 0.02);
    }

    [Fact]
    public void A_shelf_gives_only_what_it_has_enough_of()
    {
        Assert.All(Advice.Value.FromShelf!.Changes, c => Assert.Equal(0, c.ToOrder));
        Assert.DoesNotContain(Advice.Value.FromShelf.Changes, c => c.Part is "choke" || (c.Part is "mainJet" && c.To is "120"));
    }

    [Fact]
    public void Least_effort_keeps_the_choke_and_changes_no_more_parts_than_the_best()
    {
        Assert.DoesNotContain(Advice.Value.LeastEffort.Changes, c => c.Part is "choke" or "emulsionTube");
        Assert.True(Advice.Value.LeastEffort.Changes.Count(c => c.Pieces > 0) <= Advice.Value.IfOrdered.Changes.Count(c => c.Pieces > 0));
    }

    [Fact]
    public void A_hundred_thousand_sets_are_tried_and_the_quick_reckoning_holds()
    {
        Assert.True(Advice.Value.Tried >= 100_000, $"{Advice.Value.Tried}");
        Assert.InRange(Advice.Value.QuickReckoning, 1e-6, 0.04);
    }

    [Fact]
    public void Changes_stand_in_the_order_of_work_with_what_each_does()
    {
        var orders = Advice.Value.IfOrdered.Changes.Select(c => JetParts.Find(c.Part)!.Order).ToList();

        Assert.Equal(orders.Order(), orders);
        Assert.Contains(Advice.Value.IfOrdered.Changes.SelectMany(c => c.Effects), e => Math.Abs(e.Part) > 0.02);
    }

    [Fact]
    public void A_target_set_by_the_workshop_is_aimed_at()
    {
        var forecast = new PriorForecast();
        var lean = new JetTargets(new Dictionary<string, (double, double)>(StringComparer.Ordinal) { ["full load"] = (0.95, 1.0) });
        var usual = JetChooser.Choose(Fitted, forecast).IfOrdered;
        var aimed = JetChooser.Choose(Fitted, forecast, new JetChoiceSettings { Targets = lean }).IfOrdered;

        Assert.True(FullLoad(aimed) > 1.02 * FullLoad(usual), $"{FullLoad(aimed)} against {FullLoad(usual)}");
    }

    [Fact]
    public void The_next_reading_is_worth_more_than_one_far_inside_what_is_known()
    {
        var readings = NextReadings.Of(Fitted, Advice.Value.LeastEffort.Car, new PriorForecast(), JetTargets.Usual, 3);

        Assert.Equal(3, readings.Count);
        Assert.All(readings, r => Assert.InRange(r.Narrows, 0.01, 1));
        Assert.Equal(readings.OrderByDescending(r => r.Narrows), readings);
    }

    private static double FullLoad(JetProposal proposal)
    {
        var openings = proposal.Map.Grid.ThrottleDegrees.Count;
        return Enumerable.Range(8, 12).Average(i => proposal.Map.Lambda(i * openings + openings - 1));
    }

    private static double RealShare(Car car)
    {
        var map = MixtureSurvey.Run(CarDocument.Change(car, Hidden.Select(h => KeyValuePair.Create(h.Path, h.Text))).Car!).Map;
        var weights = RoadUse.Weights(map, car.Engine.Si("engine.peakPowerSpeed") * 60 / (2 * Math.PI));
        return map.Barrels[0].Points.Cast<BarrelPoint>()
            .Select((p, i) => (p.Lambda, Band: MixtureTargets.At(map.Grid.ThrottleDegrees[i % map.Grid.ThrottleDegrees.Count]), Weight: weights[i]))
            .Sum(p => p.Lambda >= p.Band.Richest && p.Lambda <= p.Band.Leanest ? p.Weight : 0);
    }
}
