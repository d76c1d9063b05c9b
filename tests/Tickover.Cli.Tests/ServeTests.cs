using System.Diagnostics;
using System.Net;

namespace Tickover.Cli.Tests;

public sealed class ServeTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("tickover-serve-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task Serve_says_where_answers_there_and_stops_when_told()
    {
        using var stop = new CancellationTokenSource(TimeSpan.FromMinutes(1));
        using var said = new Announcement();
        var terminal = new Terminal { Output = said, Error = TextWriter.Null, Input = () => Stream.Null };

        var running = CommandLine.RunAsync(["serve", "--port", "0", "--data", Path.Combine(_folder, "cars")], terminal, stop.Token);
        var address = await said.AddressAsync.WaitAsync(stop.Token);
        using var client = new HttpClient();
        using var answer = await client.GetAsync(address, stop.Token);
        await stop.CancelAsync();

        Assert.True(address.IsLoopback);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal(ExitCode.Done, await running);
        Assert.True(Directory.Exists(Path.Combine(_folder, "cars")));
    }

    [Fact]
    public async Task Serve_prints_its_own_words_only_also_where_the_port_is_taken()
    {
        using var limit = new CancellationTokenSource(TimeSpan.FromMinutes(1));
        using var first = Start("0");
        var greeting = await first.StandardOutput.ReadLineAsync(limit.Token);
        var port = greeting!.Split(':')[^1].Split('.')[0];

        using var second = Start(port);
        var complaint = await second.StandardError.ReadToEndAsync(limit.Token);
        await second.WaitForExitAsync(limit.Token);
        first.Kill();
        var talk = await first.StandardError.ReadToEndAsync(limit.Token);

        Assert.StartsWith("Tickover serves ", greeting, StringComparison.Ordinal);
        Assert.Equal(ExitCode.UnusableInput, second.ExitCode);
        Assert.Equal($"Port {port} is taken by another program. Stop it or choose another with --port.", complaint.Trim());
        Assert.Empty(talk);
    }

    private Process Start(string port) => Process.Start(new ProcessStartInfo("dotnet")
    {
        ArgumentList = { typeof(CommandLine).Assembly.Location, "serve", "--port", port, "--data", Path.Combine(_folder, $"cars-{port}") },
        RedirectStandardOutput = true,
        RedirectStandardError = true,
        UseShellExecute = false,
    })!;

    /// <summary>Waits for the line with the address.</summary>
    private sealed class Announcement : StringWriter
    {
        private readonly TaskCompletionSource<Uri> _address = new(TaskCreationOptions.RunContinuationsAsynchronously);

        public Task<Uri> AddressAsync => _address.Task;

        public override Task WriteLineAsync(string? value)
        {
            var word = value?.Split(' ').FirstOrDefault(w => w.StartsWith("http", StringComparison.Ordinal));
            if (word is not null)
            {
                _address.TrySetResult(new Uri(word.TrimEnd('.')));
            }

            return Task.CompletedTask;
        }
    }
}
