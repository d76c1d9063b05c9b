using System.CommandLine;
using Tickover.Cli.Input;
using Tickover.Cli.Output;
using Tickover.Workshop.Cars;
using Tickover.Workshop.JetChoice;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover jets</c>: which jets and chokes, from the shelf, from the sizes sold, and with least effort.</summary>
internal sealed class JetsCommand : ExampledCommand
{
    private readonly Terminal _terminal;
    private readonly CarInput _car;
    private readonly ForecastInput _forecast;
    private readonly ChoiceInput _choice;
    private readonly Delivery _delivery;
    private readonly Option<bool> _json = new("--json") { Description = "Print JSON (docs/schemas/jets.schema.json)." };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it reads and writes.</param>
    public JetsCommand(Terminal terminal)
        : base(
            "jets",
            "Chooses jets and chokes by what the mixture is expected to do over the whole map, bands included.",
            "tickover jets samples/tern-2800.car.json --shelf samples/shelf.json")
    {
        _terminal = terminal;
        _car = new CarInput(terminal);
        _forecast = new ForecastInput(terminal);
        _choice = new ChoiceInput(terminal);
        _delivery = new Delivery(terminal);
        _car.AddTo(this);
        _forecast.AddTo(this);
        _choice.AddTo(this);
        Add(_json);
        _delivery.AddTo(this);
        SetAction(RunAsync);
    }

    private async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        var (car, runs, how) = (_car.Read(parsed), _forecast.Read(parsed), _choice.Read(parsed));
        if ((car.Complaint ?? runs.Complaint ?? how.Complaint) is { } complaint)
        {
            await _terminal.Error.WriteLineAsync(complaint);
            return ExitCode.UnusableInput;
        }

        var made = await Progress.ShowAsync(_terminal, "Choosing jets", token => Choose(car.Value!, runs.Value!, how.Value!, token), TimeProvider.System, cancellation);
        if (!made.Good)
        {
            await _terminal.Error.WriteLineAsync(made.Complaint);
            return ExitCode.UnusableInput;
        }

        var text = parsed.GetValue(_json) ? JetsJson.Text(made.Value) : new JetsText(_terminal.Width).Text(made.Value);
        return _delivery.Give(parsed, text, cancellation);
    }

    private static Answer<JetsResult> Choose(Car car, ForecastRuns runs, JetChoiceSettings how, CancellationToken cancellation)
    {
        var forecast = runs.Make(cancellation);
        return forecast.Good
            ? new JetsResult(car, JetChooser.Choose(car, forecast.Value.Forecast, how, cancellation: cancellation), forecast.Value.Fit, how.Shelf is not null)
            : Answer<JetsResult>.No(forecast.Complaint);
    }
}
