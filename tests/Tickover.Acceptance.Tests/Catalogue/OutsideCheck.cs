namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>One figure from outside and our own for the same thing.</summary>
public sealed record OutsideCheck
{
    /// <summary>The usual allowance for a textbook's rounded answer, as a part of it.</summary>
    public const double TextbookTolerance = 0.005;

    /// <summary>What is looked at, such as "choke for 5 kg/min at 90 m/s".</summary>
    public required string Subject { get; init; }

    /// <summary>Which quantity of it.</summary>
    public required string Quantity { get; init; }

    /// <summary>Author, title, edition, example or table.</summary>
    public required string Source { get; init; }

    /// <summary>What kind of figure it is.</summary>
    public required SourceKind Kind { get; init; }

    /// <summary>The figure from outside, in <see cref="Unit"/>; not zero.</summary>
    public required double Published { get; init; }

    /// <summary>Unit of both figures; "1" for a plain number.</summary>
    public required string Unit { get; init; }

    /// <summary>Allowed difference as a part of the outside figure.</summary>
    public double Tolerance { get; init; } = TextbookTolerance;

    /// <summary>Computes our figure.</summary>
    public required Func<double> Ours { get; init; }

    /// <summary>What a reader must know to judge the difference; may be empty.</summary>
    public string Note { get; init; } = "";

    /// <summary>Name of the test case.</summary>
    public string Key => $"{Subject}: {Quantity} [{Source}]";

    /// <summary>Difference of our figure as a part of the outside one.</summary>
    /// <param name="ours">Our figure.</param>
    /// <returns>1; not a number stays one, and fails.</returns>
    public double Difference(double ours) => ours / Published - 1;
}
