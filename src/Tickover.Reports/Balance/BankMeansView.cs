namespace Tickover.Reports.Balance;

/// <summary>What the picture of the banks shows.</summary>
/// <param name="Banks">Name of each bank and its barrels.</param>
/// <param name="LimitPart">By so much may the means of the banks lie apart, as a part of their mean.</param>
public sealed record BankMeansView(IReadOnlyList<(string Name, IReadOnlyList<double> Values)> Banks, double LimitPart)
{
    /// <summary>Begins every id inside; letters, digits and hyphens.</summary>
    public string IdPrefix { get; init; } = "banks";
}
