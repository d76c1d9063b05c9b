using Tickover.Reports.Mixture;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Reports.Section;

/// <summary>What is to be shown of a barrel cut open, and how.</summary>
public sealed record BarrelSectionView
{
    /// <summary>The car.</summary>
    public required Car Car { get; init; }

    /// <summary>The barrel, from 1.</summary>
    public required int BarrelNumber { get; init; }

    /// <summary>The size.</summary>
    public PictureSize Size { get; init; } = PictureSize.Full;

    /// <summary>Plate opening from seated, degrees, 0 to 90; zero is the seated plate.</summary>
    public double ThrottleDegrees { get; init; }

    /// <summary>The computed point whose well level and flows are drawn; null draws the engine at rest.</summary>
    public BarrelPoint? Point { get; init; }

    /// <summary>Key of the part chosen, such as <c>barrel.mainJet</c>; null for none.</summary>
    public string? SelectedKey { get; init; }

    /// <summary>The car as it would be; null for no trial. It is drawn instead, and what differs says "50 → 55".</summary>
    public Car? Trial { get; init; }

    /// <summary>Sizes to write instead of the car's own, by a part's key, such as what a whole set has; null for the car's own.</summary>
    public IReadOnlyDictionary<string, string>? Sizes { get; init; }

    /// <summary>Keys of parts to be marked, such as those that differ over a set; empty for none.</summary>
    public IReadOnlyCollection<string> Marked { get; init; } = [];

    /// <summary>Where choosing a part leads, by its key; null leaves that to the page's script.</summary>
    public Func<string, string>? PartAddress { get; init; }

    /// <summary>Begins every id in the drawing; must differ between drawings on one page. Letters, digits, hyphens.</summary>
    public string IdPrefix { get; init; } = "section";

    /// <summary>The barrel as fitted.</summary>
    internal CarBarrel Fitted => Find(Car);

    /// <summary>The barrel drawn: on trial where there is one.</summary>
    internal CarBarrel Barrel => Find(Trial ?? Car);

    private CarBarrel Find(Car car) =>
        car.Barrels.FirstOrDefault(b => b.Number == BarrelNumber)
        ?? throw new InvalidOperationException($"The car has barrels 1 to {car.Barrels.Count}, not {BarrelNumber}.");
}
