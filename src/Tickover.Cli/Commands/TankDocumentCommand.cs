using System.CommandLine;
using Tickover.Cli.Input;
using Tickover.Cli.Output;
using Tickover.Workshop.Tanks;

namespace Tickover.Cli.Commands;

/// <summary>A command on a tank document: read it, work it out, print it.</summary>
internal abstract class TankDocumentCommand : ExampledCommand
{
    private const int LargestMesh = 30 << 20;

    private readonly Terminal _terminal;
    private readonly Delivery _delivery;
    private readonly Argument<string> _file = new("FILE") { Description = "The tank document (docs/tank-document.md), or - for the standard input." };
    private readonly Option<bool> _json;

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it reads and writes.</param>
    /// <param name="name">What it is called.</param>
    /// <param name="description">What it does.</param>
    protected TankDocumentCommand(Terminal terminal, string name, string description)
        : base(name, description, $"tickover {name} samples/tern.tank.json", $"tickover {name} samples/gannet.tank.json --json")
    {
        _terminal = terminal;
        _delivery = new Delivery(terminal);
        _json = new("--json") { Description = $"Print JSON (docs/schemas/{name}.schema.json)." };
        Add(_file);
        Add(_json);
        _delivery.AddTo(this);
        SetAction(RunAsync);
    }

    /// <summary>Columns to fill.</summary>
    protected int Width => _terminal.Width;

    /// <summary>What the document lacks for this command, in words; null for nothing.</summary>
    /// <param name="set">The tanks.</param>
    /// <returns>A sentence, or null.</returns>
    protected abstract string? Lacks(TankSet set);

    /// <summary>The answer for a person.</summary>
    /// <param name="analysis">The analysis.</param>
    /// <returns>Lines, each ended.</returns>
    protected abstract string Text(TankAnalysis analysis);

    /// <summary>The answer as JSON.</summary>
    /// <param name="analysis">The analysis.</param>
    /// <returns>The document.</returns>
    protected abstract string Json(TankAnalysis analysis);

    private async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        var file = parsed.GetRequiredValue(_file);
        var text = CarFile.Read(file, _terminal);
        if (!text.Good)
        {
            return await RefuseAsync(text.Complaint);
        }

        var reading = TankDocument.Read(text.Value, name => Mesh(file, name));
        if (reading.Set is not { } set)
        {
            return await RefuseAsync($"{file} cannot be used:{Environment.NewLine}{FaultTable.Text(reading.Faults, _terminal.Width)}");
        }

        if (Lacks(set) is { } lacks)
        {
            return await RefuseAsync($"{file}: {lacks}");
        }

        foreach (var warning in reading.Warnings)
        {
            await _terminal.Error.WriteLineAsync($"{warning.Path}: {warning.Problem} ({warning.Allowed}). {warning.WhatToDo}");
        }

        var analysis = await Progress.ShowAsync(_terminal, "Working out the tanks", _ => TankAnalyst.Of(set), TimeProvider.System, cancellation);
        return _delivery.Give(parsed, parsed.GetValue(_json) ? Json(analysis) : Text(analysis), cancellation);
    }

    // A mesh lies beside its document; one that comes by the standard input names no folder and gets none.
    private static byte[]? Mesh(string document, string name)
    {
        if (string.Equals(document, CarFile.StandardInput, StringComparison.Ordinal) || !string.Equals(name, Path.GetFileName(name), StringComparison.Ordinal))
        {
            return null;
        }

        try
        {
            var file = new FileInfo(Path.Combine(Path.GetDirectoryName(Path.GetFullPath(document)) ?? ".", name));
            return file.Exists && file.Length <= LargestMesh ? File.ReadAllBytes(file.FullName) : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return null;
        }
    }

    private async Task<int> RefuseAsync(string complaint)
    {
        await _terminal.Error.WriteLineAsync(complaint);
        return ExitCode.UnusableInput;
    }
}
