using Tickover.Reports.HandOver;
using Tickover.Reports.Paper;
using Tickover.Reports.Tests.Paper;

namespace Tickover.Reports.Tests.HandOver;

/// <summary>The owner's account as others read it from the file.</summary>
public sealed class HandOverDocumentTests
{
    private static readonly string[] Parts =
    [
        "Your car and this visit", "What we found", "What we did", "Your fuel gauge, explained", "Before and after", "What we changed from original", "What we did not do",
        "How to use the car", "Stop and call us if", "When to look again", "Time, parts and price", "Safety sheet", "How far the figures can be trusted", "Signatures", "The figures behind",
    ];

    [Fact]
    public void All_fourteen_parts_stand_in_order()
    {
        foreach (var record in new[] { Visits.Demonstration(), Visits.Empty() })
        {
            var text = PaperShop.Text(PaperShop.Write(HandOverDocument.Of(record, Visits.Settings)));
            var at = -1;
            foreach (var part in Parts)
            {
                var next = text.IndexOf(part, at + 1, StringComparison.Ordinal);
                Assert.True(next > at, $"'{part}' is missing or out of order");
                at = next;
            }
        }
    }
}
