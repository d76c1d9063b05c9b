using System.CommandLine;
using System.Globalization;
using Tickover.Workshop.JetChoice;

namespace Tickover.Cli.Input;

/// <summary>What jets are chosen from and what they should do: shelf and targets.</summary>
/// <param name="terminal">Gives the standard input.</param>
internal sealed class ChoiceInput(Terminal terminal)
{
    private readonly Option<string?> _shelf = new("--shelf")
    {
        Description = "Jets in stock, JSON (docs/jet-choice.md). Without one only the sizes sold are chosen from.",
        HelpName = "SHELF",
    };

    private readonly Option<string[]> _target = new("--target")
    {
        Description = "Another target of λ for a regime: idle=0.82..0.88; also progression, cruise, \"full load\". May be repeated.",
        HelpName = "REGIME=λ..λ",
    };

    /// <summary>Adds the options to a command.</summary>
    /// <param name="command">The command.</param>
    public void AddTo(Command command)
    {
        command.Add(_shelf);
        command.Add(_target);
    }

    /// <summary>Reads them.</summary>
    /// <param name="parsed">The command line.</param>
    /// <returns>The settings, or what is wrong.</returns>
    public Answer<JetChoiceSettings> Read(ParseResult parsed)
    {
        var instead = new Dictionary<string, (double, double)>(StringComparer.Ordinal);
        foreach (var text in parsed.GetValue(_target) ?? [])
        {
            if (Target(text) is not { } target)
            {
                return Answer<JetChoiceSettings>.No(
                    $"--target {text}: a regime ({string.Join(", ", JetTargets.Regimes)}), = and two λ from 0.6 to 1.3, the richer first, such as idle=0.82..0.88.");
            }

            instead[target.Regime] = (target.Richest, target.Leanest);
        }

        var targets = new JetTargets(instead);
        if (parsed.GetValue(_shelf) is not { } path)
        {
            return new JetChoiceSettings { Targets = targets };
        }

        var read = CarFile.Read(path, terminal);
        if (!read.Good)
        {
            return Answer<JetChoiceSettings>.No(read.Complaint);
        }

        var (shelf, faults) = ShelfDocument.Read(read.Value);
        return shelf is null
            ? Answer<JetChoiceSettings>.No($"{path} cannot be used:{Environment.NewLine}{string.Join(Environment.NewLine, faults)}")
            : new JetChoiceSettings { Shelf = shelf, Targets = targets };
    }

    private static (string Regime, double Richest, double Leanest)? Target(string text)
    {
        var parts = text.Split('=', 2, StringSplitOptions.TrimEntries);
        var ends = parts.Length == 2 ? parts[1].Split("..", StringSplitOptions.TrimEntries) : [];
        return ends.Length == 2 && JetTargets.Regimes.Contains(parts[0], StringComparer.Ordinal)
            && Number(ends[0]) is { } rich && Number(ends[1]) is { } lean && rich < lean
            ? (parts[0], rich, lean)
            : null;
    }

    private static double? Number(string text) =>
        double.TryParse(text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) && value is >= 0.6 and <= 1.3 ? value : null;
}
