namespace Tickover.Web.Papers;

/// <summary>What stood in a form that was not kept, and what is wrong with it, so that the page shows it again.</summary>
/// <param name="form">The form sent; null where the page is shown for the first time.</param>
/// <param name="faults">What is wrong, by the name of the field.</param>
/// <param name="address">Where the form was sent.</param>
public sealed class TypedForm(IFormCollection? form = null, IReadOnlyDictionary<string, string>? faults = null, string address = "")
{
    /// <summary>A form that nobody has typed in yet.</summary>
    public static TypedForm Blank { get; } = new();

    /// <summary>How many fields are wrong.</summary>
    public int Count => faults?.Count ?? 0;

    /// <summary>What was typed, or what stands in the record.</summary>
    public string Text(string name, string? otherwise) => form is not null && form.ContainsKey(name) ? form[name].ToString() : otherwise ?? "";

    /// <summary>What is wrong with a field; null where nothing is.</summary>
    public string? Fault(string name) => faults?.GetValueOrDefault(name);

    /// <summary>This form where it was sent for that item, else a blank one: a page may hold a form for each of many items.</summary>
    public TypedForm For(string id) => form is not null && Guid.TryParse(form["id"], out var sent) && Guid.TryParse(id, out var asked) && sent == asked ? this : Blank;

    /// <summary>Whether it was sent there for an item not kept yet.</summary>
    public bool IsNewAt(string asked) => form is not null && form["version"] == "0" && string.Equals(address, asked, StringComparison.Ordinal);
}
