namespace Tickover.Workshop.StripDown.Wear;

/// <summary>Judges what was measured on stripped carburettors, item by item and barrel against barrel.</summary>
public static class WearJudge
{
    private const double Percent = 100;

    /// <summary>Judges all of a sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <returns>What it comes to.</returns>
    public static WearAnswer Judge(WearSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var idle = new WearIdle(sheet);
        var (spindles, plates, bodies) = (new SpindleJudge(sheet, idle), new PlateJudge(sheet, idle), new BodyJudge(sheet, idle));
        var angles = sheet.Barrels.Where(b => b.ClosedDegrees is not null).Select(b => b.ClosedDegrees!.Value).ToList();
        var middle = angles.Count > 0 ? Middle.Of(angles) : (double?)null;
        var own = sheet.Barrels.ToDictionary(b => b, b => (IReadOnlyList<WearItem>)[.. b.Bushes.Select(f => spindles.Of(b, f)), .. plates.Of(b, middle)]);
        var shots = Shots(sheet);
        var tubes = new TubeJudge(sheet).All().ToList();
        var ofBodies = sheet.Bodies.SelectMany(b => (IEnumerable<WearItem>)[.. b.Flange.Select(g => bodies.Of(b, g)), .. b.Needle is { } needle ? [bodies.Of(b, needle)] : (WearItem[])[]]).ToList();
        var all = own.Values.SelectMany(v => v).Concat(shots).Concat(tubes).Concat(ofBodies).OrderByDescending(i => i.Grade).ThenByDescending(i => i.Share ?? 0).ToList();
        var barrels = Barrels(sheet, idle, bodies, own, [.. shots, .. tubes]);
        return new WearAnswer(all, barrels, Verdict(all, barrels));
    }

    private static List<WearItem> Shots(WearSheet sheet)
    {
        var measured = sheet.Barrels.Where(b => b.ShotMillilitres is not null).ToList();
        if (measured.Count == 0)
        {
            return [];
        }

        var middle = Middle.Of(measured.Select(b => b.ShotMillilitres!.Value));
        return [.. measured.Select(b =>
        {
            var off = middle > 0 ? (b.ShotMillilitres!.Value / middle) - 1 : 0;
            var fits = b.ShotMillilitres > 0 && Math.Abs(Percent * off) <= sheet.Limits.Pump;
            return new WearItem
            {
                Where = $"barrel {b.Where}",
                Kind = WearKind.Pump,
                Grade = fits ? WearGrade.Good : WearGrade.Bad,
                Measured = SheetText.Line($"{b.ShotMillilitres:0.00} ml a stroke, {Percent * off:+0;−0;0} % off the middle"),
                Limit = SheetText.Line($"within {sheet.Limits.Pump:0} % ({(sheet.Limits.Pump == new WearLimits().Pump ? "common practice" : "written in the sheet")})"),
                Words = fits ? "Like the rest of the set." : off < 0 ? "Too little: pump jet or its ball blocked, a hard diaphragm or piston, a back-bleed that is too large." : "Too much: a pump jet too large, or the rest of the set gives too little.",
            };
        })];
    }

    private static List<WearBarrel> Barrels(WearSheet sheet, WearIdle idle, BodyJudge bodies, Dictionary<WornBarrel, IReadOnlyList<WearItem>> own, IReadOnlyList<WearItem> others)
    {
        var leaks = sheet.Barrels.Select(b => own[b].Sum(i => i.KilogramsAnHour ?? 0) + Under(sheet, bodies, b)).ToList();
        var middle = Middle.Of(leaks);
        return [.. sheet.Barrels.Select((b, i) =>
        {
            var tightest = sheet.Barrels.Zip(leaks).Where(p => string.Equals(p.First.Carburettor, b.Carburettor, StringComparison.Ordinal)).Min(p => p.Second);
            var worst = own[b].Concat(others.Where(o => string.Equals(o.Where, $"barrel {b.Where}", StringComparison.Ordinal))).Select(x => x.Grade).DefaultIfEmpty(WearGrade.Good).Max();
            var plate = idle.PlateDegrees(b, leaks[i]);
            return new WearBarrel(b, leaks[i], idle.Share(leaks[i]), plate, leaks[i] - middle, worst, WearWords.Barrel(sheet, (leaks[i], idle.Share(leaks[i]), plate), idle.PlateDegrees(b, 0), leaks[i] - tightest));
        })];
    }

    // air under a flange that names no barrel goes to those of the carburettor alike; what a gasket takes up does not count
    private static double Under(WearSheet sheet, BodyJudge bodies, WornBarrel b) =>
        sheet.Bodies.Where(body => string.Equals(body.Where, b.Carburettor, StringComparison.Ordinal)).SelectMany(body => body.Flange).Where(g => g.GapMillimetres > sheet.Limits.Flange).Sum(g =>
            g.Barrel.Length == 0 ? bodies.Air(g) / sheet.Barrels.Count(o => string.Equals(o.Carburettor, b.Carburettor, StringComparison.Ordinal))
            : string.Equals(g.Barrel, b.Where, StringComparison.Ordinal) ? bodies.Air(g) : 0);

    private static string Verdict(IReadOnlyList<WearItem> items, IReadOnlyList<WearBarrel> barrels)
    {
        var bad = items.Where(i => i.Grade == WearGrade.Bad).ToList();
        var leaky = barrels.MaxBy(b => b.Share)!;
        var most = SheetText.Line($"Most air leaks at barrel {leaky.Barrel.Where}: {leaky.KilogramsAnHour:0.00} kg/h, {Percent * leaky.Share:0.#} % of its idle air.");
        return bad.Count == 0 ? $"Nothing must be renewed. {most}"
            : $"{(bad.Count == 1 ? "One thing must not stay as it is" : $"{bad.Count} things must not stay as they are")}, first {WearWords.Name(bad[0].Kind)} of {bad[0].Where}. {most}";
    }
}
