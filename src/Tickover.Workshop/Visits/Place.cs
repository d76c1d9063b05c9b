namespace Tickover.Workshop.Visits;

/// <summary>What a reading is taken of: a kind and, beyond the car itself, its number or name.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Name">Number or name, such as "3" or "left"; empty for the car.</param>
public readonly record struct Place(PlaceKind Kind, string Name)
{
    /// <summary>The longest name.</summary>
    public const int LongestName = 40;

    /// <summary>The car as a whole.</summary>
    public static readonly Place WholeCar = new(PlaceKind.Car, "");

    /// <summary>Reads what <see cref="ToString"/> writes; never throws.</summary>
    /// <param name="text">Text such as "barrel:3".</param>
    /// <returns>The place, or null.</returns>
    public static Place? Read(string? text)
    {
        var parts = (text ?? "").Split(':', 2);
        if (!Enum.TryParse<PlaceKind>(parts[0], ignoreCase: true, out var kind) || !Enum.IsDefined(kind) || char.IsAsciiDigit(parts[0][0]))
        {
            return null;
        }

        var name = parts.Length > 1 ? parts[1].Trim() : "";
        return name.Length > LongestName || (name.Length == 0) != (kind == PlaceKind.Car) ? null : new Place(kind, name);
    }

    /// <summary>The place as it is stored, such as "barrel:3" or "car".</summary>
    /// <returns>The text.</returns>
    public override string ToString() => string.IsNullOrEmpty(Name) ? Kind.ToString().ToLowerInvariant() : $"{Kind.ToString().ToLowerInvariant()}:{Name}";

    /// <summary>The place as it is said, such as "Barrel 3" or "Left tank".</summary>
    /// <returns>The words.</returns>
    public string Words() => Kind switch
    {
        PlaceKind.Car => "The car",
        PlaceKind.Run => Capital(Name),
        PlaceKind.Tank when !char.IsAsciiDigit(Name[0]) => $"{Capital(Name)} tank",
        _ => $"{Kind} {Name}",
    };

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
