using System.CommandLine;
using Tickover.Cli.Input;
using Tickover.Cli.Json;
using Tickover.Cli.Output;
using Tickover.Physics.Fuels;
using Tickover.Workshop.Exhaust;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover gas</c>: λ from four gases, with what is wrong with the sample first.</summary>
internal sealed class GasCommand : ExampledCommand
{
    private readonly Terminal _terminal;
    private readonly Delivery _delivery;

    private readonly Argument<string?> _file = new("FILE")
    {
        Description = "A table of many readings, or - for the standard input. Its first line names the columns co, hc, co2, o2 and, if known, lambda, rpm, oil.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private readonly Option<string?> _monoxide = Typed("--co", "CO, per cent by volume.", "PERCENT");
    private readonly Option<string?> _hydrocarbons = Typed("--hc", "HC as hexane, ppm.", "PPM");
    private readonly Option<string?> _dioxide = Typed("--co2", "CO₂, per cent by volume.", "PERCENT");
    private readonly Option<string?> _oxygen = Typed("--o2", "O₂, per cent by volume.", "PERCENT");
    private readonly Option<string?> _lambda = Typed("--lambda", "λ the instrument shows, to compare.", "LAMBDA");
    private readonly Option<string?> _rpm = Typed("--rpm", "Engine speed, kept beside the answer.", "RPM");
    private readonly Option<string?> _oil = Typed("--oil", "Oil temperature, °C, kept beside the answer.", "DEGREES");

    private readonly Option<string> _fuel = new("--fuel")
    {
        Description = "Fuel in the tank: E0 to E100 or a pure liquid.",
        HelpName = "GRADE",
        DefaultValueFactory = _ => "E5",
    };

    private readonly Option<FuelConstants> _constants = new("--constants")
    {
        Description = "Fuel constants of the formula: the regulation's, as analysers take them, or those of the fuel in the tank.",
        DefaultValueFactory = _ => FuelConstants.Regulation,
    };

    private readonly Option<bool> _json = new("--json") { Description = "Print JSON (docs/schemas/gas.schema.json, of a table gas-table.schema.json)." };
    private readonly Option<bool> _csv = new("--csv") { Description = "Print comma-separated values (RFC 4180)." };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it reads and writes.</param>
    public GasCommand(Terminal terminal)
        : base(
            "gas",
            "Judges readings of a four-gas analyser: what is wrong with the sample first, then λ.",
            "tickover gas --co 2.52 --hc 345 --co2 13.0 --o2 0.63",
            "tickover gas --co 3,3 --hc 180 --co2 11,6 --o2 2,55 --fuel E10 --lambda 1,009 --json",
            "tickover gas samples/gas-readings.csv",
            "tickover gas samples/gas-readings.csv --csv")
    {
        _terminal = terminal;
        _delivery = new Delivery(terminal);
        Add(_file);
        foreach (var option in Fields.Append(_fuel).Append(_constants).Append(_json).Append(_csv))
        {
            Add(option);
        }

        _delivery.AddTo(this);
        Validators.Add(result =>
        {
            if (result.GetValue(_json) && result.GetValue(_csv))
            {
                result.AddError("--json and --csv exclude each other. Choose one.");
            }
        });
        SetAction(Run);
    }

    private IEnumerable<Option> Fields => [_monoxide, _hydrocarbons, _dioxide, _oxygen, _lambda, _rpm, _oil];

    private static Option<string?> Typed(string name, string description, string unit) => new(name) { Description = description, HelpName = unit };

    private Task<int> Run(ParseResult parsed, CancellationToken cancellation)
    {
        var typed = Fields.Any(option => parsed.GetResult(option) is not null);
        var file = parsed.GetValue(_file);
        if (!FuelGrade.TryParse(parsed.GetValue(_fuel), out var grade))
        {
            return Refuse($"--fuel {parsed.GetValue(_fuel)}: no such fuel. Allowed: {FuelGrade.Allowed}.");
        }

        return (file, typed) switch
        {
            (not null, true) => Refuse("A table and single gases exclude each other. Give the file alone, or --co, --hc, --co2 and --o2."),
            (null, false) => Refuse("Nothing to judge. Give --co, --hc, --co2 and --o2, or a table such as samples/gas-readings.csv."),
            (null, true) => OneReading(parsed, grade, cancellation),
            _ => TableAsync(parsed, file!, grade, cancellation),
        };
    }

    private Task<int> OneReading(ParseResult parsed, FuelGrade grade, CancellationToken cancellation)
    {
        var outcome = new GasEntry
        {
            CarbonMonoxide = parsed.GetValue(_monoxide),
            Hydrocarbons = parsed.GetValue(_hydrocarbons),
            CarbonDioxide = parsed.GetValue(_dioxide),
            Oxygen = parsed.GetValue(_oxygen),
            Lambda = parsed.GetValue(_lambda),
            Speed = parsed.GetValue(_rpm),
            Oil = parsed.GetValue(_oil),
        }.Read();
        if (!outcome.Good)
        {
            return Refuse(string.Join(Environment.NewLine, outcome.Complaints));
        }

        var account = GasAccount.Of(outcome.Reading, grade, parsed.GetValue(_constants));
        var text = parsed.GetValue(_json) ? GasJson.Text(GasLine.Of(account, null))
            : parsed.GetValue(_csv) ? GasCsv.Text([GasLine.Of(account, null)])
            : new GasText(_terminal.Width).Text(account);
        return Task.FromResult(_delivery.Give(parsed, text, cancellation));
    }

    private async Task<int> TableAsync(ParseResult parsed, string file, FuelGrade grade, CancellationToken cancellation)
    {
        var read = GasTable.Read(file, _terminal, cancellation);
        if (!read.Good)
        {
            return await Refuse(read.Complaint);
        }

        foreach (var row in read.Value.Refused)
        {
            await _terminal.Error.WriteLineAsync($"Line {row.Line}: {row.Reason}{(row.IsReading ? " Kept out." : "")}");
        }

        if (read.Value.UnusedColumns.Count > 0)
        {
            await _terminal.Error.WriteLineAsync($"Columns not used: {string.Join(", ", read.Value.UnusedColumns)}.");
        }

        if (read.Value.Readings.Count == 0)
        {
            return await Refuse("No reading is left to judge.");
        }

        var constants = parsed.GetValue(_constants);
        var text = await Progress.ShowAsync(
            _terminal, $"Judging {read.Value.Readings.Count} readings", token => Text(parsed, read.Value, grade, constants, token), TimeProvider.System, cancellation);
        var given = _delivery.Give(parsed, text, cancellation);
        return given == ExitCode.Done && read.Value.Refused.Any(row => row.IsReading) ? ExitCode.AnswerIsNo : given;
    }

    private string Text(ParseResult parsed, GasTableRead read, FuelGrade grade, FuelConstants constants, CancellationToken cancellation)
    {
        var accounts = new List<GasAccount>(read.Readings.Count);
        foreach (var row in read.Readings)
        {
            cancellation.ThrowIfCancellationRequested();
            accounts.Add(GasAccount.Of(row.Reading, grade, constants));
        }

        var lines = accounts.Zip(read.Readings, (account, row) => GasLine.Of(account, row.Line)).ToArray();
        return parsed.GetValue(_json) ? GasJson.Text(read, lines)
            : parsed.GetValue(_csv) ? GasCsv.Text(lines)
            : new GasText(_terminal.Width).Text(read, accounts);
    }

    private async Task<int> Refuse(string complaint)
    {
        await _terminal.Error.WriteLineAsync(complaint);
        return ExitCode.UnusableInput;
    }
}
