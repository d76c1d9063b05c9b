using System.Globalization;
using System.IO.Pipelines;
using System.Text;

namespace Tickover.Cli.Tests;

/// <summary>The practice engine run through a pipe, one line after the other, as a script runs it.</summary>
internal sealed class FollowedAdvice : IAsyncDisposable
{
    private readonly Pipe _in = new();
    private readonly Pipe _out = new();
    private readonly StreamWriter _acts;
    private readonly StreamReader _answers;
    private readonly StreamWriter _output;
    private readonly Task<int> _run;

    public FollowedAdvice(params string[] args)
    {
        _acts = new StreamWriter(_in.Writer.AsStream()) { AutoFlush = true, NewLine = "\n" };
        _answers = new StreamReader(_out.Reader.AsStream());
        _output = new StreamWriter(_out.Writer.AsStream(), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        var terminal = new Terminal { Output = _output, Error = new StringWriter(CultureInfo.InvariantCulture), Input = () => _in.Reader.AsStream() };
        _run = Task.Run(async () =>
        {
            var code = await CommandLine.RunAsync(["practice", .. args], terminal, CancellationToken.None);
            await _output.DisposeAsync();
            return code;
        });
    }

    /// <summary>Reads a line; null at the end.</summary>
    public async Task<string?> LineAsync() => await _answers.ReadLineAsync(TestContext.Current.CancellationToken);

    /// <summary>Reads all that is left.</summary>
    public async Task<string> RestAsync() => await _answers.ReadToEndAsync(TestContext.Current.CancellationToken);

    /// <summary>Writes a line and reads one.</summary>
    public async Task<string> SayAsync(string act)
    {
        await WriteAsync(act);
        return (await LineAsync())!;
    }

    /// <summary>Writes a line.</summary>
    public Task WriteAsync(string act) => _acts.WriteLineAsync(act);

    /// <summary>Ends the standard input and waits for the command.</summary>
    public async Task<int> EndAsync()
    {
        await _acts.DisposeAsync();
        return await _run;
    }

    public async ValueTask DisposeAsync()
    {
        await EndAsync();
        _answers.Dispose();
    }
}
