using Tickover.Workshop.Tanks.Sketching;

namespace Tickover.Web.Tanks;

/// <summary>A sketch on its page.</summary>
public sealed record SketchPlace
{
    /// <summary>The sketch as asked for.</summary>
    public required SketchQuery Query { get; init; }

    /// <summary>What comes of it.</summary>
    public required SketchAnswer Answer { get; init; }

    /// <summary>Address of the page without a sketch.</summary>
    public required string Page { get; init; }

    /// <summary>Where Back leads, and its word.</summary>
    public required (string Address, string Word) Back { get; init; }

    /// <summary>What the visit's page says of the car; empty without a visit.</summary>
    public string Car { get; init; } = "";

    /// <summary>Where a tank worksheet of the visit is kept; null without a visit.</summary>
    public string? KeepAt { get; init; }

    /// <summary>The visit's tank document; null where none is kept.</summary>
    public string? Kept { get; init; }

    /// <summary>What the kept document is called.</summary>
    public string KeptName { get; init; } = "";

    /// <summary>The sketch.</summary>
    public OutlineSketch Sketch => Query.Sketch;

    /// <summary>The tank; null while something is missing or wrong.</summary>
    public SketchedTank? Tank => Query.Problems.Count == 0 ? Answer.Tank : null;

    /// <summary>The tanks of the kept document, and whether each can be sketched on.</summary>
    public IReadOnlyList<(string Name, bool IsOutline)> KeptTanks => field ??= Kept is null ? [] : SketchDocument.Tanks(Kept);

    /// <summary>Whether keeping replaces a tank of the kept document.</summary>
    public bool Replaces => KeptTanks.Any(t => string.Equals(t.Name, TankName, StringComparison.Ordinal));

    /// <summary>What the tank is called once kept.</summary>
    public string TankName => Sketch.Name.Length > 0 ? Sketch.Name : "tank";
}
