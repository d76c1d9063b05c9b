using Tickover.Workshop.Cars;

namespace Tickover.Workshop.StripDown.Build;

/// <summary>Reads what bench settings are worked out from: JSON, format <c>tickover-build-1</c>; docs/build-document.md.</summary>
public static class BuildDocument
{
    /// <summary>What the document's format says.</summary>
    public const string Format = "tickover-build-1";

    private const double Hour = 3600;
    private const double UsualLambda = 0.9;                 // CO of some 3 %, common practice
    private const double UsualRodLimit = 0.1;               // mm, as free play of a ball (trade report 1.14, common practice)
    private const int Most = 24;

    /// <summary>Reads a document; never throws for what somebody typed.</summary>
    /// <param name="json">The text.</param>
    /// <returns>The sheet, or what is wrong, where, and what to do.</returns>
    public static (BuildSheet? Sheet, IReadOnlyList<Fault> Faults) Read(string json)
    {
        var (written, fault) = SheetText.Read<WrittenBuild>(json, Format, w => w.Format, ("sheet of bench settings", "build"));
        if (written is null)
        {
            return (null, [fault!]);
        }

        var (car, carFaults) = SheetText.CarOf(written.Car);
        List<Fault> faults = [.. Of(written), .. carFaults];
        if (faults.Count > 0)
        {
            return (null, faults);
        }

        return IdleFinder.Of(car!, written.IdleRpm!.Value, written.IdleAir / Hour) is { } idle
            ? (Make(written, car!, idle), [])
            : (null, [new Fault("idleRpm", SheetText.Line($"By the model no plate up to 13° open makes this car idle so at {written.IdleRpm} rpm"), "a speed and an airflow it idles at", "Check idle speed, idle air and the car's engine figures.")]);
    }

    private static BuildSheet Make(WrittenBuild w, Car car, IdlePoint idle) => new()
    {
        Name = string.IsNullOrWhiteSpace(w.Name) ? "Bench settings" : w.Name.Trim(),
        Car = car,
        Idle = idle,
        Lambda = w.Lambda ?? UsualLambda,
        StopArm = w.StopArm,
        StopPitch = w.StopPitch,
        RodArm = w.RodArm,
        RodLimit = w.RodLimit ?? UsualRodLimit,
        Rods = [.. (w.Rods ?? []).Select(r => new BuildRod(r!.Where!.Trim(), r.Length!.Value))],
    };

    private static IEnumerable<Fault> Of(WrittenBuild w)
    {
        if (w.IdleRpm is null)
        {
            yield return SheetText.Missing("idleRpm", "The idle speed", "\"idleRpm\": 850");
        }

        if (w.Car is null)
        {
            yield return SheetText.Missing("car", "The car", "\"car\": a car document (docs/car-document.md)");
        }

        foreach (var fault in SheetText.Figures(
            "", ("idleRpm", w.IdleRpm, 300, 2500, "rpm"), ("idleAir", w.IdleAir, 0.3, 40, "kg/h"), ("lambda", w.Lambda, 0.7, 1.1, ""), ("stopArm", w.StopArm, 3, 80, "mm"), ("stopPitch", w.StopPitch, 0.2, 2, "mm"), ("rodArm", w.RodArm, 5, 120, "mm"), ("rodLimit", w.RodLimit, 0.01, 2, "mm")))
        {
            yield return fault;
        }

        if (w.Rods is { Count: > Most })
        {
            yield return new Fault("rods", "Too many rods", SheetText.Line($"up to {Most}"), "Write those that are to be of one length.");
        }

        foreach (var (rod, i) in (w.Rods ?? []).Take(Most).Select((r, i) => (r, i)))
        {
            if (string.IsNullOrWhiteSpace(rod?.Where) || rod.Length is not (> 5 and < 1000))
            {
                yield return new Fault($"rods[{i}]", "Its name or its length is missing, or it is no length of a rod", "\"where\": \"front\", \"length\": 84.2 (mm, 5 to 1000)", "Measure between the middles of the balls.");
            }
        }
    }
}
