using Tickover.Cli.Commands;

namespace Tickover.Cli.Tests;

/// <summary>Every example in a help text runs on the samples.</summary>
public sealed class ExampleTests
{
    private static readonly Terminal Nowhere = new() { Output = TextWriter.Null, Error = TextWriter.Null, Input = () => Stream.Null };

    // These search over jets and readings for many seconds, and SchemaTests runs the same lines for their JSON.
    private static readonly string[] Searching = ["tickover jets ", "tickover next "];

    public static TheoryData<string> Examples => [.. All.Where(e => !Searches(e))];

    public static TheoryData<string> SearchingExamples => [.. All.Where(Searches)];

    private static IEnumerable<string> All =>
        CommandLine.Root(Nowhere).Subcommands.OfType<ExampledCommand>().Where(c => c is not RecordedCommand).SelectMany(c => c.Examples).Where(e => !e.StartsWith("tickover serve", StringComparison.Ordinal));

    [Theory]
    [Trait("Speed", "slow")]
    [MemberData(nameof(SearchingExamples))]
    public Task Example_that_searches_runs(string example) => RunsAsync(example);

    [Theory]
    [MemberData(nameof(Examples))]
    public Task Example_in_a_help_text_runs(string example) => RunsAsync(example);

    [Theory]
    [InlineData("check")]
    [InlineData("mixture")]
    [InlineData("explain")]
    [InlineData("serve")]
    [InlineData("schema")]
    [InlineData("record")]
    [InlineData("backup")]
    [InlineData("restore")]
    [InlineData("export")]
    [InlineData("import")]
    [InlineData("demo")]
    [InlineData("handover")]
    [InlineData("gas")]
    [InlineData("log")]
    [InlineData("balance")]
    [InlineData("practice")]
    [InlineData("linkage")]
    [InlineData("wall")]
    [InlineData("leak")]
    [InlineData("supply")]
    [InlineData("tank")]
    [InlineData("sender")]
    [InlineData("gauge")]
    [InlineData("fault")]
    public async Task Help_of_a_command_shows_an_example(string command)
    {
        var ran = await Ran.OfAsync(command, "--help");

        Assert.Equal(ExitCode.Done, ran.Code);
        Assert.Contains("Examples:", ran.Output, StringComparison.Ordinal);
        Assert.Contains($"  tickover {command}", ran.Output, StringComparison.Ordinal);
        Assert.All(ran.Output.Split('\n').TakeWhile(l => !l.StartsWith("Examples:", StringComparison.Ordinal)), l => Assert.InRange(l.TrimEnd().Length, 0, Terminal.DefaultWidth));
    }

    private static bool Searches(string example) => Array.Exists(Searching, s => example.StartsWith(s, StringComparison.Ordinal));

    private static async Task RunsAsync(string example)
    {
        var folder = Directory.CreateTempSubdirectory("tickover-cli-");
        try
        {
            var ran = await Ran.LineAsync(example.Replace("tickover-data", Path.Combine(folder.FullName, "data"), StringComparison.Ordinal));

            Assert.True(ran.Code is ExitCode.Done or ExitCode.AnswerIsNo, ran.Error);
            Assert.NotEmpty(ran.Output);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
