namespace Tickover.Cli.Output;

/// <summary>Says on the error stream what takes long; says nothing about work of under a second.</summary>
internal static class Progress
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);

    /// <summary>Does the work aside and says how long it takes.</summary>
    /// <typeparam name="T">What the work gives.</typeparam>
    /// <param name="terminal">Where to say it.</param>
    /// <param name="doing">What is being done, such as "Computing 384 points".</param>
    /// <param name="work">The work.</param>
    /// <param name="time">The clock.</param>
    /// <param name="cancellation">Stops the work.</param>
    /// <returns>What the work gives.</returns>
    public static async Task<T> ShowAsync<T>(
        Terminal terminal, string doing, Func<CancellationToken, T> work, TimeProvider time, CancellationToken cancellation)
    {
        var task = Task.Run(() => work(cancellation), cancellation);
        var started = time.GetTimestamp();
        var said = false;
        while (await Task.WhenAny(task, Task.Delay(Patience, time, cancellation)) != task && !cancellation.IsCancellationRequested)
        {
            Say(terminal, doing, time.GetElapsedTime(started), said);
            said = true;
        }

        if (said && terminal.ErrorIsTerminal)
        {
            await terminal.Error.WriteAsync($"\r{new string(' ', Line(doing, time.GetElapsedTime(started)).Length)}\r");
        }

        return await task;
    }

    private static void Say(Terminal terminal, string doing, TimeSpan elapsed, bool said)
    {
        if (terminal.ErrorIsTerminal)
        {
            terminal.Error.Write($"\r{Line(doing, elapsed)}");
        }
        else if (!said)
        {
            terminal.Error.WriteLine($"{doing}.");
        }
    }

    private static string Line(string doing, TimeSpan elapsed) => $"{doing}: {elapsed.TotalSeconds:0} s. Ctrl-C stops.";
}
