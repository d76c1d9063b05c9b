using System.CommandLine;
using System.Text.Json;
using Tickover.Cli.Input;
using Tickover.Cli.Json;
using Tickover.Cli.Output;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover explain</c>: how the mixture at one speed and opening comes about, step by step.</summary>
internal sealed class ExplainCommand : ExampledCommand
{
    private readonly Terminal _terminal;
    private readonly CarInput _car;
    private readonly Delivery _delivery;

    private readonly Option<string> _rpm = new("--rpm") { Description = "Speed, rpm.", HelpName = "RPM", Required = true };
    private readonly Option<string> _throttle = new("--throttle") { Description = "Opening from the seated plate, degrees.", HelpName = "DEGREES", Required = true };
    private readonly Option<string> _barrel = new("--barrel") { Description = "The barrel, by its number.", HelpName = "N", DefaultValueFactory = _ => "1" };
    private readonly Option<bool> _json = new("--json") { Description = "Print JSON (docs/schemas/explain.schema.json)." };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it reads and writes.</param>
    public ExplainCommand(Terminal terminal)
        : base(
            "explain",
            "Shows the working at one speed and throttle opening: formula, numbers put in, where each comes from.",
            "tickover explain samples/tern-2800.car.json --rpm 4000 --throttle 45")
    {
        _terminal = terminal;
        _car = new CarInput(terminal);
        _delivery = new Delivery(terminal);
        _car.AddTo(this);
        Add(_rpm);
        Add(_throttle);
        Add(_barrel);
        Add(_json);
        _delivery.AddTo(this);
        SetAction(RunAsync);
    }

    private async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        var request = Read(parsed);
        if (!request.Good)
        {
            await _terminal.Error.WriteLineAsync(request.Complaint);
            return ExitCode.UnusableInput;
        }

        var (car, barrel, rpm, degrees) = request.Value;
        var working = await Progress.ShowAsync(
            _terminal, "Computing one point", token => Explain(car, barrel, rpm, degrees, token), TimeProvider.System, cancellation);
        var text = parsed.GetValue(_json) ? Json(car, working) : new ExplainText(_terminal.Width).Text(car, working);
        return _delivery.Give(parsed, text, cancellation);
    }

    private static PointWorking Explain(Car car, int barrel, double rpm, double degrees, CancellationToken cancellation)
    {
        var one = new SurveyGrid { SpeedsRpm = [rpm], ThrottleDegrees = [degrees] };
        return MixtureSurvey.Run(car, one, cancellation).Explain(barrel, rpm, degrees);
    }

    private Answer<Request> Read(ParseResult parsed)
    {
        var badSpeed = NumberList.Speeds.ReadOne(parsed.GetRequiredValue(_rpm), out var rpm);
        var badOpening = NumberList.Openings.ReadOne(parsed.GetRequiredValue(_throttle), out var degrees);
        if ((badSpeed ?? badOpening) is { } bad)
        {
            return Answer<Request>.No(bad);
        }

        var car = _car.Read(parsed);
        if (!car.Good)
        {
            return Answer<Request>.No(car.Complaint);
        }

        var barrel = BarrelNumber.Read(parsed.GetValue(_barrel), car.Value);
        var complaint = barrel.Complaint ?? GridInput.BeyondWideOpen(car.Value, degrees);
        return complaint is null ? new Request(car.Value, barrel.Value![0], rpm, degrees) : Answer<Request>.No(complaint);
    }

    private static string Json(Car car, PointWorking working) =>
        JsonSerializer.Serialize(
            new ExplainDocument
            {
                Car = car.Name,
                Barrel = working.BarrelNumber,
                RelativeBand = working.RelativeBand,
                Regime = working.Target.Regime,
                Point = MixturePoint.Of(working.SpeedRpm, working.ThrottleDegrees, working.Point),
                Steps = [.. working.Steps.Select(ExplainedStep.Of)],
            },
            CommandJson.Readable.ExplainDocument) + Environment.NewLine;

    /// <summary>Everything asked for, understood.</summary>
    private sealed record Request(Car Car, int Barrel, double Rpm, double Degrees);
}
