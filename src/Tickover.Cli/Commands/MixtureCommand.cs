using System.CommandLine;
using System.Globalization;
using Tickover.Cli.Input;
using Tickover.Cli.Output;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Mixture;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover mixture</c>: the mixture of every barrel over speed and throttle, and what a change would do to it.</summary>
internal sealed class MixtureCommand : ExampledCommand
{
    private readonly Terminal _terminal;
    private readonly CarInput _car;
    private readonly Delivery _delivery;

    private readonly Option<string?> _rpm = new("--rpm")
    {
        Description = "Speeds: 4000, \"1000; 2500\", 1000..6000 or 1000..6000:250. Default: 24 over the engine's range.",
        HelpName = "RPM",
    };

    private readonly Option<string?> _throttle = new("--throttle")
    {
        Description = "Openings from the seated plate, degrees, written likewise. Default: 16, closer together near shut.",
        HelpName = "DEGREES",
    };

    private readonly Option<string?> _barrel = new("--barrel") { Description = "One barrel only, by its number.", HelpName = "N" };

    private readonly Option<string[]> _set = new("--set")
    {
        Description = "Try a change: barrel.mainJet=140 for all barrels, carburettors[0].barrels[1].choke=\"31 mm\" for one. May be repeated.",
        HelpName = "PATH=VALUE",
    };

    private readonly Option<bool> _json = new("--json") { Description = "Print JSON (docs/schemas/mixture.schema.json)." };
    private readonly Option<bool> _csv = new("--csv") { Description = "Print comma-separated values (RFC 4180)." };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it reads and writes.</param>
    public MixtureCommand(Terminal terminal)
        : base(
            "mixture",
            "Computes the mixture of every barrel over speed and throttle opening.",
            "tickover mixture samples/tern-2800.car.json",
            "tickover mixture samples/tern-2800.car.json --set barrel.mainJet=140 --ambient \"30 °C, 1500 m, 40 %\"",
            "tickover mixture samples/tern-2800.car.json --rpm 1000..6000:500 --throttle \"10; 30; 60\" --csv")
    {
        _terminal = terminal;
        _car = new CarInput(terminal);
        _delivery = new Delivery(terminal);
        _car.AddTo(this);
        Add(_rpm);
        Add(_throttle);
        Add(_barrel);
        Add(_set);
        Add(_json);
        Add(_csv);
        _delivery.AddTo(this);
        Validators.Add(result =>
        {
            if (result.GetValue(_json) && result.GetValue(_csv))
            {
                result.AddError("--json and --csv exclude each other. Choose one.");
            }
        });
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

        var asked = request.Value;
        var doing = string.Create(
            CultureInfo.InvariantCulture,
            $"Computing {asked.Grid.SpeedsRpm.Count} speeds by {asked.Grid.ThrottleDegrees.Count} openings for {asked.Car.Barrels.Count} barrels");
        var result = await Progress.ShowAsync(_terminal, doing, token => Compute(asked, token), TimeProvider.System, cancellation);
        var text = parsed.GetValue(_json) ? MixtureJson.Text(result)
            : parsed.GetValue(_csv) ? MixtureCsv.Text(result)
            : new MixtureText(_terminal.Width, _delivery.Colours(parsed)).Text(result);
        return _delivery.Give(parsed, text, cancellation);
    }

    private static MixtureResult Compute(Request asked, CancellationToken cancellation)
    {
        var survey = MixtureSurvey.Run(asked.Car, asked.Grid, cancellation);
        var trial = asked.Changed is { } changed ? survey.Trial(changed, cancellation).Map : null;
        return new MixtureResult
        {
            Car = asked.Car,
            Fitted = survey.Map,
            Trial = trial,
            Changes = asked.Changes,
            Groups = MixtureResult.Group(asked.Barrels, survey.Map, trial),
        };
    }

    private Answer<Request> Read(ParseResult parsed)
    {
        var car = _car.Read(parsed);
        if (!car.Good)
        {
            return Answer<Request>.No(car.Complaint);
        }

        var grid = GridInput.Read(car.Value, parsed.GetValue(_rpm), parsed.GetValue(_throttle));
        var barrels = BarrelNumber.Read(parsed.GetValue(_barrel), car.Value);
        var changes = Changes(parsed);
        var changed = changes.Good ? _car.Change(car.Value, changes.Value) : car;
        var complaint = grid.Complaint ?? barrels.Complaint ?? changes.Complaint ?? changed.Complaint;
        return complaint is not null
            ? Answer<Request>.No(complaint)
            : new Request(car.Value, grid.Value!, barrels.Value!, changes.Value!, changes.Value!.Count > 0 ? changed.Value : null);
    }

    private Answer<IReadOnlyList<CarChange>> Changes(ParseResult parsed)
    {
        var read = (parsed.GetValue(_set) ?? []).Select(CarChange.Read).ToArray();
        var bad = read.FirstOrDefault(r => !r.Good);
        return bad.Complaint is not null
            ? Answer<IReadOnlyList<CarChange>>.No(bad.Complaint)
            : read.Select(r => r.Value!).ToArray();
    }

    /// <summary>Everything asked for, understood.</summary>
    private sealed record Request(Car Car, SurveyGrid Grid, IReadOnlyList<int> Barrels, IReadOnlyList<CarChange> Changes, Car? Changed);
}
