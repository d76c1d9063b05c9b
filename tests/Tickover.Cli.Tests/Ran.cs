using System.Globalization;
using System.Text;
using Tickover.Architecture.Tests;

namespace Tickover.Cli.Tests;

/// <summary>One command line run in this process, at the root of the clone, a hundred columns wide and without colour.</summary>
internal sealed record Ran(int Code, string Output, string Error)
{
    static Ran()
    {
        Environment.CurrentDirectory = Repository.Root;
    }

    /// <summary>Runs words.</summary>
    public static Task<Ran> OfAsync(params string[] args) => OfAsync(string.Empty, args);

    /// <summary>Runs words with a text on the standard input.</summary>
    public static async Task<Ran> OfAsync(string input, string[] args, CancellationToken cancellation = default)
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture);
        using var error = new StringWriter(CultureInfo.InvariantCulture);
        var terminal = new Terminal
        {
            Output = output,
            Error = error,
            Input = () => new MemoryStream(Encoding.UTF8.GetBytes(input)),
        };
        var code = await CommandLine.RunAsync(args, terminal, cancellation);
        return new Ran(code, output.ToString(), error.ToString());
    }

    /// <summary>Runs a whole line as somebody types it: "tickover check samples/osprey-v8.car.json".</summary>
    public static Task<Ran> LineAsync(string line) => OfAsync(Words(line)[1..]);

    /// <summary>The words of a line; double quotes hold blanks together.</summary>
    public static string[] Words(string line)
    {
        var words = new List<string>();
        var word = new StringBuilder();
        var quoted = false;
        foreach (var c in line + " ")
        {
            if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ' ' && !quoted)
            {
                if (word.Length > 0)
                {
                    words.Add(word.ToString());
                }

                word.Clear();
            }
            else
            {
                word.Append(c);
            }
        }

        return [.. words];
    }
}
