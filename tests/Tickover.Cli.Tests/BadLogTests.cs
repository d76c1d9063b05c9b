using System.Globalization;
using System.Text;

namespace Tickover.Cli.Tests;

/// <summary>Logs that cannot be used, or not as they stand: a plain answer of what is missing and what would do.</summary>
public sealed class BadLogTests
{
    private static readonly CultureInfo C = CultureInfo.InvariantCulture;

    [Theory]
    [InlineData("nothing", ExitCode.UnusableInput, "The file is empty. Copy it again from the logger.")]
    [InlineData("junk", ExitCode.UnusableInput, "The file is not text.")]
    [InlineData("no column", ExitCode.UnusableInput, "A column is named with --set")]
    [InlineData("two speeds", ExitCode.UnusableInput, "are both engine speeds and do not go together: two engines")]
    [InlineData("constant", ExitCode.UnusableInput, "is the same in every row.")]
    [InlineData("cold", ExitCode.AnswerIsNo, "No points. The engine never got warm (at most 45 °C)")]
    [InlineData("two engines", ExitCode.Done, "There may be two engines in the file.")]
    [InlineData("psi", ExitCode.Done, "kPa abs")]
    [InlineData("thousand columns", ExitCode.Done, "more.")]
    public async Task Says_what_is_missing_and_what_would_do(string kind, int code, string said)
    {
        var ran = await Ran.OfAsync(BadLogs.Of(kind), ["log", "-", "--car", "samples/osprey-v8.car.json"]);

        Assert.Equal(code, ran.Code);
        Assert.Contains(said, string.Join(' ', ran.Output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_part_of_two_engines_is_taken_when_told()
    {
        var ran = await Ran.OfAsync(BadLogs.Of("two engines"), ["log", "-", "--car", "samples/osprey-v8.car.json", "--part", "2"]);

        Assert.Equal(ExitCode.Done, ran.Code);
        Assert.DoesNotContain("There may be two engines", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Part 2 (--part 2)", ran.Output, StringComparison.Ordinal);
    }

    private static class BadLogs
    {
        public static string Of(string kind) => kind switch
        {
            "nothing" => "",
            "junk" => string.Concat(Enumerable.Range(0, 4000).Select(i => (char)(i * 37 % 32))),
            "no column" => Rows("time,rpm,tps,map,oil temp,ect"),
            "two speeds" => Rows("time,rpm1,tps,map,lambda,ect,rpm2", after: i => string.Create(C, $",{2500 + 900 * Math.Cos(i / 17.0):0}")),
            "constant" => Rows("time,rpm,tps,map,lambda,ect", lambda: _ => 0.98),
            "cold" => Rows("time,rpm,tps,map,lambda,ect", coolant: 45),
            "two engines" => Rows("time,rpm,tps,map,lambda,ect") + Rows("time,rpm,tps,map,lambda,ect", idle: 1250, pressure: 14),
            "psi" => Rows("time,rpm,tps,map (psi),lambda,ect"),
            _ => Rows("time,rpm,tps,map,lambda,ect," + string.Join(',', Enumerable.Range(1, 994).Select(i => $"spare {i}")), after: _ => string.Concat(Enumerable.Repeat(",3", 994))),
        };

        private static string Rows(string headings, Func<int, double>? lambda = null, double coolant = 85, double idle = 850, double pressure = 0, Func<int, string>? after = null)
        {
            var text = new StringBuilder(headings).Append('\n');
            for (var i = 0; i < 1500; i++)
            {
                var (step, wobble) = (i / 100, Math.Sin(i * 0.7));
                var atIdle = step % 4 == 0;
                var (tps, rpm, map) = atIdle ? (2.0, idle, 35.0) : (5 + 5 * step, 1400 + 150 * step, 45 + 3 * step);
                text.Append(C, $"{i / 10.0:0.0},{rpm + 8 * wobble:0},{tps:0.0},{map + pressure + 0.3 * wobble:0.0},{lambda?.Invoke(i) ?? 0.95 - 0.004 * step + 0.004 * wobble:0.000},{coolant}");
                text.Append(after?.Invoke(i)).Append('\n');
            }

            return text.ToString();
        }
    }
}
