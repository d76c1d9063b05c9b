using System.CommandLine;
using System.Globalization;
using Microsoft.AspNetCore.Connections;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Tickover.Cli.Input;
using Tickover.Web.Lan;
using Tickover.Web;
using Tickover.Workshop.Visits;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover serve</c>: the pages for the tablet, served from this machine.</summary>
internal sealed class ServeCommand : ExampledCommand
{
    private const int LargestPort = 65_535;

    private static readonly TimeSpan ClockPatience = TimeSpan.FromMinutes(5);

    // The host's own greetings are talk for developers; what goes wrong still comes, on the error stream. A start that fails is
    // told in our own words below; the host would add a stack trace to it.
    private static readonly string[] QuietHost =
    [
        "--Logging:LogLevel:Default=Warning",
        "--Logging:LogLevel:Microsoft.Hosting.Lifetime=Warning",
        "--Logging:LogLevel:Microsoft.Extensions.Hosting=Critical",
        "--Logging:LogLevel:Microsoft.AspNetCore.DataProtection=Error",
        "--Logging:Console:LogToStandardErrorThreshold=Trace",
    ];

    private readonly Terminal _terminal;

    private readonly Option<string> _port = new("--port")
    {
        Description = "Port to listen on; 0 takes any free one.",
        HelpName = "PORT",
        DefaultValueFactory = _ => new Uri(WebAppOptions.DefaultAddress).Port.ToString(CultureInfo.InvariantCulture),
    };

    private readonly RecordSource _source = new();

    private readonly Option<bool> _lan = new("--lan")
    {
        Description = "Let tablets on the workshop's network in, each after pairing, over TLS. The page /tablets tells how.",
    };

    private readonly Option<bool> _lanHttp = new("--lan-http")
    {
        Description = "As --lan, and over plain http too. Over it no page can be installed or opened offline, and anyone on that network could listen in.",
    };

    /// <summary>Makes the command.</summary>
    /// <param name="terminal">Where it talks.</param>
    public ServeCommand(Terminal terminal)
        : base("serve", "Serves the pages for browser and tablet until Ctrl-C.", "tickover serve --port 5480 --data tickover-data")
    {
        _terminal = terminal;
        Add(_port);
        _source.AddTo(this);
        Add(_lan);
        Add(_lanHttp);
        SetAction(RunAsync);
    }

    private async Task<int> RunAsync(ParseResult parsed, CancellationToken cancellation)
    {
        var typed = parsed.GetRequiredValue(_port);
        if (!int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var port) || port > LargestPort)
        {
            return await RefuseAsync($"--port {typed}: a port is a whole number from 0 to {LargestPort}. Leave it out for the usual one.");
        }

        var place = _source.Place(parsed);
        if (DataFolder.Make(place.DataFolder) is { } complaint)
        {
            return await RefuseAsync(complaint);
        }

        await using var app = await WebApp.BuildAsync(QuietHost, new WebAppOptions
        {
            DataFolder = place.DataFolder,
            Database = place.ConnectionString,
            DailyBackups = true,
            Address = string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{port}"),
            Lan = Lan(parsed),
            SamplesFolder = Path.Combine(AppContext.BaseDirectory, "samples"),
        });
        try
        {
            await app.StartAsync(cancellation);
        }
        catch (IOException e) when (e.InnerException is AddressInUseException)
        {
            return await RefuseAsync($"Port {port} is taken by another program. Stop it or choose another with --port.");
        }

        foreach (var line in Greeting(parsed, place.DataFolder, new Uri(app.Urls.First()).Port))
        {
            await _terminal.Output.WriteLineAsync(line);
        }

        await _terminal.Output.WriteLineAsync(Opened(await app.Services.GetRequiredService<IRecord>().SizeAsync(cancellation)));
        await _terminal.Output.FlushAsync(cancellation);
        await app.WaitForShutdownAsync(cancellation);
        return ExitCode.Done;
    }

    // Which record, and how much is in it: somebody who expects another one sees it before the first entry.
    private static string Opened(RecordSize size)
    {
        var last = size.LastAct is { } at ? string.Create(CultureInfo.InvariantCulture, $", last entry {at.ToLocalTime():yyyy-MM-dd HH:mm}") : ", nothing kept in it yet";
        var clock = size.LastAct > TimeProvider.System.GetUtcNow() + ClockPatience ? " That is ahead of this machine's clock: look at the clock before anything is entered." : "";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"Record {size.Where}: cars {size.Cars}, visits {size.Visits} ({size.OpenVisits} open), readings {size.Readings}, photographs {size.Photographs}{last}.{clock}");
    }

    private LanOptions? Lan(ParseResult parsed) => (parsed.GetValue(_lan), parsed.GetValue(_lanHttp)) switch
    {
        (_, true) => new LanOptions { PlainHttp = true },
        (true, false) => new LanOptions(),
        _ => null,
    };

    private IEnumerable<string> Greeting(ParseResult parsed, string data, int port)
    {
        var address = string.Create(CultureInfo.InvariantCulture, $"http://127.0.0.1:{port}");
        yield return $"Tickover serves {data} at {address}. Ctrl-C stops it.";
        if (Lan(parsed) is { } lan)
        {
            yield return $"Tablets on this network are let in after pairing: see {address}/tablets.";
            if (lan.PlainHttp)
            {
                yield return "Plain http is let in too: over it no page can be installed or opened offline, and anyone on this network could listen in.";
            }
        }
    }

    private async Task<int> RefuseAsync(string complaint)
    {
        await _terminal.Error.WriteLineAsync(complaint);
        return ExitCode.UnusableInput;
    }
}
