using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Mixture;

/// <summary>One line of the working: a formula, the numbers put in, the answer.</summary>
public sealed record WorkingStep
{
    /// <summary>What is worked out, in the trade's words.</summary>
    public required string Title { get; init; }

    /// <summary>The formula in symbols.</summary>
    public required string Formula { get; init; }

    /// <summary>The formula with numbers put in, with units.</summary>
    public required string NumbersIn { get; init; }

    /// <summary>The answer with its unit, as shown.</summary>
    public required string Answer { get; init; }

    /// <summary>Page and number of the equation in docs/physics, such as "metering (3)".</summary>
    public required string Equation { get; init; }

    /// <summary>Inputs that come from the car's document or its defaults.</summary>
    public required IReadOnlyList<Figure> Inputs { get; init; }

    /// <summary>Source of the formula, or the reason for the step; may be empty.</summary>
    public string Note { get; init; } = "";
}
