using Tickover.Workshop.Cars;

namespace Tickover.Workshop.StripDown.Wear;

/// <summary>What is wrong with a carburettor's body on a sheet of wear.</summary>
internal static class WearBodyFaults
{
    /// <summary>All that is wrong.</summary>
    /// <param name="w">The sheet as written.</param>
    /// <param name="c">The body.</param>
    /// <param name="at">Its path.</param>
    /// <returns>The faults.</returns>
    public static IEnumerable<Fault> Of(WrittenWear w, WrittenWearBody? c, string at)
    {
        if (string.IsNullOrWhiteSpace(c?.Where))
        {
            return [new Fault(at, "It does not say which carburettor it is", "\"where\": \"front\"", "Write it as the barrels do.")];
        }

        return w.Barrels!.Any(b => string.Equals(b?.Carburettor?.Trim(), c.Where.Trim(), StringComparison.Ordinal))
            ? [.. (c.Flange ?? []).SelectMany((g, i) => Gap(g, $"{at}.flange[{i}]")), .. c.Needle is { } needle ? Needle(needle, $"{at}.needle") : []]
            : [new Fault($"{at}.where", $"No barrel is in a carburettor \"{c.Where}\"", "a name the barrels use", "Write the same name in both places.")];
    }

    private static IEnumerable<Fault> Gap(WrittenFlangeGap? g, string at) => g is { Gap: not null, Span: not null }
        ? SheetText.Figures($"{at}.", ("gap", g.Gap, 0, 2, "mm"), ("span", g.Span, 2, 300, "mm"), ("land", g.Land, 1, 50, "mm"))
        : [new Fault(at, "Gap or span is missing", "\"gap\": 0.1, \"span\": 45 (mm)", "Lay a straight edge over the flange: the widest feeler, and the length over which light is seen.")];

    private static List<Fault> Needle(WrittenNeedle n, string at)
    {
        var isTimed = n.Drops is not null || n.Fall is not null;
        if (!isTimed && n.Hold is null)
        {
            return [new Fault(at, "Nothing was measured of it", "\"drops\" and \"seconds\", or \"fall\", \"tube\" and \"seconds\", or \"hold\"", "Count drops under a head, time the fall in a tube, or hold a hand vacuum on it.")];
        }

        List<Fault> faults = [.. SheetText.Figures($"{at}.", ("drops", n.Drops, 0, 2000, "drops"), ("fall", n.Fall, 0, 2000, "mm"), ("tube", n.Tube, 1, 50, "mm"), ("head", n.Head, 50, 20_000, "mm"), ("hold", n.Hold, 0, 3600, "s"))];
        if (isTimed && !(n.Seconds is >= 5 and <= 86_400))
        {
            faults.Add(new Fault($"{at}.seconds", n.Seconds is { } seconds ? SheetText.Line($"{seconds} s") : "The time is missing", "5 s to a day", "Time it again, for a minute or more."));
        }

        if (n is { Fall: not null, Tube: null })
        {
            faults.Add(SheetText.Missing($"{at}.tube", "The bore of the tube", "\"tube\": 6 (mm)"));
        }

        return faults;
    }
}
