using System.CommandLine;
using Tickover.Cli.Input;
using Tickover.Cli.Output;
using Tickover.Instruments.Logs;
using Tickover.Reports.Roads;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Logs;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover log</c>: what a road log holds, what it was taken for, and the points it comes to.</summary>
internal sealed class LogCommand : ExampledCommand
{
    private readonly Terminal _terminal;
    private readonly Delivery _delivery;
    private readonly Argument<string[]> _files = new("FILE") { Description = "Road logs as text tables, or - for the standard input.", Arity = ArgumentArity.OneOrMore };
    private readonly Option<string> _car = new("--car") { Description = "The car document, with what was fitted when the log was taken.", HelpName = "CAR", Required = true };

    private readonly Option<string[]> _set = new("--set")
    {
        Description = "What a column is: COLUMN=QUANTITY:UNIT, a bank as in lambda@2. Quantities: time, rpm, throttle, map, lambda, coolant, oil, air, fuelpressure, speed, ignored. May be repeated.",
        HelpName = "COLUMN=QUANTITY:UNIT",
    };

    private readonly Option<double> _ratio = new("--afr")
    {
        Description = "Air/fuel ratio the logger calls λ 1.",
        HelpName = "RATIO",
        DefaultValueFactory = _ => LogUnits.UsualStoichiometry,
    };

    private readonly Option<double?> _rate = new("--rate") { Description = "Rows a second, for a log without a time column.", HelpName = "ROWS" };
    private readonly Option<double?> _shut = new("--shut") { Description = "Throttle figure with the pedal up.", HelpName = "FIGURE" };
    private readonly Option<double?> _wide = new("--wide") { Description = "Throttle figure wide open.", HelpName = "FIGURE" };
    private readonly Option<int?> _part = new("--part") { Description = "Part of the file to take, where it says that it consists of several.", HelpName = "N" };
    private readonly Option<string[]> _layout = new("--layout") { Description = "Columns remembered by --remember; used where the headings are the same. May be repeated.", HelpName = "FILE" };
    private readonly Option<string?> _remember = new("--remember") { Description = "Write what was told with --set into this file, for --layout.", HelpName = "FILE" };
    private readonly Option<string?> _picture = new("--picture") { Description = "Draw the log over its time into this SVG file.", HelpName = "FILE" };
    private readonly Option<bool> _json = new("--json") { Description = "Print JSON (docs/schemas/log.schema.json)." };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it reads and writes.</param>
    public LogCommand(Terminal terminal)
        : base(
            "log",
            "Reads road logs: which column is what and why, which rows do not count, the mixture in each regime.",
            "tickover log samples/tern-road.csv --car samples/tern-2800.car.json",
            "tickover log samples/osprey-road.csv --car samples/osprey-v8.car.json --set \"Water=ignored\" --json")
    {
        _terminal = terminal;
        _delivery = new Delivery(terminal);
        Add(_files);
        foreach (var option in new Option[] { _car, _set, _ratio, _rate, _shut, _wide, _part, _layout, _remember, _picture, _json })
        {
            Add(option);
        }

        _delivery.AddTo(this);
        SetAction(RunAsync);
    }

    private async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        var (car, columns, layouts) = (Car(parsed), Columns(parsed), LayoutFile.Read(parsed.GetValue(_layout) ?? []));
        if ((car.Complaint ?? columns.Complaint ?? layouts.Complaint ?? OneFile(parsed)) is { } complaint)
        {
            return await RefuseAsync(complaint);
        }

        var results = new List<LogResult>();
        foreach (var file in parsed.GetRequiredValue(_files))
        {
            var read = await Progress.ShowAsync(_terminal, $"Reading {file}", token => Read(file, parsed, car.Value!, columns.Value!, layouts.Value!, token), TimeProvider.System, cancellation);
            if (!read.Good)
            {
                return await RefuseAsync(read.Complaint);
            }

            results.Add(read.Value);
        }

        if (Aside(parsed, results) is { } unwritten)
        {
            return await RefuseAsync(unwritten);
        }

