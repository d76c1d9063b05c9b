using System.Text.Json;
using Tickover.Cli.Input;

namespace Tickover.Cli.Tests;

/// <summary>Tables of gas readings as people have them; no row is ever lost without a word.</summary>
public sealed class GasTableTests
{
    private static readonly string[] FromInput = ["gas", "-", "--json"];

    [Theory]
    [InlineData("co,hc,co2,o2\n2.52,345,13.0,0.63\n")]
    [InlineData("\uFEFFO2;CO2;HC;CO\r\n0,63;13,0;345;2,52\r\n")]
    [InlineData("CO\tHC\tCO2\tO2\r2,52\t345\t13,0\t0,63")]
    [InlineData("\"CO [% vol]\",\"HC (ppm)\",\"CO₂ %\",\"O₂ %\"\n\"2,52\",345,\"13,0\",\"0,63 %\"\n")]
    [InlineData("sep=;\nco;hc;co2;o2\n2,52;345;130;0,63\n")]
    [InlineData("\n\nco,hc,co2,o2\n\n2.52,345,13.0,0.63\n\n")]
    public async Task One_reading_comes_out_alike_however_it_was_written(string table)
    {
        var ran = await Ran.OfAsync(table, FromInput);

        Assert.Equal(ExitCode.Done, ran.Code);
        using var document = JsonDocument.Parse(ran.Output);
        var record = Assert.Single(document.RootElement.GetProperty("records").EnumerateArray());
        Assert.Equal(0.94297, record.GetProperty("lambda").GetDouble(), 5);
        Assert.Empty(document.RootElement.GetProperty("refused").EnumerateArray());
    }

    [Theory]
    [InlineData("1.0,200,,0.6", "CO₂ is missing")]
    [InlineData("1.0,200", "O₂ is missing")]
    [InlineData("1,0,200,14,0,0,6", "decimal commas between commas")]
    [InlineData("\"1.0,200,14.0,0.6", "CO '1.0,200,14.0,0.6' is not a number")]
    [InlineData("1.0,200,14.0,99", "out of range")]
    [InlineData("---,---,---,---", "CO is missing")]
    public async Task Bad_row_is_named_with_its_line_and_kept_out(string row, string reason)
    {
        var ran = await Ran.OfAsync($"co,hc,co2,o2\n2.52,345,13.0,0.63\n{row}\n1.0,200,14.0,0.6\n", FromInput);

        Assert.Equal(ExitCode.AnswerIsNo, ran.Code);
        Assert.Contains("Line 3: ", ran.Error, StringComparison.Ordinal);
        Assert.Contains(reason, ran.Error, StringComparison.Ordinal);
        using var document = JsonDocument.Parse(ran.Output);
        Assert.Equal([2, 4], document.RootElement.GetProperty("records").EnumerateArray().Select(r => r.GetProperty("line").GetInt32()));
        var refused = Assert.Single(document.RootElement.GetProperty("refused").EnumerateArray());
        Assert.Equal(3, refused.GetProperty("line").GetInt32());
    }

    [Fact]
    public async Task Names_and_units_between_the_rows_are_no_readings_and_no_fault()
    {
        var ran = await Ran.OfAsync("co;hc;co2;o2\n%;ppm;%;%\n2,52;345;13,0;0,63\nco;hc;co2;o2\n1,0;200;14,0;0,6\n", FromInput);

        Assert.Equal(ExitCode.Done, ran.Code);
        Assert.Contains("Line 2: names or units", ran.Error, StringComparison.Ordinal);
        Assert.Contains("Line 4: names or units", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "is empty")]
    [InlineData("co,hc,o2\n1,2,3\n", "no column co2")]
    [InlineData("co,hc,co2,o2\n", "No reading is left")]
    [InlineData("co,hc,co2,o2\nx,x,x,x\n", "No reading is left")]
    public async Task Table_without_a_reading_is_unusable(string table, string words)
    {
        var ran = await Ran.OfAsync(table, FromInput);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Empty(ran.Output);
        Assert.Contains(words, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Table_out_has_a_line_for_each_reading_and_ends_lines_by_the_standard()
    {
        var ran = await Ran.LineAsync("tickover gas samples/gas-readings.csv --csv");

        var lines = ran.Output.Split("\r\n");
        Assert.Equal(9 + 2, lines.Length); // a heading, nine readings, and nothing after the last end
        Assert.StartsWith("line,fuel,constants,co,hc,co2,o2,", lines[0], StringComparison.Ordinal);
        Assert.All(lines[1..^1], line => Assert.Equal(lines[0].Count(c => c == ','), line.Count(c => c == ',')));
        Assert.Contains("Columns not used: Time.", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Long_table_is_shown_in_part_and_says_so()
    {
        var table = "co,hc,co2,o2\n" + string.Concat(Enumerable.Repeat("2.52,345,13.0,0.63\n", 501));

        var ran = await Ran.OfAsync(table, ["gas", "-"]);

        Assert.Contains("The first 500 of 501 readings", ran.Output, StringComparison.Ordinal);
        Assert.Contains("501 good", ran.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Junk_never_ends_in_an_exception()
    {
        var random = new Random(20_260_711);
        var terminal = (byte[] junk) => new Terminal { Output = TextWriter.Null, Error = TextWriter.Null, Input = () => new MemoryStream(junk) };
        const string letters = "co,hc;2o\t\"\r\n0.5-λ% ";
        for (var i = 0; i < 2000; i++)
        {
            var junk = new byte[random.Next(200)];
            random.NextBytes(junk);
            var text = "co,hc,co2,o2\n" + string.Concat(Enumerable.Range(0, random.Next(80)).Select(_ => letters[random.Next(letters.Length)]));

            GasTable.Read("-", terminal(junk), TestContext.Current.CancellationToken);
            GasTable.Read("-", terminal(System.Text.Encoding.UTF8.GetBytes(text)), TestContext.Current.CancellationToken);
        }
    }
}
