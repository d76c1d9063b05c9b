using System.Text.Json;
using Json.Schema;
using Tickover.Architecture.Tests;
using Tickover.Cli.Commands;
using Tickover.Records;
using Tickover.Records.Opening;
using Tickover.Workshop.Visits;

namespace Tickover.Cli.Tests;

/// <summary>The commands on a record: their examples in order, what they print and what they refuse.</summary>
public sealed class RecordCommandTests : IAsyncLifetime
{
    private static readonly Terminal Nowhere = new() { Output = TextWriter.Null, Error = TextWriter.Null, Input = () => Stream.Null };
    private readonly string _folder = Directory.CreateTempSubdirectory("tickover-cli-").FullName;

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        using var store = await OpenAsync(Beginning.Allowed);
        var car = new CustomerCar { Name = "Larkfield Tern 2800", Slug = "larkfield-tern-2800", Registration = "LTN 280" };
        var visit = new Visit { Car = car.Id, ArrivedOn = new DateOnly(2026, 11, 12) };
        var mark = new StageMark { Id = StageMark.IdFor(visit.Id, Stage.StripDown), Visit = visit.Id, Stage = Stage.StripDown, State = StageState.Begun };
        Assert.True((await store.KeepAsync(new Act { Key = Guid.NewGuid(), Items = [car, visit, mark], Words = "car taken in" }, Cancellation)).IsKept);
    }

    public ValueTask DisposeAsync()
    {
        Directory.Delete(_folder, recursive: true);
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task Every_example_of_a_command_on_a_record_runs()
    {
        var examples = CommandLine.Root(Nowhere).Subcommands.OfType<RecordedCommand>().SelectMany(c => c.Examples).ToList();

        Assert.Equal(8, examples.Count);
        foreach (var example in examples)
        {
            var ran = await RunAsync(example);
            Assert.Equal((ExitCode.Done, ""), (ran.Code, ran.Error));
            Assert.NotEmpty(ran.Output);
        }
    }

    [Fact]
    public async Task Record_says_what_is_in_it_and_which_visits_are_open()
    {
        var ran = await RunAsync("tickover record --data tickover-data");

        Assert.Contains(Path.Combine(_folder, "tickover-data", "workshop.db"), ran.Output, StringComparison.Ordinal);
        Assert.Contains("1 car, 1 visit, 0 readings, 0 photographs", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Last act 1,", ran.Output, StringComparison.Ordinal);
        Assert.Matches("1 +Larkfield Tern 2800 +Strip-down +2026-11-12", ran.Output);
    }

    [Fact]
    public async Task Record_prints_JSON_after_its_schema()
    {
        var ran = await RunAsync("tickover record --json --data tickover-data");

        using var document = JsonDocument.Parse(ran.Output);
        var schema = JsonSchema.FromText(Repository.Read("docs/schemas/record.schema.json"));
        Assert.True(schema.Evaluate(document.RootElement).IsValid, ran.Output);
        Assert.Equal("Strip-down", document.RootElement.GetProperty("openVisits")[0].GetProperty("stage").GetString());
        using var other = JsonDocument.Parse("{ \"schema\": \"tickover/record/1\", \"cars\": -1 }");
        Assert.False(schema.Evaluate(other.RootElement).IsValid);
    }

    [Theory]
    [InlineData("tickover record --data nowhere", "no record")]
    [InlineData("tickover backup b.db --data nowhere", "no record")]
    [InlineData("tickover export e.zip --data nowhere", "no record")]
    [InlineData("tickover restore nothing.db --data tickover-data", "no file")]
    [InlineData("tickover import nothing.zip --data nowhere", "no file")]
    [InlineData("tickover export e.zip --car dunlin --data tickover-data", "larkfield-tern-2800")]
    [InlineData("tickover record --database nonsense --data tickover-data", "connection string")]
    [InlineData("tickover backup b.db --database Host=127.0.0.1;Port=1;Timeout=1;Password=secret-word --data tickover-data", "does not answer")]
    [InlineData("tickover restore b.db --database Host=127.0.0.1;Password=secret-word --data tickover-data", "pg_restore")]
    public async Task What_cannot_be_done_is_said_in_one_sentence_and_no_record_is_made(string line, string words)
    {
        var ran = await RunAsync(line);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Contains(words, ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("secret-word", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("Internal fault", ran.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(_folder, "nowhere")));
    }

    [Fact]
    public async Task An_import_that_contradicts_is_answered_with_no()
    {
        await RunAsync("tickover export everything.zip --data tickover-data");
        using (var store = await OpenAsync(Beginning.Expected))
        {
            var car = Assert.Single(await store.AllAsync<CustomerCar>(Cancellation));
            await store.KeepAsync(new Act { Key = Guid.NewGuid(), Items = [car with { Note = "alarm" }], Words = "note" }, Cancellation);
        }

        var ran = await RunAsync("tickover import everything.zip --data tickover-data");

        Assert.Equal(ExitCode.AnswerIsNo, ran.Code);
        Assert.Contains("The car Larkfield Tern 2800 is here already and reads otherwise: note.", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_record_that_is_open_elsewhere_is_not_replaced()
    {
        await RunAsync("tickover backup monday.db --data tickover-data");
        using var server = await OpenAsync(Beginning.Expected);

        var ran = await RunAsync("tickover restore monday.db --data tickover-data");

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Contains("Stop that one first", ran.Error, StringComparison.Ordinal);
    }

    private Task<RecordStore> OpenAsync(Beginning beginning) =>
        RecordOpening.OpenAsync(new RecordPlace(Path.Combine(_folder, "tickover-data")), beginning, TimeProvider.System, Cancellation);

    // The commands run at the root of the clone, so the names in a line are led into the test's own folder.
    private Task<Ran> RunAsync(string line) => Ran.OfAsync([.. Ran.Words(line)[1..].Select(w =>
        w.EndsWith(".db", StringComparison.Ordinal) || w.EndsWith(".zip", StringComparison.Ordinal) || w.EndsWith(".pdf", StringComparison.Ordinal) || w.StartsWith("tickover-", StringComparison.Ordinal) || w is "nowhere" ? Path.Combine(_folder, w) : w)]);
}
