using System.CommandLine;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Tickover.Cli.Input;
using Tickover.Cli.Json;
using Tickover.Cli.Output;
using Tickover.Workshop.Cars;
using Tickover.Workshop.JetChoice;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover next</c>: the next reading that would settle most.</summary>
internal sealed class NextCommand : ExampledCommand
{
    private const int Shown = 4;
    private readonly Terminal _terminal;
    private readonly CarInput _car;
    private readonly ForecastInput _forecast;
    private readonly ChoiceInput _choice;
    private readonly Option<bool> _json = new("--json") { Description = "Print JSON (docs/schemas/next.schema.json)." };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it reads and writes.</param>
    public NextCommand(Terminal terminal)
        : base("next", "Says which reading would narrow the choice of jets most: speed, throttle, jets.", "tickover next samples/tern-2800.car.json")
    {
        _terminal = terminal;
        _car = new CarInput(terminal);
        _forecast = new ForecastInput(terminal);
        _choice = new ChoiceInput(terminal);
        _car.AddTo(this);
        _forecast.AddTo(this);
        _choice.AddTo(this);
        Add(_json);
        SetAction(RunAsync);
    }

    private async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        var (car, runs, how) = (_car.Read(parsed), _forecast.Read(parsed), _choice.Read(parsed));
        var complaint = car.Complaint ?? runs.Complaint ?? how.Complaint;
        var found = complaint is null
            ? await Progress.ShowAsync(_terminal, "Weighing readings", token => Weigh(car.Value!, runs.Value!, how.Value!, token), TimeProvider.System, cancellation)
            : Answer<NextDocument>.No(complaint);
        if (!found.Good)
        {
            await _terminal.Error.WriteLineAsync(found.Complaint);
            return ExitCode.UnusableInput;
        }

        await _terminal.Output.WriteAsync(parsed.GetValue(_json) ? JsonSerializer.Serialize(found.Value, CommandJson.Readable.NextDocument) + Environment.NewLine : Text(found.Value));
        return ExitCode.Done;
    }

    private static Answer<NextDocument> Weigh(Car car, ForecastRuns runs, JetChoiceSettings how, CancellationToken cancellation)
    {
        var forecast = runs.Make(cancellation);
        if (!forecast.Good)
        {
            return Answer<NextDocument>.No(forecast.Complaint);
        }

        var advice = JetChooser.Choose(car, forecast.Value.Forecast, how, cancellation: cancellation);
        var proposal = advice.FromShelf ?? advice.LeastEffort;
        var readings = NextReadings.Of(car, proposal.Car, forecast.Value.Forecast, how.Targets, Shown, cancellation);
        return new NextDocument(car.Name, [.. proposal.Changes.Select(c => $"{c.Label} {c.To}")], [.. readings.Select(NextLine.Of)]);
    }

    private string Text(NextDocument next)
    {
        var c = CultureInfo.InvariantCulture;
        var text = new StringBuilder();
        WrappedText.Append(text, _terminal.Width, string.Empty, $"{next.Car}: what one more reading would take away of the doubt whether the map will be in target{(next.Proposed.Count == 0 ? "." : " with " + string.Join(", ", next.Proposed) + ".")}");
        text.Append(TextTable.Text(
            _terminal.Width,
            ["rpm\t", "Throttle\t", "Regime", "Jets", "λ expected\t", "Takes away\t"],
            next.Readings.Select(r => (IReadOnlyList<string>)[
                r.SpeedRpm.ToString("0", c),
                string.Create(c, $"{r.ThrottleDegrees:0.#}°"),
                r.Regime,
                r.WithFittedJets ? "as fitted" : "proposed",
                string.Create(c, $"{r.Lambda:0.00} ± {r.Lambda * r.Half:0.00}"),
                string.Create(c, $"{100 * r.Narrows:0} %")])));
        return text.ToString();
    }
}
