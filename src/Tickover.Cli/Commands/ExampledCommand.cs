using System.CommandLine;

namespace Tickover.Cli.Commands;

/// <summary>A command that shows how it is used.</summary>
/// <param name="name">The word typed.</param>
/// <param name="description">What it does, one sentence.</param>
/// <param name="examples">Whole command lines that run on the samples, from the root of a clone.</param>
internal abstract class ExampledCommand(string name, string description, params string[] examples) : Command(name, description)
{
    /// <summary>Whole command lines that run on the samples.</summary>
    public IReadOnlyList<string> Examples { get; } = examples;
}
