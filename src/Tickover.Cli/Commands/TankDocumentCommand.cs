using System.CommandLine;
using Tickover.Cli.Input;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Tanks;

namespace Tickover.Cli.Commands;

/// <summary>A command on a tank document.</summary>
/// <param name="terminal">Where it reads and writes.</param>
/// <param name="name">What it is called.</param>
/// <param name="description">What it does.</param>
internal abstract class TankDocumentCommand(Terminal terminal, string name, string description)
    : DocumentCommand<TankReading>(terminal, (name, "tank"), description, $"tickover {name} samples/tern.tank.json", $"tickover {name} samples/gannet.tank.json --json")
{
    private const int LargestMesh = 30 << 20;

    /// <inheritdoc/>
    protected override string Doing => "Working out the tanks";

    /// <summary>What the document lacks for this command, in words; null for nothing.</summary>
    /// <param name="set">The tanks.</param>
    /// <returns>A sentence, or null.</returns>
    protected abstract string? Lacks(TankSet set);

    /// <summary>The answer.</summary>
    /// <param name="analysis">The analysis.</param>
    /// <param name="json">Whether JSON is wanted.</param>
    /// <param name="width">Columns to fill otherwise.</param>
    /// <returns>What to print.</returns>
    protected abstract string Text(TankAnalysis analysis, bool json, int width);

    /// <inheritdoc/>
    protected override (TankReading? Subject, IReadOnlyList<Fault> Faults) Read(string text) => Read(text, CarFile.StandardInput);

    /// <inheritdoc/>
    protected override (TankReading? Subject, IReadOnlyList<Fault> Faults) Read(string text, string file)
    {
        var reading = TankDocument.Read(text, mesh => Mesh(file, mesh));
        return (reading.Set is null ? null : reading, reading.Faults);
    }

    /// <inheritdoc/>
    protected override Answer<TankReading> Asked(TankReading subject, ParseResult parsed)
    {
        if (Lacks(subject.Set!) is { } lacks)
        {
            return Answer<TankReading>.No($"{subject.Set!.Name}: {lacks}");
        }

        foreach (var warning in subject.Warnings)
        {
            Terminal.Error.WriteLine($"{warning.Path}: {warning.Problem} ({warning.Allowed}). {warning.WhatToDo}");
        }

        return subject;
    }

    /// <inheritdoc/>
    protected override (string Text, bool IsNo) Answer(TankReading subject, bool json, int width) => (Text(TankAnalyst.Of(subject.Set!), json, width), false);

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
}
