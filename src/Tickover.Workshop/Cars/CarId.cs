namespace Tickover.Workshop.Cars;

/// <summary>The name a car's document is filed under: small letters, digits and single hyphens, 1 to 64 characters.</summary>
/// <remarks>Its form keeps it from ever naming a place outside the shelf it is filed on.</remarks>
public sealed record CarId
{
    /// <summary>The longest name allowed.</summary>
    public const int MaximumLength = 64;

    private CarId(string text) => Text = text;

    /// <summary>The name, such as <c>larkfield-tern</c>.</summary>
    public string Text { get; }

    /// <summary>Reads a name; never throws.</summary>
    /// <param name="text">What somebody typed or an address holds.</param>
    /// <returns>The name, or null where its form is not allowed.</returns>
    public static CarId? Read(string? text)
    {
        if (text is null || text.Length is 0 or > MaximumLength || text[0] == '-' || text[^1] == '-')
        {
            return null;
        }

        return text.All(c => c is '-' || char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c)) ? new CarId(text) : null;
    }

    /// <summary>Makes a name out of a car's name: "Larkfield Osprey V8" becomes <c>larkfield-osprey-v8</c>.</summary>
    /// <param name="name">The car's name as people say it.</param>
    /// <returns>A name; <c>car</c> where nothing of the given name can be kept.</returns>
    public static CarId FromName(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var words = new string([.. name.ToLowerInvariant().Select(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) ? c : ' ')])
            .Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var joined = string.Join('-', words);
        var cut = joined.Length > MaximumLength ? joined[..MaximumLength].TrimEnd('-') : joined;
        return new CarId(cut.Length == 0 ? "car" : cut);
    }

    /// <inheritdoc/>
    public override string ToString() => Text;
}
