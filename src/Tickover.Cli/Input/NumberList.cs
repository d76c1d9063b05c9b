using System.Globalization;
using Tickover.Workshop.Cars;

namespace Tickover.Cli.Input;

/// <summary>Reads a speed or an opening, several, or a range: "4000", "1000; 2500; 4000", "1000..6000", "1000..6000:250".</summary>
internal sealed class NumberList
{
    /// <summary>The engine's speed: cranking is slower than any survey, and no engine of this kind goes beyond the upper end.</summary>
    public static readonly NumberList Speeds = new("--rpm", "rpm", Measure.Speed, 60 / (2 * Math.PI), 100, 15_000, 24);

    /// <summary>The plate's opening from seated. A car's own wide-open angle is checked later, when the car is known.</summary>
    public static readonly NumberList Openings = new("--throttle", "degrees", Measure.Angle, 180 / Math.PI, 0.1, 90, 16);

    private const int MostNumbers = 200;
    private const string Between = "..";

    private readonly string _option;
    private readonly string _unit;
    private readonly Measure _measure;
    private readonly double _perSi;
    private readonly double _smallest;
    private readonly double _largest;
    private readonly int _usualCount;

    private NumberList(string option, string unit, Measure measure, double perSi, double smallest, double largest, int usualCount) =>
        (_option, _unit, _measure, _perSi, _smallest, _largest, _usualCount) = (option, unit, measure, perSi, smallest, largest, usualCount);

    private string Allowed => string.Create(
        CultureInfo.InvariantCulture, $"Allowed: {_smallest:0.##} to {_largest:0.##} {_unit}, as one number, \"a; b; c\", or a range \"a..b\" or \"a..b:step\".");

    /// <summary>Reads the numbers.</summary>
    /// <param name="text">As typed; a decimal comma counts as a point.</param>
    /// <returns>The numbers rising and each once, or a complaint.</returns>
    public Answer<IReadOnlyList<double>> Read(string text)
    {
        var numbers = new SortedSet<double>();
        foreach (var part in text.Split(';', StringSplitOptions.TrimEntries))
        {
            var complaint = part.Contains(Between, StringComparison.Ordinal) ? Range(part, numbers) : One(part, numbers);
            if (complaint is not null)
            {
                return Answer<IReadOnlyList<double>>.No($"{_option} {text}: {complaint} {Allowed}");
            }
        }

        return numbers.Count > MostNumbers
            ? Answer<IReadOnlyList<double>>.No($"{_option} {text}: that is {numbers.Count} values, at most {MostNumbers}. Use a larger step.")
            : numbers.ToArray();
    }

    /// <summary>Reads exactly one number.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="number">The number.</param>
    /// <returns>Null, or a complaint.</returns>
    public string? ReadOne(string text, out double number)
    {
        var numbers = new SortedSet<double>();
        var complaint = One(text, numbers);
        number = numbers.Count == 1 ? numbers.Min : 0;
        return complaint is null
            ? null
            : string.Create(CultureInfo.InvariantCulture, $"{_option} {text}: {complaint} Allowed: {_smallest:0.##} to {_largest:0.##} {_unit}.");
    }

    private string? One(string text, SortedSet<double> numbers)
    {
        var complaint = Number(text, out var number);
        if (complaint is null)
        {
            numbers.Add(number);
        }

        return complaint;
    }

    private string? Range(string text, SortedSet<double> numbers)
    {
        var ends = text.Split(Between, 2, StringSplitOptions.TrimEntries);
        var lastAndStep = ends[1].Split(':', 2, StringSplitOptions.TrimEntries);
        var complaint = Number(ends[0], out var first) ?? Number(lastAndStep[0], out _);
        if (complaint is not null)
        {
            return complaint;
        }

        Number(lastAndStep[0], out var last);
        if (last <= first)
        {
            return "the range does not rise.";
        }

        var step = (last - first) / (_usualCount - 1);
        if (lastAndStep.Length == 2 && (!TryPlain(lastAndStep[1], out step) || step <= 0))
        {
            return $"'{lastAndStep[1]}' is no step above zero.";
        }

        // A step that leaves out the end by rounding alone still reaches it.
        const double Rounding = 1e-9;
        var count = Math.Min(Math.Floor((last - first) / step + Rounding), MostNumbers + 1);
        for (var i = 0; i <= count; i++)
        {
            numbers.Add(Math.Min(last, first + i * step));
        }

        return null;
    }

    private string? Number(string text, out double number)
    {
        if (!TryPlain(text, out number))
        {
            return text.Length == 0 ? "a number is missing." : $"'{text}' is not a number.";
        }

        return number < _smallest || number > _largest
            ? string.Create(CultureInfo.InvariantCulture, $"{number:0.###} {_unit} is out of range.")
            : null;
    }

    private bool TryPlain(string text, out double number)
    {
        if (FigureText.TryParse(Measure.Ratio, text, out number))
        {
            return true;
        }

        var good = FigureText.TryParse(_measure, text, out var si);
        // The way through rad/s costs the last digits; nobody reads a speed or an angle closer than this.
        const int Digits = 6;
        number = Math.Round(si * _perSi, Digits);
        return good;
    }
}
