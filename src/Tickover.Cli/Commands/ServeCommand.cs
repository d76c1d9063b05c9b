using System.CommandLine;
using System.Globalization;
using Microsoft.AspNetCore.Connections;
using Microsoft.Extensions.Hosting;
using Tickover.Cli.Input;
using Tickover.Web;
using Tickover.Web.Lan;

namespace Tickover.Cli.Commands;

/// <summary><c>tickover serve</c>: the pages for the tablet, served from this machine.</summary>
internal sealed class ServeCommand : ExampledCommand
{
    private const int LargestPort = 65_535;

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

    private readonly Option<string> _data = new("--data")
    {
        Description = "Folder of the car documents; made if it is not there.",
        HelpName = "FOLDER",
        DefaultValueFactory = _ => "tickover-data",
    };

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
        Add(_data);
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

        var data = parsed.GetRequiredValue(_data);
        if (DataFolder.Make(data) is { } complaint)
        {
            return await RefuseAsync(complaint);
        }

        await using var app = await WebApp.BuildAsync(QuietHost, new WebAppOptions
        {
            DataFolder = Path.GetFullPath(data),
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

        foreach (var line in Greeting(parsed, data, new Uri(app.Urls.First()).Port))
        {
            await _terminal.Output.WriteLineAsync(line);
        }

        await _terminal.Output.FlushAsync(cancellation);
        await app.WaitForShutdownAsync(cancellation);
        return ExitCode.Done;
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
        yield return $"Tickover serves {Path.GetFullPath(data)} at {address}. Ctrl-C stops it.";
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