        var text = parsed.GetValue(_json)
            ? LogJson.Text(car.Value!.Name, results)
            : string.Join(Environment.NewLine, results.Select(new LogText(_terminal.Width).Text));
        var given = _delivery.Give(parsed, text, cancellation);
        return given is not ExitCode.Done ? given : Ending(results);
    }

    private static int Ending(List<LogResult> results) =>
        results.Exists(r => r.Account is null) ? ExitCode.UnusableInput
        : results.Exists(r => r.Account!.Points.Count == 0) ? ExitCode.AnswerIsNo
        : ExitCode.Done;

    private string? OneFile(ParseResult parsed) =>
        (parsed.GetValue(_picture) ?? parsed.GetValue(_remember)) is not null && parsed.GetRequiredValue(_files).Length > 1
            ? "--picture and --remember take one log at a time. Name one file."
            : null;

    // Files beside what is printed; each appears whole or not at all.
    private string? Aside(ParseResult parsed, List<LogResult> results)
    {
        var result = results[0];
        var remembered = parsed.GetValue(_remember) is { } layout
            ? LogLayout.Of(result.Reading.Columns) is { } told ? _delivery.Beside(layout, told.ToText()) : "There is nothing to remember: tell a column with --set."
            : null;
        return remembered ?? (parsed.GetValue(_picture) is { } picture && result.Account is { } account
            ? _delivery.Beside(picture, TracePicture.ToFile(new TraceView { Name = Path.GetFileName(result.File), Trace = account.Trace, Points = account.Points, IdPrefix = "trace" }))
            : null);
    }

    private Answer<Car> Car(ParseResult parsed)
    {
        var path = parsed.GetRequiredValue(_car);
        var text = CarFile.Read(path, _terminal);
        if (!text.Good)
        {
            return Answer<Car>.No(text.Complaint);
        }

        var reading = CarDocument.Read(text.Value);
        return reading.Car ?? Answer<Car>.No($"{path} cannot be used:{Environment.NewLine}{FaultTable.Text(reading.Faults, _terminal.Width)}");
    }

    private Answer<List<ColumnChoice>> Columns(ParseResult parsed)
    {
        var columns = new List<ColumnChoice>();
        foreach (var text in parsed.GetValue(_set) ?? [])
        {
            var read = ColumnSetting.Read(text);
            if (!read.Good)
            {
                return Answer<List<ColumnChoice>>.No(read.Complaint);
            }

            columns.Add(read.Value);
        }

        return parsed.GetValue(_ratio) is < 6 or > 16 ? Answer<List<ColumnChoice>>.No("--afr is the ratio at λ 1: between 6 and 16, 14.7 on most displays.") : columns;
    }

    private Answer<LogResult> Read(string file, ParseResult parsed, Car car, List<ColumnChoice> columns, IReadOnlyList<LogLayout> layouts, CancellationToken cancellation)
    {
        var settings = LogBook.Settings(file is CarFile.StandardInput ? "standard input" : Path.GetFileName(file), car) with
        {
            Columns = columns,
            Layouts = layouts,
            Part = parsed.GetValue(_part),
            AssumedStoichiometry = parsed.GetValue(_ratio),
            RowsPerSecond = parsed.GetValue(_rate),
        };
        try
        {
            using var stream = file is CarFile.StandardInput ? _terminal.Input() : File.OpenRead(file);
            var reading = LogReader.Read(stream, settings, null, cancellation);
            var how = new LogPointSettings { ClosedMark = parsed.GetValue(_shut), WideMark = parsed.GetValue(_wide) };
            return new LogResult(file, reading, reading.Log is { } log ? LogPoints.Of(log, car, how, cancellation) : null);
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return Answer<LogResult>.No($"There is no file '{file}'. Check the name and the folder you are in.");
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Answer<LogResult>.No($"'{file}' cannot be read: {e.Message}");
        }
    }

    private async Task<int> RefuseAsync(string complaint)
    {
        await _terminal.Error.WriteLineAsync(complaint);
        return ExitCode.UnusableInput;
    }
}
