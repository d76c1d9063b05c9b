namespace Tickover.Workshop.Linkages.Parts;

/// <summary>A rod with a ball at either end.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="From">Number of the driving shaft.</param>
/// <param name="To">Number of the driven shaft.</param>
public sealed record RodPart(string Name, int From, int To) : LinkPart(Name, From, To)
{
    /// <summary>Number of the lever on the driving shaft, from 0.</summary>
    public required int FromLever { get; init; }

    /// <summary>Number of the lever on the driven shaft.</summary>
    public required int ToLever { get; init; }

    /// <summary>Centre to centre of the balls, mm.</summary>
    public required double LengthMillimetres { get; init; }

    /// <summary>Whether the length was not measured and is taken as the one that just drops on.</summary>
    public required bool IsFitted { get; init; }

    /// <summary>How it is set; null for a rod of fixed length.</summary>
    public RodThread? Thread { get; init; }

    /// <summary>Free movement of a ball in its socket, mm, at each end.</summary>
    public required double PlayMillimetres { get; init; }
}
