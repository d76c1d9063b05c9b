using System.Globalization;
using Tickover.Records;
using Tickover.Records.Opening;
using Tickover.Workshop.Visits;

namespace Tickover.Kill;

/// <summary>The program that is killed: four tablets at once keep entries, and each one acknowledged is printed.</summary>
public static class Writer
{
    private const int Tablets = 4;

    public static async Task<int> RunAsync(string folder)
    {
        using var store = await RecordOpening.OpenAsync(new RecordPlace(folder), Beginning.Allowed, TimeProvider.System);
        await Task.WhenAll(Enumerable.Range(0, Tablets).Select(tablet => Task.Run(() => KeepOnAsync(store, tablet))));
        return 0;
    }

    private static async Task KeepOnAsync(RecordStore store, int tablet)
    {
        while (true)
        {
            var key = Guid.NewGuid();
            var outcome = await store.KeepAsync(new Act
            {
                Key = key,
                Items = [new Owner { Name = $"Owner {key:N}", Note = new string('n', 500) }, new Instrument { Name = $"Instrument {key:N}" }],
                Words = key.ToString("N"),
                Device = $"tablet {tablet}",
            });

            // One line in one write: what the reader has got whole was acknowledged.
            await Console.Out.WriteLineAsync(string.Create(CultureInfo.InvariantCulture, $"{outcome.Number} {key:N}"));
        }
    }
}
