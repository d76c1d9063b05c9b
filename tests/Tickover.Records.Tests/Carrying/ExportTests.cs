using System.Globalization;
using System.Text;
using System.Text.Json;
using Tickover.Records.Carrying;
using Tickover.Records.Tests.Opening;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Tests.Carrying;

/// <summary>What is in an export.</summary>
public sealed class ExportTests
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Neither_PINs_nor_their_hashes_are_in_it_or_in_the_journal()
    {
        using var open = await FullRecord.BeginAsync(new SqliteHome());
        var file = await ExportAsync(open.Store);

        var whole = string.Concat(Zips.Entries(file).Values.Select(Encoding.Latin1.GetString));
        var journal = string.Concat((await open.Store.JournalAsync(null, 1000, Cancellation)).SelectMany(l => l.Changes).Select(c => c.Before + c.After));

        Assert.DoesNotContain(FullRecord.Pin, whole, StringComparison.Ordinal);
        Assert.DoesNotContain(FullRecord.Pin, journal, StringComparison.Ordinal);
        Assert.DoesNotContain(Zips.Entries(file).Keys, k => k.Contains("Pin", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public async Task Tables_follow_RFC_4180_and_hold_no_formulas()
    {
        using var open = await FullRecord.BeginAsync(new SqliteHome());
        var file = await ExportAsync(open.Store);

        var owners = Zips.Text(file, "tables/Owner.csv");
        Assert.EndsWith("\r\n", owners, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', owners.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.Equal("'=HYPERLINK(\"http://127.0.0.1\")", Rows(owners)[0]["note"]);
        Assert.Equal("'+44 20 7946 0000", Rows(owners)[0]["telephone"]);
        Assert.Equal("'-Survey", Rows(Zips.Text(file, "tables/TimeLine.csv"))[0]["what"]);
        Assert.Equal("1 Quay\nSaltmarsh", Rows(Zips.Text(file, "tables/House.csv"))[0]["address"]);
        Assert.Equal("the crack, \"left\", λ", Rows(Zips.Text(file, "tables/Photograph.csv"))[0]["caption"]);
    }

    [Fact]
    public async Task Numbers_stand_in_SI_with_their_unit_beside_what_was_typed()
    {
        using var open = await FullRecord.BeginAsync(new SqliteHome());

        var reading = Rows(Zips.Text(await ExportAsync(open.Store), "tables/Reading.csv"))[0];

        Assert.Equal(("3.9 kg/h", "kg/s", "850.5"), (reading["typed"], reading["siUnit"], reading["engineSpeed [rpm]"]));
        Assert.Equal(3.9 / 3600, double.Parse(reading["si"], CultureInfo.InvariantCulture), 1e-15);
    }

    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+1", "'+1")]
    [InlineData("-1", "'-1")]
    [InlineData("@SUM(A1)", "'@SUM(A1)")]
    [InlineData("\t=1", "'\t=1")]
    [InlineData("'=1", "'=1")]
    [InlineData("a=1", "a=1")]
    [InlineData("", "")]
    public void A_text_that_a_spreadsheet_would_reckon_with_is_guarded(string text, string cell) => Assert.Equal(cell, ItemCsv.Guarded(text));

    [Fact]
    public async Task The_manifest_counts_and_hashes_every_entry()
    {
        using var open = await FullRecord.BeginAsync(new SqliteHome());
        var file = await ExportAsync(open.Store);
        var entries = Zips.Entries(file);

        var manifest = JsonSerializer.Deserialize<ExportManifest>(entries["manifest.json"], JsonSerializerOptions.Web)!;

        Assert.Equal(entries.Keys.Where(k => k is not "manifest.json"), manifest.Entries.Keys.Order(StringComparer.Ordinal), StringComparer.Ordinal);
        Assert.All(manifest.Entries, e => Assert.Equal(Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(entries[e.Key])), e.Value.Sha256));
        Assert.Equal(("tickover-record", 1, 9L, 9, 2, 1), (manifest.Format, manifest.Version, manifest.LastAct, manifest.Counts["acts"], manifest.Counts["Reading"], manifest.Counts["pictures"]));
        Assert.Contains("tickover import", Zips.Text(file, "README.txt"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_export_of_a_car_that_is_not_there_leaves_no_file()
    {
        using var open = await OpenRecord.BeginAsync(new SqliteHome());
        var file = Zips.NewFile;

        var trouble = await Assert.ThrowsAsync<RecordTroubleException>(() => RecordExport.WriteAsync(open.Store, file, Id.New<CustomerCar>(), Cancellation));

        Assert.Contains("no such car", trouble.Message, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(Path.GetDirectoryName(file)!));
    }

    [Fact]
    public async Task An_export_to_a_full_disk_leaves_no_file()
    {
        using var disk = Tmpfs.Mount("16k");
        using var open = await FullRecord.BeginAsync(new SqliteHome());

        var trouble = await Assert.ThrowsAsync<RecordTroubleException>(() => RecordExport.WriteAsync(open.Store, Path.Combine(disk.Path, "export.zip"), null, Cancellation));

        Assert.Contains("The disk is full", trouble.Message, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(disk.Path));
    }

    private static async Task<string> ExportAsync(RecordStore store)
    {
        var file = Zips.NewFile;
        await RecordExport.WriteAsync(store, file, null, Cancellation);
        return file;
    }

    // Read by the grammar of RFC 4180, section 2, rather than by the library that wrote it.
    private static List<Dictionary<string, string>> Rows(string csv)
    {
        var records = new List<List<string>> { new() };
        var field = new StringBuilder();
        var quoted = false;
        for (var k = 0; k < csv.Length; k++)
        {
            var c = csv[k];
            if (quoted)
            {
                quoted = c != '"' || (k + 1 < csv.Length && csv[k + 1] == '"');
                k += c == '"' && quoted ? 1 : 0;
                field.Append(quoted ? c.ToString() : "");
            }
            else if (c == '"')
            {
                quoted = true;
            }
            else if (c is ',' or '\r')
            {
                records[^1].Add(field.ToString());
                field.Clear();
            }
            else if (c == '\n')
            {
                records.Add([]);
            }
            else
            {
                field.Append(c);
            }
        }

        return [.. records.Skip(1).Where(r => r.Count > 0).Select(r => records[0].Zip(r).ToDictionary(p => p.First, p => p.Second, StringComparer.Ordinal))];
    }
}
