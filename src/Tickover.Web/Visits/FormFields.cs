using System.Globalization;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Visits;

/// <summary>Reads the fields of a form; what cannot be read is gathered in words, never thrown.</summary>
/// <param name="form">The form.</param>
public sealed class FormFields(IFormCollection form)
{
    private const NumberStyles Plain = NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite | NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;

    private readonly List<string> _problems = [];
    private readonly Dictionary<string, string> _faults = new(StringComparer.Ordinal);

    /// <summary>What could not be read.</summary>
    public IReadOnlyList<string> Problems => _problems;

    /// <summary>What could not be read, by the name of the field, to be told beside it.</summary>
    public IReadOnlyDictionary<string, string> Faults => _faults;

    /// <summary>The key of the entry: chosen by the page or the outbox; a new one where there is none.</summary>
    public Guid Key { get; } = Guid.TryParse(form["key"], out var key) && key != Guid.Empty ? key : Guid.NewGuid();

    /// <summary>Version of the item that the page showed; 0 for a new one.</summary>
    public int Version => int.TryParse(form["version"], NumberStyles.None, CultureInfo.InvariantCulture, out var version) ? version : 0;

    /// <summary>The form itself.</summary>
    public IFormCollection Form => form;

    /// <summary>A text, trimmed, with line ends as they are kept.</summary>
    public string Text(string name) => form[name].ToString().Trim().ReplaceLineEndings("\n");

    /// <summary>A text that has to be there.</summary>
    public string Needed(string name, string complaint)
    {
        var text = Text(name);
        if (text.Length == 0)
        {
            Complain(name, complaint);
        }

        return text;
    }

    /// <summary>A day as the browser sends it, or as 24.12.2026 and 24/12/2026; null where the field is empty.</summary>
    public DateOnly? Day(string name, string label)
    {
        var text = Text(name);
        if (text.Length == 0)
        {
            return null;
        }

        if (DateOnly.TryParseExact(text, ["yyyy-MM-dd", "d.M.yyyy", "d/M/yyyy"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var day))
        {
            return day;
        }

        Complain(name, $"{label}: \"{text}\" is no day. Write it as 2026-12-24.");
        return null;
    }

    /// <summary>A number with comma or point; null where the field is empty.</summary>
    public decimal? Number(string name, string label)
    {
        var text = Text(name).Replace(',', '.');
        if (text.Length == 0)
        {
            return null;
        }

        if (decimal.TryParse(text, Plain, CultureInfo.InvariantCulture, out var number) && Math.Abs(number) < 100_000_000m)
        {
            return number;
        }

        Complain(name, $"{label}: \"{text}\" is no number. Write digits, with comma or point.");
        return null;
    }

    /// <summary>A whole number; null where the field is empty.</summary>
    public int? Whole(string name, string label)
    {
        var number = Number(name, label);
        if (number is { } whole && whole != Math.Floor(whole))
        {
            Complain(name, $"{label}: write a whole number.");
        }

        return number is { } value && Math.Abs(value) <= int.MaxValue ? (int)value : null;
    }

    /// <summary>One of a few words.</summary>
    public T Choice<T>(string name, T otherwise)
        where T : struct, Enum
    {
        var text = Text(name);
        if (text.Length == 0)
        {
            return otherwise;
        }

        if (Enum.TryParse<T>(text, ignoreCase: true, out var value) && Enum.IsDefined(value) && !char.IsAsciiDigit(text[0]))
        {
            return value;
        }

        Complain(name, $"\"{text}\" is not among the choices. Choose again.");
        return otherwise;
    }

    /// <summary>The identifier of another item; null where none is chosen.</summary>
    public Id<T>? Named<T>(string name) => Workshop.Visits.Id.Read<T>(Text(name));

    /// <summary>The identifier for a new item: the one the page chose, so that sending twice makes one.</summary>
    public Id<T> NewId<T>() => Named<T>("id") ?? new Id<T>(Key);

    /// <summary>Whether a box is ticked.</summary>
    public bool Ticked(string name) => form[name].Count > 0 && form[name] != "false";

    /// <summary>Adds a complaint about a field.</summary>
    public void Complain(string name, string problem)
    {
        _faults.TryAdd(name, problem);
        Complain(problem);
    }

    /// <summary>Adds a complaint.</summary>
    public void Complain(string problem) => _problems.Add(problem);
}
