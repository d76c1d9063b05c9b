using Tickover.Workshop.Cars;

namespace Tickover.Cli.Output;

/// <summary>Faults or warnings of a document, all at once.</summary>
internal static class FaultTable
{
    private static readonly string[] Headings = ["Where", "What is wrong", "Allowed", "What to do"];

    /// <summary>Lays out the table.</summary>
    /// <param name="faults">The faults.</param>
    /// <param name="width">Columns to fill.</param>
    /// <returns>The lines.</returns>
    public static string Text(IReadOnlyList<Fault> faults, int width) =>
        TextTable.Text(width, Headings, faults.Select(f => (string[])[f.Path.Length == 0 ? "(document)" : Parted(f.Path), f.Problem, f.Allowed, f.WhatToDo]));

    /// <summary>Parts a long path at its dots, so that it wraps between names and not within one.</summary>
    private static string Parted(string path)
    {
        const int Longest = 24;
        var lines = new List<string> { string.Empty };
        foreach (var name in path.Split('.'))
        {
            var next = lines[^1].Length == 0 ? name : $"{lines[^1]}.{name}";
            if (next.Length <= Longest || lines[^1].Length == 0)
            {
                lines[^1] = next;
            }
            else
            {
                lines[^1] += ".";
                lines.Add(name);
            }
        }

        return string.Join('\n', lines);
    }
}
