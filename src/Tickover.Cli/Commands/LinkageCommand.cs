using System.CommandLine;
using Tickover.Cli.Input;
using Tickover.Cli.Output;
using Tickover.Reports.Linkages;
using Tickover.Workshop.Linkages;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover linkage</c>: what the rods and levers between pedal and carburettors do, and what to set.</summary>
internal sealed class LinkageCommand : ExampledCommand
{
    private const double UsualDown = 25;

    private readonly Terminal _terminal;
    private readonly Delivery _delivery;
    private readonly Argument<string> _file = new("FILE") { Description = "The linkage document (docs/linkage-document.md), or - for the standard input." };
    private readonly Option<string?> _picture = new("--picture") { Description = "Draw the linkage and its mismatch over the travel into this SVG file.", HelpName = "FILE" };
    private readonly Option<double> _down = new("--down") { Description = "How far the pedal is down in the picture, per cent.", HelpName = "PERCENT", DefaultValueFactory = _ => UsualDown };
    private readonly Option<bool> _json = new("--json") { Description = "Print JSON (docs/schemas/linkage.schema.json)." };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it reads and writes.</param>
    public LinkageCommand(Terminal terminal)
        : base(
            "linkage",
            "Works out a throttle linkage: every plate's angle over the pedal's travel, who opens late, and the rods and levers to set.",
            "tickover linkage samples/osprey.linkage.json",
            "tickover linkage samples/tern.linkage.json --json")
    {
        _terminal = terminal;
        _delivery = new Delivery(terminal);
        Add(_file);
        Add(_picture);
        Add(_down);
        Add(_json);
        _delivery.AddTo(this);
        SetAction(RunAsync);
    }

    private async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        var file = parsed.GetRequiredValue(_file);
        var down = parsed.GetValue(_down);
        if (down is not (>= 0 and <= 100))
        {
            return await RefuseAsync("--down is a part of the pedal's travel in per cent: 0 to 100.");
        }

        var text = CarFile.Read(file, _terminal);
        if (!text.Good)
        {
            return await RefuseAsync(text.Complaint);
        }

        var reading = LinkageDocument.Read(text.Value);
        if (reading.Linkage is not { } linkage)
        {
            return await RefuseAsync($"{file} cannot be used:{Environment.NewLine}{FaultTable.Text(reading.Faults, _terminal.Width)}");
        }

        var analysis = await Progress.ShowAsync(_terminal, "Working out the linkage", token => LinkageAnalyst.Of(linkage, cancellation: token), TimeProvider.System, cancellation);
        if (parsed.GetValue(_picture) is { } picture
            && _delivery.Beside(picture, LinkagePicture.ToFile(new LinkageView { Analysis = analysis, Down = down / 100, IdPrefix = "linkage" })) is { } complaint)
        {
            return await RefuseAsync(complaint);
        }

        return _delivery.Give(parsed, parsed.GetValue(_json) ? LinkageJson.Text(analysis) : new LinkageText(_terminal.Width).Text(analysis), cancellation);
    }

    private async Task<int> RefuseAsync(string complaint)
    {
        await _terminal.Error.WriteLineAsync(complaint);
        return ExitCode.UnusableInput;
    }
}
