using System.Text.Json;
using Tickover.Physics.Inspection;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Cars.Text;
using Tickover.Workshop.JetChoice;

namespace Tickover.Workshop.StripDown.Wear;

/// <summary>Reads a sheet of wear: JSON, format <c>tickover-wear-1</c>; docs/wear-document.md.</summary>
public static class WearDocument
{
    /// <summary>What the document's format says.</summary>
    public const string Format = "tickover-wear-1";

    private const double DropMillilitres = 0.02;            // petrol from a needle's seat (assumed)
    private const double UsualMicrometer = 0.01;            // ± mm, bore gauge and micrometer in practised hands (assumed)
    private const double UsualHead = 1000;                  // mm
    private const double UsualLand = 8;                     // mm
    private const double Hour = 3600;

    /// <summary>Reads a document; never throws for what somebody typed.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The sheet, or what is wrong, where, and what to do.</returns>
    public static (WearSheet? Sheet, IReadOnlyList<Fault> Faults) Read(string json)
    {
        var (written, fault) = SheetText.Read<WrittenWear>(json, Format, w => w.Format, ("sheet of wear", "wear"));
        if (written is null)
        {
            return (null, [fault!]);
        }

        var (car, carFaults) = SheetText.CarOf(written.Car);
        var (shelf, shelfFaults) = ShelfOf(written.Shelf);
        List<Fault> faults = [.. WearFaults.Of(written), .. carFaults, .. shelfFaults];
        if (faults.Count > 0)
        {
            return (null, faults);
        }

        var idle = car is null
            ? IdleFinder.Of(written.Engine!.Swept!.Value * 1e-6, written.IdleRpm!.Value, written.Engine.Depression!.Value * 1e3, written.IdleAir / Hour)
            : IdleFinder.Of(car, written.IdleRpm!.Value, written.IdleAir / Hour);
        return idle is null
            ? (null, [new Fault("idleRpm", SheetText.Line($"By the model no plate up to 13° open makes this car idle so at {written.IdleRpm} rpm"), "a speed and an airflow it idles at", "Check idle speed, idle air and the car's engine figures.")])
            : (Make(written, idle, car, shelf), []);
    }

    private static (JetShelf? Shelf, IReadOnlyList<Fault> Faults) ShelfOf(JsonElement? element)
    {
        if (element is not { ValueKind: JsonValueKind.Object } written)
        {
            return (null, []);
        }

        var (shelf, faults) = ShelfDocument.Read(written.GetRawText());
        return (shelf, [.. faults.Select(f => new Fault("shelf", f, "a shelf as docs/jet-choice.md tells", "Write it as there."))]);
    }

    private static WearSheet Make(WrittenWear w, IdlePoint idle, Car? car, JetShelf? shelf) => new()
    {
        Name = string.IsNullOrWhiteSpace(w.Name) ? "Wear" : w.Name.Trim(),
        Idle = idle,
        Micrometer = w.Micrometer ?? UsualMicrometer,
        Limits = w.Limits ?? new WearLimits(),
        Car = car,
        Shelf = shelf,
        Bodies = [.. (w.Carburettors ?? []).Select(c => new WornBody(c!.Where!.Trim(), [.. (c.Flange ?? []).Select(g => new FlangeGap(g!.Gap!.Value, g.Span!.Value, g.Land ?? UsualLand, g.Barrel?.Trim() ?? ""))], Needle(c.Needle)))],
        Barrels = [.. w.Barrels!.Select(b => Barrel(b!))],
    };

    private static NeedleTest? Needle(WrittenNeedle? n)
    {
        if (n is null)
        {
            return null;
        }

        var head = n.Head ?? UsualHead;
        return n switch
        {
            { Drops: { } drops, Seconds: { } seconds } => new NeedleTest(Hour * 1e6 * SeepingValve.ByDrops(drops, seconds, DropMillilitres * 1e-6), head, n.Hold, SheetText.Line($"{drops:0.#} drops in {seconds:0} s under {head:0} mm")),
            { Fall: { } fall, Tube: { } tube, Seconds: { } seconds } => new NeedleTest(Hour * 1e6 * SeepingValve.ByFall(fall * 1e-3, seconds, tube * 1e-3), head, n.Hold, SheetText.Line($"{fall:0.#} mm in {seconds:0} s in a tube of {tube:0.#} mm")),
            _ => new NeedleTest(null, head, n.Hold, SheetText.Line($"held a vacuum for {n.Hold:0} s")),
        };
    }

    private static WornBarrel Barrel(WrittenWearBarrel b) => Plate(b, new WornBarrel
    {
        Where = b.Where!.Trim(),
        Carburettor = b.Carburettor!.Trim(),
        Bore = b.Bore!.Value,
        BoreAcross = b.BoreAcross,
        Bushes = [.. (b.Spindle ?? []).Select((s, i) => new BushFit(s!.End?.Trim() ?? (i == 0 ? "outer" : "inner"), s.Spindle!.Value, s.Bush!.Value, s.Length!.Value, s.Sealed ?? false))],
        ShotMillilitres = b.Pump is { Millilitres: { } volume, Strokes: { } strokes } ? volume / strokes : null,
        StopTouches = b.StopTouches,
    });

    private static WornBarrel Plate(WrittenWearBarrel b, WornBarrel barrel) => barrel with
    {
        ClosedDegrees = b.Plate is { LongAxis: { } axis } ? 180 / Math.PI * PlateLight.ClosedAngle(barrel.Bore, axis) : b.Plate?.Angle,
        LightShare = b.Plate?.Light / 100,
        LightGap = b.Plate?.Gap ?? 0,
        TubeStamp = b.Tube?.Stamp?.Trim() ?? "",
        TubeRows = [.. (b.Tube?.Holes ?? []).Select(h => HoleText.Row(h!)!).OrderBy(r => r.DepthMetres)],
    };
}
