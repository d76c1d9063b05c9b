namespace Tickover.Cli.Tests;

public sealed class FaultCommandTests
{
    [Fact]
    public async Task A_dialogue_by_pipe_ends_once_a_cause_stands()
    {
        var ran = await Ran.OfAsync("perhaps\none-weak\nno\nno\nno\n", ["fault", "--symptom", "flat-spot-stab", "--ask"]);

        Assert.Equal(ExitCode.Done, ran.Code);
        Assert.Contains("\"perhaps\" is no answer here. Write one-weak, both-weak, late, good or unsure", ran.Error, StringComparison.Ordinal);
        Assert.True(ran.Error.IndexOf("Caution", StringComparison.Ordinal) < ran.Error.IndexOf("How are the squirts?", StringComparison.Ordinal));
        Assert.Contains("One cause stands: One accelerator pump nozzle is blocked", ran.Output, StringComparison.Ordinal);
        Assert.Single(ran.Error.Split('\n'), l => l.StartsWith("Next:", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Undo_takes_the_last_answer_back_and_stop_ends_with_the_case_open()
    {
        var ran = await Ran.OfAsync("both-weak\nundo\nstop\n", ["fault", "--symptom", "flat-spot-stab", "--ask"]);

        Assert.Equal(ExitCode.Done, ran.Code);
        Assert.DoesNotContain("Answered", ran.Output, StringComparison.Ordinal);
        Assert.Equal(2, ran.Error.Split('\n').Count(l => l is "Next: watch-shots\r" or "Next: watch-shots"));
    }

    [Fact]
    public async Task With_nothing_left_to_ask_the_answer_is_no()
    {
        var ran = await Ran.LineAsync("tickover fault --symptom oil-rises --ruled-out float-valve-leak --ruled-out pump-diaphragm");

        Assert.Equal(ExitCode.AnswerIsNo, ran.Code);
        Assert.Contains("specialist", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Something that this table does not hold: over 99 %", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("tickover fault", "What is wrong with the car?")]
    [InlineData("tickover fault --symptom \"flat spot when stabbing\"", "Closest: flat-spot-stab")]
    [InlineData("tickover fault --symptom no-idle --ruled-out idle-jet-bloked", "Did you mean \"idle-jet-blocked\"")]
    [InlineData("tickover fault --symptom no-idle --answer swap-idle-jet", "an equals sign")]
    [InlineData("tickover fault --symptom no-idle --answer swap-idle-jet=yes", "moves, stays or unsure")]
    [InlineData("tickover fault --symptom no-idle --answer swap=yes", "There is no test \"swap\"")]
    [InlineData("tickover fault --case samples/tern.leak.json", "tickover-fault-1")]
    [InlineData("tickover fault --case samples/no-such.fault.json", "There is no file")]
    [InlineData("tickover fault --symptom no-idle --knowledge samples/tern.fault.json", "tickover-faults-1")]
    [InlineData("tickover fault --case - --ask", "Name the file")]
    [InlineData("tickover fault --list cars", "symptoms")]
    public async Task What_cannot_be_used_is_said_with_the_way_out(string line, string says)
    {
        var ran = await Ran.LineAsync(line);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Empty(ran.Output);
        Assert.Contains(says, ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_workshops_own_table_goes_on_top_with_its_closed_cases()
    {
        var file = Path.Combine(Directory.CreateTempSubdirectory("tickover-cli-").FullName, "ours.json");
        await File.WriteAllTextAsync(file, """{ "format": "tickover-faults-1", "name": "Saltmarsh Motor House", "version": "3", "closed": [{ "cause": "accel-diaphragm", "found": 30, "of": 50 }] }""");

        var ran = await Ran.OfAsync("fault", "--symptom", "flat-spot-stab", "--knowledge", file, "--json");

        Assert.Contains("\"knowledge\": \"Saltmarsh Motor House 3\"", ran.Output, StringComparison.Ordinal);
        Assert.Contains("\"learned\": 0.315,", ran.Output, StringComparison.Ordinal);      // (0.03*50 + 30)/100
        Assert.Contains("\"prior\": 0.03,", ran.Output, StringComparison.Ordinal);
    }
}
