using Tickover.Reports.HandOver;
using Tickover.Reports.Paper;
using Tickover.Reports.Tests.Paper;
using Tickover.Workshop.Visits;
using Tickover.Workshop.Visits.Authorities;

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
            var text = PaperShop.Cells(PaperShop.Write(HandOverDocument.Of(record, Visits.Settings)));
            var at = -1;
            foreach (var part in Parts)
            {
                var next = text.IndexOf(part, at + 1, StringComparison.Ordinal);
                Assert.True(next > at, $"'{part}' is missing or out of order");
                at = next;
            }
        }
    }

    [Fact]
    public void What_was_measured_for_a_computation_stands_with_what_it_comes_to()
    {
        var record = Visits.Demonstration();
        var sheet = new Worksheet { Visit = record.Visit.Id, Stage = Stage.Storage, Form = "tickover-wall-1", Name = "Left tank, underside", On = Visits.Today, Document = Visits.SampleFile("tern.wall.json") };

        var text = PaperShop.Cells(PaperShop.Write(HandOverDocument.Of(record with { Worksheets = [sheet] }, Visits.Settings)));

        Assert.Contains("Measured and worked out", text, StringComparison.Ordinal);
        Assert.Contains("a patch over one place is refused", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Measured and worked out", PaperShop.Cells(PaperShop.Write(HandOverDocument.Of(record, Visits.Settings))), StringComparison.Ordinal);
    }

    [Fact]
    public void Tanks_stand_in_the_account_cut_through_with_what_was_last_in_them_and_what_the_pick_up_cannot_reach()
    {
        var record = Visits.Empty();
        var sheet = new Worksheet { Visit = record.Visit.Id, Stage = Stage.Storage, Form = "tickover-tank-1", Name = "Saddle tanks", On = Visits.Today, Document = Visits.SampleFile("tern.tank.json") };

        var text = PaperShop.Cells(PaperShop.Write(HandOverDocument.Of(record with { Worksheets = [sheet] }, Visits.Settings)));

        Assert.Contains("The tanks hold 80.3 litres to the brim: left 40.2, right 40.2", text, StringComparison.Ordinal);
        Assert.Contains("From behind, to scale", text, StringComparison.Ordinal);
        Assert.Contains("Litres over the dip, car level", text, StringComparison.Ordinal);
        Assert.Contains("Drawn with what was in when it was last read", text, StringComparison.Ordinal);
        Assert.Contains("Below the dashed line 3.4 l stay in", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gauge_described_on_a_worksheet_is_explained_though_nobody_filled_the_tanks_in_steps()
    {
        var record = Visits.Empty();
        var sheet = new Worksheet { Visit = record.Visit.Id, Stage = Stage.Gauge, Form = "tickover-gauge-1", Name = "Gauge", On = Visits.Today, Document = Visits.SampleFile("tern.gauge.json") };

        var text = PaperShop.Cells(PaperShop.Write(HandOverDocument.Of(record with { Worksheets = [sheet] }, Visits.Settings)));

        Assert.DoesNotContain("The tanks and the gauge were not measured", text, StringComparison.Ordinal);
        Assert.Contains("not measured by filling in steps", text, StringComparison.Ordinal);
        Assert.Contains("give it 4 minutes", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Key_figures_stand_with_unit_band_instrument_and_day()
    {
        var text = PaperShop.Cells(PaperShop.Write(HandOverDocument.Of(Visits.Demonstration(), Visits.Settings)));

        foreach (var figure in new[]
        {
            "48,210 to 48,262 miles", "Your Larkfield Tern 2800", "0.82 ±0.02", "0.90 ±0.02", "3.7 %", "at 820 rpm", "at 900 rpm", "11.2 ±0.3 bar", "airflow meter, ±0.1 kg/h", "30 Nov 2026",
            "6 L", "46 L", "Stop and ask beyond £900.00", "£85.00", "checked 12 November 2025",
        })
        {
            Assert.Contains(figure, text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Worst_findings_come_first_and_an_unsafe_one_left_stands_in_a_frame()
    {
        var record = Visits.Demonstration();
        var left = record.Findings.First(f => f.Severity == Severity.Unsafe) with { State = FindingState.Declined, Decision = "The owner takes her home on a trailer" };
        var text = PaperShop.Cells(PaperShop.Write(HandOverDocument.Of(record with { Findings = [.. record.Findings.Where(f => f.Id != left.Id).Reverse(), left] }, Visits.Settings)));

        Assert.Contains("Not put right, and unsafe", text, StringComparison.Ordinal);
        Assert.True(text.IndexOf("Unsafe", StringComparison.Ordinal) < text.IndexOf("Soon Gauge", StringComparison.Ordinal), text[..1200]);
        Assert.Contains("Not done: you did not want it on 24 Nov 2026. The owner takes her", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_overridden_gate_is_told_with_reason_and_person()
    {
        var record = Visits.Demonstration();
        var person = record.Workshop.People[0];
        var text = PaperShop.Cells(PaperShop.Write(HandOverDocument.Of(
            record with { SignOffs = [.. record.SignOffs, new SignOff { Gate = Gate.FitForRoad, Person = person.Id, Override = "brake lamp bulb to come, moved in the yard only", On = Visits.Today, Kept = 10_000 }] }, Visits.Settings)));

        Assert.Contains($"Before the road, checks were passed over by {person.Name} on 2 Dec 2026. Reason: Brake lamp bulb to come, moved in the yard only.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_ours_alone_is_not_told()
    {
        var record = Visits.Demonstration();
        var hidden = new Photograph { Caption = "Caption of a photograph kept back", InHandOver = false };
        var html = PaperHtml.Write(HandOverDocument.Of(record with { Photographs = [hidden], Car = record.Car with { Note = "note on the car" }, Owner = new Owner { Name = "Mrs Teal", Note = "note on the owner" } }, Visits.Settings));

        Assert.Contains(record.Notes, n => n.Kind == WorkKind.Private);
        Assert.All(record.Notes.Where(n => n.Kind == WorkKind.Private), n => Assert.DoesNotContain(n.What, html, StringComparison.Ordinal));
        Assert.DoesNotContain("kept back", html, StringComparison.Ordinal);
        Assert.DoesNotContain("note on", html, StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_record_is_said_to_be_empty_and_nothing_is_made_up()
    {
        var text = PaperShop.Cells(PaperShop.Write(HandOverDocument.Of(Visits.Empty(), Visits.Settings with { Address = "" })));

        foreach (var words in new[]
        {
            "No complaint was noted.", "No findings were noted.", "No work was noted in words.", "No parts were noted as fitted.", "No check was signed.",
            "The tanks and the gauge were not measured on this visit", "Balance and mixture were not measured", "Compression was not measured.", "No road test was noted.",
            "No change from original was noted.", "No work was noted as advised and not done.", "Nothing was noted as impossible to measure.", "No advice on starting", "telephone number was not noted",
            "no estimate was noted", "no sum was agreed", "no time was noted", "no price was noted", "No question to you was noted.", "No terms of guarantee were noted.",
            "No confirmation of a caution is in the record.", "Nothing was measured.", "No instrument was noted.", "not signed yet", "No figure as found or as left is in the record.",
        })
        {
            Assert.Contains(words, text, StringComparison.Ordinal);
        }

        Assert.DoesNotContain("kg/h", text, StringComparison.Ordinal);
        Assert.DoesNotContain("£", text, StringComparison.Ordinal);
    }

    [Fact]
    public void American_words_and_imperial_units_follow_the_house()
    {
        var record = Visits.Demonstration(h => h with { Words = TradeWords.American, Units = UnitChoice.Imperial, Country = "US", Currency = "USD" });
        var document = HandOverDocument.Of(record, Visits.Settings);
        var text = PaperShop.Cells(PaperShop.Write(document, PaperSize.Letter));

        Assert.Equal("en-US", document.Language);
        Assert.Contains("you smell gasoline", text, StringComparison.Ordinal);
        Assert.Contains("leave the hood shut", text, StringComparison.Ordinal);
        Assert.Contains("December 2, 2026", text, StringComparison.Ordinal);
        Assert.Contains("lb/h", text, StringComparison.Ordinal);
        Assert.Contains("psi", text, StringComparison.Ordinal);
        Assert.Contains("$85.00", text, StringComparison.Ordinal);
        Assert.Contains("Whom to defer to: United States", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_country_has_its_authorities_on_the_safety_sheet()
    {
        Assert.All(AuthorityCatalogue.Countries, country =>
        {
            var html = System.Net.WebUtility.HtmlDecode(PaperHtml.Write(HandOverDocument.Of(Visits.Demonstration(h => h with { Country = country }), Visits.Settings)));
            Assert.Contains(AuthorityCatalogue.Of(country)[0].Name, html, StringComparison.Ordinal);
        });
    }

    [Theory]
    [InlineData(PaperSize.A4)]
    [InlineData(PaperSize.Letter)]
    public void Pages_are_clean(PaperSize size)
    {
        var record = Visits.Demonstration();
        var photographs = record.Findings.Select(f => new Photograph { Finding = f.Id, Caption = "As found", Marks = [new PhotographMark(0.1, 0.1, 0.8, 0.8, "look here")] }).ToList();
        var file = PaperShop.Write(HandOverDocument.Of(record with { Photographs = photographs }, Visits.Settings with { Picture = _ => PaperShop.Jpeg }), size);

        PaperShop.AssertClean(file);
        Assert.InRange(PaperShop.Pages(file), 15, 40);
    }

    [Fact]
    public void Photographs_stand_with_their_findings()
    {
        var record = Visits.Demonstration();
        var finding = record.Findings[0];
        var html = PaperHtml.Write(HandOverDocument.Of(
            record with { Photographs = [new Photograph { Finding = finding.Id, Caption = "Weeps at the clip", Marks = [new PhotographMark(0, 0, 1, 1, "here")] }, new Photograph { Caption = "On the bench" }] },
            Visits.Settings with { Picture = _ => PaperShop.Jpeg }));

        Assert.Contains($"</b>: {finding.What}. Weeps at the clip. Arrow: here.</figcaption>", html, StringComparison.Ordinal);
        Assert.True(html.IndexOf("Photographs of what we found", StringComparison.Ordinal) < html.IndexOf("Photographs of the work", StringComparison.Ordinal));
    }

    [Fact]
    public void Square_code_leads_back_to_the_record()
    {
        var file = PaperShop.Write(HandOverDocument.Of(Visits.Demonstration(), Visits.Settings));
        var page = PaperShop.Words(file).First(w => w.Word.StartsWith(Visits.Settings.Address, StringComparison.Ordinal)).Page.ToString(System.Globalization.CultureInfo.InvariantCulture);
        var picture = Path.ChangeExtension(file, null);
        PaperShop.Run("pdftoppm", "-r", "150", "-png", "-f", page, "-l", page, "-singlefile", file, picture);

        Assert.Equal(Visits.Settings.Address, PaperShop.Run("zbarimg", "--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", picture + ".png").Trim());
    }
}
