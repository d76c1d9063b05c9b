using System.Text;
using Tickover.Instruments.Logs;
using static Tickover.Instruments.Tests.Logs.WrittenLog;

namespace Tickover.Instruments.Tests.Logs;

/// <summary>How files are written, and what comes of them.</summary>
public sealed class LogReaderTests
{
    [Fact]
    public void A_plain_log_is_read_to_the_figure()
    {
        var reading = Read(Plain());

        var log = reading.Good();
        Assert.Equal(1200, log.Count);
        Assert.Equal(1200, reading.RowsKept);
        Assert.Empty(reading.Dropped);
        Assert.Equal(119.9, log.Seconds[^1], 1e-9);
        Assert.Equal(Drive()[700].Lambda, log.Lambdas[0].Lambda[700], 0.00051);
        Assert.Equal(1000 * Drive()[700].Map, log.ManifoldPascals![700], 51f);
        Assert.Equal(Drive()[700].Coolant + 273.15, log.CoolantKelvins![700], 0.51f);
        Assert.Equal("kPa abs", reading.Column("map_kpa").Unit!.Name);
        Assert.Contains("rises with the throttle", reading.Column("map_kpa").Why);
    }

    [Fact]
    public void Preamble_units_semicolons_decimal_commas_and_vacuum_of_mercury_are_read()
    {
        var head = "Logger 4;serial 0017\r\nDate;2026-05-03\r\n# warm, dry\r\n\r\n"
            + "Zeit;Drehzahl;Drosselklappe;Unterdruck;AFR links;AFR rechts;Öl Temp\r\ns;1/min;%;mmHg;;;°C";
        var text = Text(head, m => string.Create(C, $"{m.T:0.00};{m.Rpm:0};{m.Tps:0.0};{(101.325 - m.Map) * 7.50062:0};{14.7 * m.Lambda:0.00};{14.7 * (m.Lambda + 0.02):0.00};{m.Coolant:0.0}").Replace('.', ','), end: "\r\n");

        var reading = Read(Encoding.Latin1.GetBytes(text));

        var log = reading.Good();
        Assert.Equal("Latin-1, semicolons, decimal comma, headings in row 5, units in row 6", reading.Form);
        Assert.Equal("mmHg vac", reading.Column("Unterdruck").Unit!.Name);
        Assert.Equal([1, 2], log.Lambdas.Select(l => l.Bank));
        Assert.Equal(Drive()[500].Lambda, log.Lambdas[0].Lambda[500], 0.0006);
        Assert.Equal(Drive()[500].Lambda + 0.02, log.Lambdas[1].Lambda[500], 0.0006);
        Assert.Equal(1000 * Drive()[500].Map, log.ManifoldPascals![500], 100f);
        Assert.Equal(Drive()[500].Coolant + 273.15, log.OilKelvins![500], 0.06f);
        Assert.Contains("assumed", reading.Column("AFR links").Why);
    }

    [Theory]
    [InlineData("\r")]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public void Any_end_of_line_will_do(string end) => Assert.Equal(1200, Read(Plain().Replace("\n", end, StringComparison.Ordinal)).Good().Count);

    [Fact]
    public void Any_unicode_will_do_with_a_mark_or_without()
    {
        var text = Plain();

        Assert.Equal(1200, Read([.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(text)]).Good().Count);
        Assert.Equal(1200, Read([.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes(text)]).Good().Count);
        Assert.Equal(1200, Read(Encoding.Unicode.GetBytes(text)).Good().Count);
        Assert.Equal(1200, Read([.. Encoding.BigEndianUnicode.Preamble, .. Encoding.BigEndianUnicode.GetBytes(text)]).Good().Count);
    }

    [Fact]
    public void Rows_that_are_no_readings_are_dropped_each_for_its_reason()
    {
        var lines = Plain().TrimEnd('\n').Split('\n').ToList();
        lines.Insert(900, lines[0]);
        lines.Insert(800, string.Empty);
        lines.Insert(800, ",,,,,");
        lines.Insert(700, "# cone at the bridge");
        lines.Insert(600, "---,---,---,---,---,---");
        lines.Insert(500, "50.1,88");
        lines.Insert(400, "Lap two begins,here,and,now,so,there");
        lines[300] = "29.9,,12,50,---,84";

        var reading = Read(string.Join('\n', lines));

        Assert.Equal(1199, reading.Good().Count);
        Assert.Equal(1, reading.DroppedFor("headings repeated"));
        Assert.Equal(3, reading.DroppedFor("blank") + reading.DroppedFor("no time"));
        Assert.Equal(1, reading.DroppedFor("comment"));
        Assert.Equal(1, reading.DroppedFor("cut short"));
        Assert.Equal(1, reading.DroppedFor("words"));
        Assert.Equal(1, reading.DroppedFor("neither"));
        Assert.Equal(reading.Rows, reading.RowsKept + reading.Dropped.Sum(d => d.Rows));
    }

    [Fact]
    public void Quoted_decimal_commas_between_commas_are_read()
    {
        var text = Text("\"Time\",\"RPM\",\"TPS\",\"Lambda\"", m => string.Create(C, $"\"{m.T:0.00}\";\"{m.Rpm:0}\";\"{m.Tps:0.0}\";\"{m.Lambda:0.000}\"").Replace('.', ',').Replace(';', ','));

        var reading = Read(text);

        Assert.Contains("decimal comma", reading.Form);
        Assert.Equal(Drive()[400].Lambda, reading.Good().Lambdas[0].Lambda[400], 0.0006);
    }

