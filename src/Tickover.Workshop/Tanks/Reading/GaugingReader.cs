using Tickover.Physics.Gauges;
using Tickover.Physics.Linkages;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Reading;
using Tickover.Workshop.Tanks.Parts;

namespace Tickover.Workshop.Tanks.Reading;

/// <summary>Reads fill, sender, gauge and readings.</summary>
internal sealed class GaugingReader(ObjectReader root, IReadOnlyList<TankPart> tanks)
{
    private static readonly Dictionary<string, SenderFamily?> Families = SenderFamily.All.ToDictionary(f => f.Key, f => (SenderFamily?)f, StringComparer.Ordinal);

    /// <summary>All of it, in a set whose other members are still to be filled in.</summary>
    public TankSet Read() => new()
    {
        Name = string.Empty,
        Document = string.Empty,
        Tanks = [],
        CapacityLitres = 0,
        Fill = Fill(),
        Sender = Sender(),
        Gauge = Gauge(),
        Readings = Readings(),
    };

    private FillPart? Fill()
    {
        if (root.Object("fill", TankForm.Fill) is not { } fill)
        {
            return null;
        }

        if (tanks.Count == 0)
        {
            root.Faults.Add("fill", "There is no tank to hold the fill against", "a fill of a tank described above", "Describe the tank, or take out the fill.");
        }

        var steps = fill.Items("steps", TankForm.Step, "{ \"litres\": 5, \"dip\": 40 }")
            .Select(s => (Path: s.Path, Litres: s.Needed("litres", TankLimit.Litres), Dip: s.Needed("dip", TankLimit.Dip))).ToArray();
        if (steps.Length < 2)
        {
            fill.Faults.Add(fill.At("steps"), $"{steps.Length} steps", "two or more: litres in so far and the dip", "Write \"steps\": [{ \"litres\": 5, \"dip\": 40 }, { \"litres\": 10, \"dip\": 72 }].");
        }

        foreach (var (before, after) in steps.Zip(steps.Skip(1)))
        {
            if (after.Litres <= before.Litres)
            {
                fill.Faults.Add($"{after.Path}.litres", FormattableString.Invariant($"{after.Litres} litres after {before.Litres}"), "all that has gone in so far, more at every step", "Add up the cans.");
            }
            else if (after.Dip <= before.Dip)
            {
                fill.Faults.Add($"{after.Path}.dip", FormattableString.Invariant($"The dip goes from {before.Dip} to {after.Dip} mm although fuel went in"), "a dip that rises", "Read the stick again, or look whether the fuel went to the other tank.");
            }
        }

        return new FillPart(Tank(fill) ?? 0, fill.Flag("levelled"), [.. steps.Select(s => (s.Litres, s.Dip))]);
    }

    private SenderPart? Sender()
    {
        if (root.Object("sender", TankForm.Sender) is not { } sender)
        {
            return null;
        }

        var tank = tanks.Count > 0 ? Tank(sender) ?? 0 : (int?)null;
        var at = sender.Numbers("at", (2, 2), TankLimit.Place);
        return new SenderPart
        {
            Tank = tank,
            Family = sender.Word("family", Families, null),
            Arm = Arm(sender),
            Place = tank is { } t ? Place(tanks[t], at) : null,
        };
    }

    // Sideways from the tank's own point; as high as the foot of the stick, from which the arm is measured.
    private static SpaceVector Place(TankPart tank, IReadOnlyList<double>? at) => at is null
        ? tank.Foot
        : new SpaceVector(tank.Origin.X + TankUnits.Metres(at[0]), tank.Origin.Y + TankUnits.Metres(at[1]), tank.Foot.Z);

    private static FloatArm? Arm(ObjectReader sender)
    {
        if (sender.Object("arm", TankForm.Arm) is not { } arm)
        {
            return null;
        }

        var (pivot, length) = (arm.Needed("pivot", TankLimit.Height), arm.Needed("length", TankLimit.Arm));
        var (low, high) = (arm.Needed("lowStop", TankLimit.Height), arm.Needed("highStop", TankLimit.Height));
        if (high <= low)
        {
            arm.Faults.Add(arm.At("highStop"), FormattableString.Invariant($"The upper stop, {high} mm, is not above the lower, {low} mm"), "the float's height at either stop above the foot of the stick", "Swap them, or measure again.");
        }
        else if (Math.Abs(high - pivot) > length || Math.Abs(low - pivot) > length)
        {
            arm.Faults.Add(arm.At("length"), FormattableString.Invariant($"An arm of {length} mm does not reach its stops from {pivot} mm"), "an arm at least as long as from the pivot's height to either stop", "Measure pivot, arm and stops again.");
        }

        // An arm that cannot be is not built: its faults are told already.
        return high > low && Math.Abs(high - pivot) <= length && Math.Abs(low - pivot) <= length
            ? FloatArm.Between(TankUnits.Metres(pivot), TankUnits.Metres(length), TankUnits.Metres(low), TankUnits.Metres(high))
            : null;
    }

    private GaugePart? Gauge()
    {
        if (root.Object("gauge", TankForm.Gauge) is not { } gauge)
        {
            return null;
        }

        var (empty, full) = (gauge.Number("empty", TankLimit.Litres), gauge.Number("full", TankLimit.Litres));
        if (full <= empty)
        {
            gauge.Faults.Add(gauge.At("full"), FormattableString.Invariant($"{full} litres at F and {empty} at E"), "more at F than at E", "Swap them.");
        }

        return new GaugePart(gauge.Word("family", Families, null), empty, full);
    }

    private SenderReading[] Readings() =>
    [
        .. root.Items("readings", TankForm.Reading, "{ \"litres\": 10, \"ohms\": 180, \"needle\": 0.2 }").Select(r =>
        {
            var ohms = r["ohms"] is { Kind: SourceKind.Text } word && string.Equals(word.Text.Trim(), "open", StringComparison.OrdinalIgnoreCase)
                ? double.PositiveInfinity
                : r.Number("ohms", TankLimit.Ohms);
            if (r["ohms"] is null && r["needle"] is null)
            {
                r.Faults.Add(r.Path, "Neither ohms nor needle", "one of them or both; \"open\" for a sender that shows no end of ohms", "Write { \"litres\": 10, \"ohms\": 180, \"needle\": 0.2 }.");
            }

            return new SenderReading(TankUnits.CubicMetres(r.Needed("litres", TankLimit.Litres)), ohms, r.Number("needle", TankLimit.Needle));
        }),
    ];

    private int? Tank(ObjectReader reader)
    {
        if (reader.Text("tank", "left") is not { } name)
        {
            return tanks.Count > 0 ? 0 : null;
        }

        var index = tanks.Select((t, i) => (t, i)).Where(t => string.Equals(t.t.Name, name, StringComparison.Ordinal)).Select(t => (int?)t.i).FirstOrDefault();
        if (index is null)
        {
            var near = Spelling.Nearest(name, tanks.Select(t => t.Name));
            reader.Faults.Add(reader.At("tank"), $"There is no tank \"{name}\"", string.Join(", ", tanks.Select(t => $"\"{t.Name}\"")), near is null ? "Name one of the tanks." : $"Did you mean \"{near}\"?");
        }

        return index;
    }
}
