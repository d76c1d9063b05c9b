using System.CommandLine;
using Tickover.Workshop.Balance;
using Tickover.Workshop.Balance.Documents;

namespace Tickover.Cli.Input;

/// <summary>The rounds a balance is judged by.</summary>
/// <param name="terminal">Gives the standard input.</param>
internal sealed class RoundsInput(Terminal terminal)
{
    private readonly Argument<string> _file = new("ROUNDS") { Description = "The rounds document, or - for the standard input." };

    /// <summary>Adds the argument to a command.</summary>
    /// <param name="command">The command.</param>
    public void AddTo(Command command) => command.Add(_file);

    /// <summary>Reads the rounds.</summary>
    /// <param name="parsed">The command line.</param>
    /// <returns>The book, or all that is wrong.</returns>
    public Answer<BalanceBook> Read(ParseResult parsed)
    {
        var path = parsed.GetRequiredValue(_file);
        var text = CarFile.Read(path, terminal);
        if (!text.Good)
        {
            return Answer<BalanceBook>.No(text.Complaint);
        }

        var folder = string.Equals(path, CarFile.StandardInput, StringComparison.Ordinal) ? "." : Path.GetDirectoryName(Path.GetFullPath(path)) ?? ".";
        var (book, faults) = RoundsDocument.Read(text.Value, name => Beside(folder, name));
        return book is null ? Answer<BalanceBook>.No(string.Join(Environment.NewLine, faults.Select(f => $"{path}: {f}"))) : book;
    }

    private string? Beside(string folder, string name)
    {
        var path = Path.Combine(folder, name);
        return File.Exists(path) && CarFile.Read(path, terminal) is { Good: true } text ? text.Value : null;
    }
}
