using Tickover.Reports.HandOver;
using Tickover.Reports.Tests.Paper;
using Tickover.Workshop.Visits;

namespace Tickover.Reports.Tests.HandOver;

/// <summary>The card that stays with the car.</summary>
public sealed class SetUpCardDocumentTests
{
    [Theory]
    [InlineData(PaperSize.A4)]
    [InlineData(PaperSize.Letter)]
    public void Card_is_one_sheet(PaperSize size)
    {
        foreach (var record in new[] { Visits.Demonstration(), Visits.Empty() })
        {
            Assert.Equal(1, PaperShop.Pages(PaperShop.Write(SetUpCardDocument.Of(record, Visits.Settings), size)));
        }
    }
}
