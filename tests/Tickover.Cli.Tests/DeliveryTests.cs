using System.Globalization;
using System.Text.Json;
using Tickover.Reports.Mixture;

namespace Tickover.Cli.Tests;

/// <summary>Data on one stream, talk on the other; a file is there whole or not at all.</summary>
public sealed class DeliveryTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("tickover-cli-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task Output_file_holds_the_same_as_the_standard_output()
    {
        var file = Path.Combine(_folder, "map.json");
        string[] line = ["mixture", Samples.Tern, "--rpm", "2000", "--throttle", "20", "--json"];

        var printed = await Ran.OfAsync(line);
        var written = await Ran.OfAsync([.. line, "-o", file]);

        Assert.Equal(ExitCode.Done, written.Code);
        Assert.Empty(written.Output);
        Assert.Contains(file, written.Error, StringComparison.Ordinal);
        Assert.Equal(printed.Output, await File.ReadAllTextAsync(file));
        Assert.Single(Directory.GetFiles(_folder));
    }

    [Fact]
    public async Task Stopped_work_leaves_the_file_as_it_was()
    {
        var file = Path.Combine(_folder, "map.csv");
        await File.WriteAllTextAsync(file, "before");
        using var stop = new CancellationTokenSource();
        await stop.CancelAsync();

        var ran = await Ran.OfAsync(string.Empty, ["mixture", Samples.Tern, "--csv", "-o", file], stop.Token);

        Assert.Equal(ExitCode.Stopped, ran.Code);
        Assert.Equal("before", await File.ReadAllTextAsync(file));
        Assert.Single(Directory.GetFiles(_folder));
    }

    [Theory]
    [InlineData("no/such/folder/map.csv", "Make it first")]
    [InlineData(".", "is a folder")]
    public async Task File_that_cannot_be_written_is_refused(string name, string words)
    {
        var ran = await Ran.OfAsync("mixture", Samples.Tern, "--rpm", "2000", "--throttle", "20", "--csv", "-o", Path.Combine(_folder, name));

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Contains(words, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Csv_has_one_line_a_barrel_and_point_and_ends_lines_by_the_standard()
    {
        var ran = await Ran.OfAsync("mixture", Samples.Tern, "--rpm", "2000; 3000", "--throttle", "20", "--csv");

        var lines = ran.Output.Split("\r\n");
        Assert.Equal(1 + 6 * 2 + 1, lines.Length);
        Assert.StartsWith("map,barrel,speedRpm,throttleDegrees,lambda,", lines[0], StringComparison.Ordinal);
        Assert.All(lines[1..^1], l => Assert.Equal(lines[0].Split(',').Length, l.Split(',').Length));
        Assert.Empty(lines[^1]);
        Assert.DoesNotContain("\n", ran.Output.Replace("\r\n", string.Empty, StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Trial_shows_both_maps_and_their_difference()
    {
        var ran = await Ran.OfAsync("mixture", Samples.Tern, "--set", "barrel.mainJet=140");

        Assert.Equal(ExitCode.Done, ran.Code);
        Assert.Contains("as fitted", ran.Output, StringComparison.Ordinal);
        Assert.Contains("trial: barrel.mainJet 140", ran.Output, StringComparison.Ordinal);
        Assert.Contains("trial less fitted", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Trial_of_one_barrel_parts_it_from_the_others()
    {
        var ran = await Ran.OfAsync("mixture", Samples.Tern, "--rpm", "4000", "--throttle", "60", "--set", "carburettors[0].barrels[1].mainJet=150", "--json");

        using var document = JsonDocument.Parse(ran.Output);
        var groups = document.RootElement.GetProperty("trial").EnumerateArray()
            .Select(b => string.Join(',', b.GetProperty("numbers").EnumerateArray().Select(n => n.GetInt32())));
        Assert.Contains("2", groups, StringComparer.Ordinal);
    }

    [Fact]
    public async Task Standard_input_stands_for_a_file()
    {
        var fromFile = await Ran.OfAsync("check", Samples.Osprey);
        var fromInput = await Ran.OfAsync(await File.ReadAllTextAsync(Samples.Osprey), ["check", "-"]);

        Assert.Equal(fromFile.Output.Replace(Samples.Osprey, "-", StringComparison.Ordinal), fromInput.Output);
    }

    [Theory]
    [InlineData(false, "TERM=xterm", TerminalColours.Palette256)]
    [InlineData(false, "TERM=xterm NO_COLOR=", TerminalColours.Palette256)]
    [InlineData(false, "TERM=xterm COLORTERM=truecolor", TerminalColours.TrueColour)]
    [InlineData(false, "TERM=xterm COLORTERM=truecolor NO_COLOR=1", TerminalColours.None)]
    [InlineData(true, "TERM=xterm COLORTERM=truecolor", TerminalColours.None)]
    [InlineData(false, "TERM=dumb", TerminalColours.None)]
    public void Colour_is_for_terminals_whose_owner_wants_it(bool redirected, string environment, TerminalColours expected)
    {
        var variables = environment.Split(' ').Select(v => v.Split('=')).ToDictionary(v => v[0], v => v[1], StringComparer.Ordinal);

        Assert.Equal(expected, Terminal.ColoursFor(redirected, name => variables.GetValueOrDefault(name)));
    }

    [Fact]
    public async Task A_map_on_a_terminal_has_colours_and_in_a_file_none()
    {
        using var output = new StringWriter(CultureInfo.InvariantCulture);
        var terminal = new Terminal { Output = output, Error = TextWriter.Null, Input = () => Stream.Null, Colours = TerminalColours.TrueColour };
        var file = Path.Combine(_folder, "map.txt");

        await CommandLine.RunAsync(["mixture", Samples.Tern], terminal, CancellationToken.None);
        await CommandLine.RunAsync(["mixture", Samples.Tern, "-o", file], terminal, CancellationToken.None);

        Assert.Contains("\e[38;2;", output.ToString(), StringComparison.Ordinal);
        var written = await File.ReadAllTextAsync(file);
        Assert.DoesNotContain('\e', written);
        Assert.Contains("+ too lean", written, StringComparison.Ordinal);
    }
}
