using Tickover.Records.Opening;
using Tickover.Workshop.Demonstration;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Tests;

/// <summary>The invented workshop in a real record.</summary>
public sealed class DemonstrationTests(SqliteHome home) : IClassFixture<SqliteHome>
{
    [Fact]
    public async Task It_is_kept_whole_and_once()
    {
        var cancellation = TestContext.Current.CancellationToken;
        using var store = await RecordOpening.OpenAsync(home.NewPlace(), Beginning.Allowed, TimeProvider.System, cancellation);
        var acts = DemonstrationWorkshop.Acts(new DemonstrationDocuments(Repository.Sample("tern-2800"), Repository.Sample("osprey-v8"), Repository.Sample("gannet-1500")), new DateOnly(2026, 11, 25));
        foreach (var ending in new[] { ActEnding.Kept, ActEnding.KeptBefore })
        {
            foreach (var act in acts)
            {
                var outcome = await store.KeepAsync(act, cancellation);
                Assert.True(outcome.Ending == ending, $"{act.Words}: {outcome.Ending}, {outcome.Words}");
            }
        }

        Assert.Equal(acts.Sum(a => a.Items.OfType<Reading>().Count()), (await store.SizeAsync(cancellation)).Readings);
    }
}
