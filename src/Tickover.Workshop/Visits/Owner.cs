namespace Tickover.Workshop.Visits;

/// <summary>Someone who owns cars that come here.</summary>
public sealed record Owner : RecordItem<Owner>
{
    /// <summary>Name.</summary>
    public string Name { get; init; } = "";

    /// <summary>Telephone number.</summary>
    public string Telephone { get; init; } = "";

    /// <summary>Address for e-mail.</summary>
    public string Email { get; init; } = "";

    /// <summary>Postal address.</summary>
    public string Address { get; init; } = "";

    /// <summary>What to remember.</summary>
    public string Note { get; init; } = "";
}
