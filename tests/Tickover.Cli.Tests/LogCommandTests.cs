namespace Tickover.Cli.Tests;

/// <summary>Logs on the command line: what is told, what is refused, and with which exit code.</summary>
public sealed class LogCommandTests
{
    [Fact]
    public async Task A_messy_log_tells_what_it_was_taken_for_and_where_every_row_went()
    {
        var ran = await Ran.LineAsync("tickover log samples/osprey-road.csv --car samples/osprey-v8.car.json");

        Assert.Equal(ExitCode.Done, ran.Code);
        Assert.Contains("Latin-1, semicolons, decimal comma, headings in row 6, units in row 7", ran.Output, StringComparison.Ordinal);
        Assert.Contains("mmHg vac", ran.Output, StringComparison.Ordinal);
        Assert.Contains("4,909 rows, 4,904 used", ran.Output, StringComparison.Ordinal);
        Assert.Contains("clock restarted", ran.Output, StringComparison.Ordinal);
        Assert.Contains("found in the log and taken off", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("samples/gas-readings.csv --car samples/osprey-v8.car.json", "Cannot be used")]
    [InlineData("samples/osprey-v8.car.json --car samples/osprey-v8.car.json", "Cannot be used")]
    public async Task What_is_no_log_is_refused_with_a_way_out(string words, string said)
    {
        var ran = await Ran.LineAsync("tickover log " + words);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Contains(said, ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--set map_kpa", "no COLUMN=QUANTITY:UNIT")]
    [InlineData("--set map_kpa=boost", "no quantity of a log")]
    [InlineData("--set map_kpa=map:furlong", "no unit of map")]
    [InlineData("--set lambda=lambda@0", "no bank")]
    [InlineData("--afr 3", "between 6 and 16")]
    public async Task A_wrong_word_about_a_column_is_named(string option, string said)
    {
        var ran = await Ran.LineAsync($"tickover log samples/tern-road.csv --car samples/tern-2800.car.json {option}");

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Contains(said, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_column_told_is_taken_as_told()
    {
        var ran = await Ran.LineAsync("tickover log samples/tern-road.csv --car samples/tern-2800.car.json --set \"map_kpa=ignored\" --set \"lambda=lambda@1:λ\"");

        Assert.Equal(ExitCode.Done, ran.Code);
        Assert.Contains("told", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Not used: map_kpa", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_was_told_is_remembered_in_a_file_and_read_so_again()
    {
        var layout = Path.Combine(Directory.CreateTempSubdirectory("tickover-layout-").FullName, "logger.json");
        const string log = "tickover log samples/tern-road.csv --car samples/tern-2800.car.json";

        var told = await Ran.LineAsync($"{log} --set map_kpa=ignored --remember {layout}");
        var again = await Ran.LineAsync($"{log} --layout {layout}");
        var nothing = await Ran.LineAsync($"{log} --remember {layout}");
        var missing = await Ran.LineAsync($"{log} --layout {layout}.no");

        Assert.Equal(ExitCode.Done, told.Code);
        Assert.Equal(ExitCode.Done, again.Code);
        Assert.Contains("Not used: map_kpa", again.Output, StringComparison.Ordinal);
        Assert.Equal(ExitCode.UnusableInput, nothing.Code);
        Assert.Contains("nothing to remember", nothing.Error, StringComparison.Ordinal);
        Assert.Equal(ExitCode.UnusableInput, missing.Code);
    }

    [Fact]
    public async Task The_trace_is_drawn_into_a_file_and_the_pump_is_judged_in_words()
    {
        var picture = Path.Combine(Directory.CreateTempSubdirectory("tickover-trace-").FullName, "trace.svg");

        var ran = await Ran.LineAsync($"tickover log samples/osprey-road.csv --car samples/osprey-v8.car.json --picture {picture}");

        Assert.Equal(ExitCode.Done, ran.Code);
        Assert.Contains("Accelerator pump: ", ran.Output, StringComparison.Ordinal);
        var svg = System.Xml.Linq.XDocument.Load(picture);
        Assert.Contains("bank 2", svg.Root!.Value, StringComparison.Ordinal);
        Assert.DoesNotContain("var(--on", svg.ToString(), StringComparison.Ordinal);
    }
}
