using System.Globalization;
using System.IO.Compression;
using System.Text;
using Tickover.Records.Carrying;
using Tickover.Records.Tests.Opening;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Tests.Carrying;

/// <summary>Exports that are none, or were tampered with (OWASP ASVS 5.0, V5 File Handling): clear words, and nothing is changed.</summary>
public sealed class BadZipTests : IAsyncLifetime
{
    private OpenRecord _open = null!;
    private string _good = "";
    private RecordStore _into = null!;

    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync()
    {
        _open = await FullRecord.BeginAsync(new SqliteHome());
        _good = Zips.NewFile;
        await RecordExport.WriteAsync(_open.Store, _good, null, Cancellation);
        _into = await Opened.OpenAsync(Opened.NewPlace());
    }

    public ValueTask DisposeAsync()
    {
        _open.Dispose();
        _into.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task The_good_one_rewritten_is_taken_in() => Assert.True((await RecordImport.ReadAsync(_into, Zips.Changed(_good, _ => { }), Cancellation)).IsIn);

    [Fact]
    public async Task A_file_that_is_not_there() => await RefusedAsync("nowhere.zip", "no file");

    [Fact]
    public async Task A_text()
    {
        var path = Zips.NewFile;
        await File.WriteAllTextAsync(path, "Dear Sirs", Cancellation);
        await RefusedAsync(path, "is no zip");
    }

    [Fact]
    public async Task A_zip_of_something_else() =>
        await RefusedAsync(Zips.Write([KeyValuePair.Create("letter.txt", "Dear Sirs"u8.ToArray())]), "no export of a record");

    [Theory]
    [InlineData("{ \"format\": \"songs\" }", "something else")]
    [InlineData("[]", "something else")]
    [InlineData("{", "cannot be read")]
    [InlineData("{ \"format\": \"tickover-record\", \"version\": 1 }", "not complete")]
    [InlineData("{ \"format\": \"tickover-record\", \"version\": \"new\" }", "cannot be read")]
    [InlineData("{ \"format\": \"tickover-record\", \"version\": 2 }", "newer Tickover")]
    public async Task A_manifest_that_is_not_ours(string manifest, string words) =>
        await RefusedAsync(Zips.Changed(_good, e => e["manifest.json"] = Encoding.UTF8.GetBytes(manifest), withHashes: false), words);

    [Theory]
    [InlineData("items/Finding.json", "perished", "mended")]
    [InlineData("journal.json", "found", "stolen")]
    [InlineData("README.txt", "workshop", "WORKSHOP")]
    [InlineData("tables/Finding.csv", "perished", "mended")]
    public async Task An_entry_changed_since(string entry, string old, string fresh) =>
        await RefusedAsync(Zips.Changed(_good, e => Zips.Replace(e, entry, old, fresh), withHashes: false), "is not what was exported");

    [Fact]
    public async Task A_picture_changed_since() => await RefusedAsync(
        Zips.Changed(_good, e => e[e.Keys.Single(k => k.StartsWith("pictures/", StringComparison.Ordinal))][200] ^= 1, withHashes: false), "is not what was exported");

    [Theory]
    [InlineData("items/Visit.json")]
    [InlineData("journal.json")]
    [InlineData("README.txt")]
    public async Task An_entry_missing(string entry)
    {
        await RefusedAsync(Zips.Changed(_good, e => e.Remove(entry), withHashes: false), "is missing");
        await RefusedAsync(Zips.Changed(_good, e => e.Remove(entry)), "is missing");
    }

    [Theory]
    [InlineData("../../etc/cron.d/tickover")]
    [InlineData("/etc/passwd")]
    [InlineData("C:\\Windows\\evil.dll")]
    [InlineData("pictures/../workshop.db")]
    [InlineData("items/Pins.json")]
    public async Task A_name_that_leads_elsewhere(string name) =>
        await RefusedAsync(Zips.Changed(_good, e => e[name] = "x"u8.ToArray()), "no part of an export");

    [Fact]
    public async Task An_entry_put_in_afterwards() => await RefusedAsync(
        Zips.Changed(_good, e => e["pictures/00000000000000000000000000000001.jpg"] = [1], withHashes: false), "put in afterwards");

    [Fact]
    public async Task An_entry_twice()
    {
        var path = Zips.Changed(_good, _ => { });
        using (var zip = ZipFile.Open(path, ZipArchiveMode.Update))
        {
            await using var stream = await zip.CreateEntry("journal.json").OpenAsync(Cancellation);
            stream.Write("[]"u8);
        }

        await RefusedAsync(path, "in it twice");
    }

    [Fact]
    public async Task Ten_thousand_entries() => await RefusedAsync(
        Zips.Write(Enumerable.Range(0, 10_000).Select(k => KeyValuePair.Create(string.Create(CultureInfo.InvariantCulture, $"{k}.txt"), Array.Empty<byte>()))), "no export of a record");

    [Fact]
    public async Task A_bomb_that_says_how_large_it_is() => await RefusedAsync(
        Zips.Changed(_good, e => e["pictures/00000000000000000000000000000001.jpg"] = new byte[20_000_000]), "more than 16777216");

    [Fact]
    public async Task A_bomb_that_says_it_is_small()
    {
        // 20 MB of zeros in 20 kB; then both places that tell the unpacked size are made to say 1,000 (APPNOTE 6.3.10, 4.3.7 and 4.3.12).
        var path = Zips.Changed(_good, e => e["README.txt"] = new byte[20_000_000]);
        var bytes = await File.ReadAllBytesAsync(path, Cancellation);
        Assert.InRange(Swap(bytes, 20_000_000, 1000), 1, 3);
        var file = Zips.NewFile;
        await File.WriteAllBytesAsync(file, bytes, Cancellation);
        await RefusedAsync(file, "is not what was exported");
    }

    [Theory]
    [InlineData(0.2)]
    [InlineData(0.9)]
    [InlineData(0.999)]
    public async Task A_zip_cut_short(double part)
    {
        var bytes = await File.ReadAllBytesAsync(_good, Cancellation);
        var path = Zips.NewFile;
        await File.WriteAllBytesAsync(path, bytes[..(int)(bytes.Length * part)], Cancellation);
        await RefusedAsync(path, "cut short");
    }

    [Theory]
    [InlineData("items/Finding.json", "\"severity\":\"Unsafe\"", "\"severity\":\"Deadly\"", "not understood")]
    [InlineData("items/Finding.json", "\"what\":", "\"whatever\":", "not understood")]
    [InlineData("items/Finding.json", "\"id\":", "\"jd\":", "not understood")]
    [InlineData("items/TimeLine.json", "\"minutes\":40", "\"minutes\":-40", "between 1 minute and 24 hours")]
    [InlineData("items/Finding.json", "\"kept\":3", "\"kept\":9999", "does not hold")]
    [InlineData("items/Finding.json", "[", "{", "no list in JSON")]
    [InlineData("journal.json", "\"number\":2,", "\"number\":1,", "not understood")]
    [InlineData("journal.json", "\"kind\":\"Undo\"", "\"kind\":\"Oops\"", "not understood")]
    public async Task Content_that_no_record_keeps(string entry, string old, string fresh, string words) =>
        await RefusedAsync(Zips.Changed(_good, e => Zips.Replace(e, entry, old, fresh)), words);

    [Fact]
    public async Task A_finding_of_a_visit_that_is_not_there() =>
        await RefusedAsync(Zips.Changed(_good, e => Zips.Replace(e, "items/Finding.json", _open.Visit.Id.ToString(), Guid.NewGuid().ToString("N"))), "neither in it nor here");

    [Fact]
    public async Task A_picture_that_carries_where_it_was_taken() => await RefusedAsync(
        Zips.Changed(_good, e =>
        {
            var name = e.Keys.Single(k => k.StartsWith("pictures/", StringComparison.Ordinal));
            e[name] = Pictures.ExifJpeg.With(e[name], 1);
        }),
        "not one that a record keeps");

    private static int Swap(byte[] bytes, int from, int to)
    {
        var (old, fresh, count) = (BitConverter.GetBytes(from), BitConverter.GetBytes(to), 0);
        for (var at = 0; at + 4 <= bytes.Length; at++)
        {
            if (bytes.AsSpan(at, 4).SequenceEqual(old))
            {
                fresh.CopyTo(bytes, at);
                count++;
            }
        }

        return count;
    }

    private async Task RefusedAsync(string path, string words)
    {
        var trouble = await Assert.ThrowsAsync<RecordTroubleException>(() => RecordImport.ReadAsync(_into, path, Cancellation));
        Assert.Contains(words, trouble.Message, StringComparison.Ordinal);
        Assert.Empty(await _into.JournalAsync(null, 10, Cancellation));
        foreach (var size in new[] { (await _into.AllAsync<Visit>(Cancellation)).Count, (await _into.AllAsync<Person>(Cancellation)).Count, (await _into.AllAsync<Finding>(Cancellation)).Count })
        {
            Assert.Equal(0, size);
        }
    }
}
