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

    [Fact]
    public void Card_has_the_settings_and_says_where_they_come_from()
    {
        var file = PaperShop.Write(SetUpCardDocument.Of(Visits.Demonstration(), Visits.Settings));
        var text = PaperShop.Cells(file);

        foreach (var words in new[]
        {
            "Larkfield Tern 2800", "Firing order 1-5-3-6-2-4", "inline six", "Main jet 135* 135*", "130†", "Mixture screw, turns out 2¼ 2¼ 2⅜ 2¼ 2⅛ 2¼", "Air at idle, kg/h 4.0 4.1 4.0 3.9 4.1 4.0",
            "Link rod, between centres, mm 118.4 118.4 118.4", "Idle speed 900 rpm", "Fuel pressure, no flow 0.24 bar", "Reserve 6 L", "* As found, not moved on this visit.",
            "† From the car’s description, not measured on this visit.", "Not in the record: ", "Changes to this car", "24 Nov 2026",
        })
        {
            Assert.Contains(words, text, StringComparison.Ordinal);
        }

        PaperShop.AssertClean(file);
    }

    [Fact]
    public void Twelve_barrels_and_a_long_log_still_make_one_sheet()
    {
        var record = Visits.Demonstration();
        var log = Enumerable.Range(1, 120).Select(i => new WorkNote { Kind = WorkKind.Changed, What = $"Change number {i}", Why = "because", Further = "put back", On = Visits.Today.AddDays(-i) });
        var many = record.Readings.Where(r => r.Place.Kind == PlaceKind.Barrel).SelectMany(r => new[] { r, r with { Id = Id.New<Reading>(), Place = new Place(PlaceKind.Barrel, (int.Parse(r.Place.Name, System.Globalization.CultureInfo.InvariantCulture) + 6).ToString(System.Globalization.CultureInfo.InvariantCulture)) } });
        var file = PaperShop.Write(SetUpCardDocument.Of(record with { Readings = [.. many], Descriptions = [], Notes = [.. log] }, Visits.Settings));

        Assert.Equal(1, PaperShop.Pages(file));
        Assert.Matches(@"This sheet is full: \d+ more entries are in the workshop's record only\.", PaperShop.Cells(file));
        Assert.Contains("Change number 1 ", PaperShop.Cells(file), StringComparison.Ordinal);
        PaperShop.AssertClean(file);
    }
}
