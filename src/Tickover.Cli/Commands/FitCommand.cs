using System.CommandLine;
using Tickover.Cli.Input;
using Tickover.Cli.Output;
using Tickover.Reports;
using Tickover.Reports.Fits;
using Tickover.Workshop.Calibration;
using Tickover.Workshop.Cars;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover fit</c>: the model fitted to road logs of a car.</summary>
internal sealed class FitCommand : ExampledCommand
{
    private readonly Terminal _terminal;
    private readonly CarInput _car;
    private readonly Delivery _delivery;

    private readonly Argument<string[]> _logs = new("LOG")
    {
        Description = "Road logs as CSV, taken with the jets that the car document names.",
        Arity = ArgumentArity.OneOrMore,
    };

    private readonly Option<string[]> _with = new("--with")
    {
        Description = "Fits made before, with the jets of their day: their readings count too. May be repeated.",
        HelpName = "FIT",
    };

    private readonly Option<string?> _picture = new("--picture")
    {
        Description = "Draw the readings beside the fit, regime by regime, into this SVG file.",
        HelpName = "FILE",
    };

    private readonly Option<bool> _json = new("--json") { Description = "Print JSON (docs/schemas/fit.schema.json); -o writes it in any case." };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it reads and writes.</param>
    public FitCommand(Terminal terminal)
        : base("fit", "Fits the model to road logs of a car, and says what they tell and what they leave open.", "tickover fit samples/tern-2800.car.json samples/tern-road.csv")
    {
        _terminal = terminal;
        _car = new CarInput(terminal);
        _delivery = new Delivery(terminal);
        _car.AddTo(this);
        Add(_logs);
        Add(_with);
        Add(_picture);
        Add(_json);
        _delivery.AddTo(this);
        SetAction(RunAsync);
    }

    private async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        var car = _car.Read(parsed);
        var runs = car.Good ? Runs(parsed, car.Value, cancellation) : Answer<ForecastRuns>.No(car.Complaint);
        if (!runs.Good)
        {
            return await RefuseAsync(runs.Complaint);
        }

        var outcome = await Progress.ShowAsync(_terminal, "Fitting", token => Calibrator.Fit(runs.Value.Runs, cancellation: token), TimeProvider.System, cancellation);
        if (outcome.Fit is not { } fit)
        {
            return await RefuseAsync("No fit: " + string.Join(Environment.NewLine, outcome.Refusals), ExitCode.AnswerIsNo);
        }

        if (parsed.GetValue(_picture) is { } picture && _delivery.Give(picture, StandaloneSvg.Of(ResidualPicture.ToSvg(ResidualView.Of(fit)))) is not ExitCode.Done and var fault)
        {
            return fault;
        }

        var document = FitDocument.Write(fit);
        var text = new FitText(_terminal.Width).Text(fit);
        if (!_delivery.IsFile(parsed))
        {
            return _delivery.Give(parsed, parsed.GetValue(_json) ? document : text, cancellation);
        }

        await _terminal.Output.WriteAsync(parsed.GetValue(_json) ? document : text);
        return _delivery.Give(parsed, document, cancellation);
    }

    private Answer<ForecastRuns> Runs(ParseResult parsed, Car car, CancellationToken cancellation)
    {
        var runs = new List<CalibrationRun>();
        foreach (var path in parsed.GetValue(_with) ?? [])
        {
            var text = CarFile.Read(path, _terminal);
            var (earlier, fault) = text.Good ? FitDocument.Read(text.Value) : (null, text.Complaint);
            if (earlier is null)
            {
                return Answer<ForecastRuns>.No($"{path}: {fault}");
            }

            runs.AddRange(earlier);
        }

        foreach (var path in parsed.GetRequiredValue(_logs))
        {
            var told = LogFile.Read(path, car, _terminal, cancellation);
            if (!told.Good)
            {
                return Answer<ForecastRuns>.No(told.Complaint);
            }

            foreach (var sentence in told.Value.Told)
            {
                _terminal.Error.WriteLine($"{Path.GetFileName(path)}: {sentence}");
            }

            runs.Add(new CalibrationRun(Path.GetFileName(path), car, told.Value.Points));
        }

        return new ForecastRuns(runs);
    }

    private async Task<int> RefuseAsync(string complaint, int code = ExitCode.UnusableInput)
    {
        await _terminal.Error.WriteLineAsync(complaint);
        return code;
    }
}