    [Fact]
    public void Thousands_are_parted_by_point_blank_or_stroke()
    {
        var text = Text("t;rpm;tps;lambda", m => string.Create(C, $"{m.T:0.00};{m.Rpm:#,##0};{m.Tps:0.0};{m.Lambda:0.000}").Replace(',', '_').Replace('.', ',').Replace('_', '.'));

        Assert.Equal(Drive()[400].Rpm, Read(text).Good().SpeedRpm[400], 0.51f);
    }

    [Fact]
    public void A_quotation_mark_left_open_ends_with_its_line()
    {
        var lines = Plain().Split('\n');
        lines[600] = lines[600].Insert(4, "\"");

        var reading = Read(string.Join('\n', lines));

        Assert.True(reading.Good().Count >= 1199);
        Assert.Equal(1, reading.RepairedFor("quotation mark"));
    }

    [Fact]
    public void Columns_without_headings_are_guessed_and_say_so()
    {
        var reading = Read(Plain()[(Plain().IndexOf('\n', StringComparison.Ordinal) + 1)..]);

        Assert.NotNull(reading.Log);
        Assert.All(reading.Columns.Where(c => c.Quantity is not LogQuantity.Ignored), c => Assert.Equal(HowSure.Guess, c.Sureness));
        Assert.Equal(LogQuantity.EngineSpeed, reading.Column("#2").Quantity);
        Assert.Equal(LogQuantity.Lambda, reading.Column("#5").Quantity);
    }

    [Fact]
    public void Columns_called_alike_are_told_and_remembered_by_their_place()
    {
        var log = Text("time,rpm,tps,lambda,lambda", m => string.Create(C, $"{m.T:0.00},{m.Rpm:0},{m.Tps:0.0},1.00,{m.Lambda:0.000}"));
        var told = ColumnWords.Read("#4=ignored").Told! with { Column = "#4" };

        var first = Read(log, new LogReadingSettings { Columns = [told, ColumnWords.Read("#5=lambda@1:λ").Told!] });
        var second = Read(log, new LogReadingSettings { Layouts = [LogLayout.Read(LogLayout.Of(first.Columns)!.ToText())!] });

        Assert.Equal([LogQuantity.Ignored, LogQuantity.Lambda], first.Columns.Skip(3).Select(c => c.Quantity));
        Assert.Equal([LogQuantity.Ignored, LogQuantity.Lambda], second.Columns.Skip(3).Select(c => c.Quantity));
        Assert.Equal(first.Good().Lambdas[0].Lambda, second.Good().Lambdas[0].Lambda);
    }

    [Fact]
    public void Each_column_shows_a_few_cells_and_its_range()
    {
        var speed = Read(Plain()).Column("rpm");

        Assert.Equal(3, speed.Seen.Split("; ").Length);
        Assert.Equal(WrittenLog.Drive().Min(m => Math.Round(m.Rpm)), speed.Least!.Value, 1.0);
        Assert.Equal(WrittenLog.Drive().Max(m => Math.Round(m.Rpm)), speed.Most!.Value, 1.0);
    }

    [Fact]
    public void A_column_told_goes_before_what_was_found_and_is_remembered()
    {
        var told = new LogReadingSettings
        {
            Columns = [new ColumnChoice { Column = "LAMBDA", Quantity = LogQuantity.Lambda, Unit = LogUnits.Find(LogQuantity.Lambda, "λ"), Bank = 2 }],
        };

        var first = Read(Plain(), told);
        var layout = LogLayout.Read(LogLayout.Of(first.Columns)!.ToText());
        var second = Read(Plain(), new LogReadingSettings { Layouts = [layout!] });

        Assert.Equal(HowSure.Told, first.Column("lambda").Sureness);
        Assert.Equal(2, first.Good().Lambdas[0].Bank);
        Assert.Equal(2, second.Good().Lambdas[0].Bank);
        Assert.Equal(HowSure.Told, second.Column("lambda").Sureness);
        // What nobody told is found again in each file: another car's pick-up may count otherwise.
        Assert.All(second.Columns.Where(c => c.Column is not "lambda"), c => Assert.NotEqual(HowSure.Told, c.Sureness));
        Assert.Null(LogLayout.Of(Read(Plain()).Columns));
        Assert.Equal(first.Good().ManifoldPascals, second.Good().ManifoldPascals);
    }

    [Fact]
    public void More_rows_than_memory_was_given_are_averaged_in_pairs()
    {
        var reading = Read(Plain(), new LogReadingSettings { MostRows = 1000 });

        Assert.Equal(2, reading.RowsPerSample);
        Assert.Equal(600, reading.Good().Count);
        Assert.Equal(1200, reading.RowsKept);
        Assert.Equal((Drive()[400].Rpm + Drive()[401].Rpm) / 2, reading.Good().SpeedRpm[200], 1.0f);
    }

    [Fact]
    public void Reading_reports_and_can_be_stopped()
    {
        var bytes = Encoding.UTF8.GetBytes(Plain(60_000));
        var reports = new List<LogProgress>();
        using var source = new CancellationTokenSource();

        var stopped = Assert.Throws<OperationCanceledException>(() =>
        {
            using var stream = new MemoryStream(bytes);
            LogReader.Read(stream, progress: new Told(p => { reports.Add(p); source.Cancel(); }), cancellation: source.Token);
        });

        Assert.Equal(source.Token, stopped.CancellationToken);
        Assert.Single(reports);
        Assert.InRange(reports[0].BytesRead, 1, bytes.Length);
    }

    private sealed class Told(Action<LogProgress> tell) : IProgress<LogProgress>
    {
        public void Report(LogProgress value) => tell(value);
    }
}
