using Tickover.Reports.Tanks;
using Tickover.Workshop.Tanks;

namespace Tickover.Web.Tanks;

/// <summary>What of a set of tanks is looked at, and where.</summary>
public sealed record TankPlace
{
    /// <summary>The tanks.</summary>
    public required TankAnalysis Analysis { get; init; }

    /// <summary>Address of the page without what is asked of it.</summary>
    public required string Address { get; init; }

    /// <summary>Where Back leads, and its word.</summary>
    public required (string Address, string Word) Back { get; init; }

    /// <summary>Where the document of a visit is replaced; null without a visit.</summary>
    public string? Replace { get; init; }

    /// <summary>Where a tank of a visit is sketched; null without a visit.</summary>
    public string? Sketch { get; init; }

    /// <summary>Fuel in all tanks, l.</summary>
    public double Litres { get; init; }

    /// <summary>How much the nose is up, per cent.</summary>
    public double NoseUp { get; init; }

    /// <summary>How much the left side is up, per cent.</summary>
    public double LeftUp { get; init; }

    /// <summary>What the tanks hold, l.</summary>
    public double FullLitres => Analysis.Table.Count > 0 ? Analysis.Table[^1].Litres : 0;

    /// <summary>The picture.</summary>
    /// <param name="size">For a wide page or for a phone.</param>
    /// <returns>What to draw.</returns>
    public TankView View(Reports.Mixture.PictureSize size) => new()
    {
        Analysis = Analysis,
        Litres = Litres,
        NoseUp = NoseUp,
        LeftUp = LeftUp,
        Size = size,
        IdPrefix = $"tank-{size}".ToLowerInvariant(),
    };
}
