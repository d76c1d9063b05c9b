using System.CommandLine;
using Tickover.Workshop.Calibration;

namespace Tickover.Cli.Input;

/// <summary>What the mixture is foretold from: a fit to readings, or the priors alone.</summary>
/// <param name="terminal">Gives the standard input.</param>
internal sealed class ForecastInput(Terminal terminal)
{
    private readonly Option<string?> _fit = new("--fit")
    {
        Description = "A fit to this car's readings (tickover fit). Without one the model's own word is taken, with its wide band.",
        HelpName = "FIT",
    };

    /// <summary>Adds the option to a command.</summary>
    /// <param name="command">The command.</param>
    public void AddTo(Command command) => command.Add(_fit);

    /// <summary>Reads the runs of the fit asked for.</summary>
    /// <param name="parsed">The command line.</param>
    /// <returns>The runs, none where no fit is named, or what is wrong.</returns>
    public Answer<ForecastRuns> Read(ParseResult parsed)
    {
        if (parsed.GetValue(_fit) is not { } path)
        {
            return new ForecastRuns([]);
        }

        var text = CarFile.Read(path, terminal);
        if (!text.Good)
        {
            return Answer<ForecastRuns>.No(text.Complaint);
        }

        var (runs, fault) = FitDocument.Read(text.Value);
        return runs is null ? Answer<ForecastRuns>.No($"{path}: {fault}") : new ForecastRuns(runs);
    }
}
