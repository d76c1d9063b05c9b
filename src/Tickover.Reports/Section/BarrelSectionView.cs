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

    /// <summary>Sizes on trial by key, as shown, such as "55"; the drawing then says "50 → 55".</summary>
    public IReadOnlyDictionary<string, string> TrialSizes { get; init; } = new Dictionary<string, string>(StringComparer.Ordinal);

    /// <summary>Where choosing a part leads, by its key; null leaves that to the page's script.</summary>
    public Func<string, string>? PartAddress { get; init; }

    /// <summary>Begins every id in the drawing; must differ between drawings on one page. Letters, digits, hyphens.</summary>
    public string IdPrefix { get; init; } = "section";

    internal CarBarrel Barrel =>
        Car.Barrels.FirstOrDefault(b => b.Number == BarrelNumber)
        ?? throw new InvalidOperationException($"The car has barrels 1 to {Car.Barrels.Count}, not {BarrelNumber}.");
}
