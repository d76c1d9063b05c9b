using Tickover.Cli.Input;

namespace Tickover.Cli.Tests;

/// <summary>Whatever is typed, the answer is a sentence and a code: never a stack trace, never NaN.</summary>
public sealed class BadInputTests
{
    public static TheoryData<string, string> Lines => new()
    {
        // the line, and what the complaint must name
        { "tickover", "command" },
        { "tickover mixtur samples/tern-2800.car.json", "mixture" },
        { "tickover check", "argument" },
        { "tickover check samples/no-such.car.json", "no file" },
        { "tickover check samples", "folder" },
        { "tickover mixture samples/faulty.car.json", "engine.bore" },
        { "tickover mixture samples/tern-2800.car.json --rpm 0", "100 to 15000" },
        { "tickover mixture samples/tern-2800.car.json --rpm 60000", "100 to 15000" },
        { "tickover mixture samples/tern-2800.car.json --rpm -5", "100 to 15000" },
        { "tickover mixture samples/tern-2800.car.json --rpm abc", "'abc' is not a number" },
        { "tickover mixture samples/tern-2800.car.json --rpm NaN", "'NaN' is not a number" },
        { "tickover mixture samples/tern-2800.car.json --rpm 1e999", "not a number" },
        { "tickover mixture samples/tern-2800.car.json --rpm 6000..1000", "does not rise" },
        { "tickover mixture samples/tern-2800.car.json --rpm 1000..6000:0", "no step above zero" },
        { "tickover mixture samples/tern-2800.car.json --rpm 1000..6000:0.001", "larger step" },
        { "tickover mixture samples/tern-2800.car.json --rpm ;", "a number is missing" },
        { "tickover mixture samples/tern-2800.car.json --throttle 0", "0.1 to 90" },
        { "tickover mixture samples/tern-2800.car.json --throttle 95", "0.1 to 90" },
        { "tickover mixture samples/tern-2800.car.json --throttle 89", "wide open" },
        { "tickover mixture samples/tern-2800.car.json --barrel 0", "barrels 1 to 6" },
        { "tickover mixture samples/tern-2800.car.json --barrel 7", "barrels 1 to 6" },
        { "tickover mixture samples/tern-2800.car.json --ambient soup", "'soup' is none of" },
        { "tickover mixture samples/tern-2800.car.json --ambient \"20 °C, 30 °C\"", "given twice" },
        { "tickover mixture samples/tern-2800.car.json --ambient \"900 °C\"", "ambient.temperature" },
        { "tickover mixture samples/tern-2800.car.json --fuel water", "fuel" },
        { "tickover mixture samples/tern-2800.car.json --set mainJet", "path=value" },
        { "tickover mixture samples/tern-2800.car.json --set barrel.mainJet=-3", "barrel" },
        { "tickover mixture samples/tern-2800.car.json --set barrel.nosuch=3", "barrel.nosuch" },
        { "tickover mixture samples/tern-2800.car.json --json --csv", "exclude each other" },
        { "tickover explain samples/tern-2800.car.json --rpm 4000", "--throttle" },
        { "tickover explain samples/tern-2800.car.json --rpm 0 --throttle 45", "100 to 15000" },
        { "tickover explain samples/tern-2800.car.json --rpm 4000 --throttle 0", "0.1 to 90" },
        { "tickover explain samples/tern-2800.car.json --rpm 4000 --throttle 89.9", "wide open" },
        { "tickover explain samples/tern-2800.car.json --rpm 4000 --throttle 45 --barrel x", "barrels 1 to 6" },
        { "tickover gas", "Nothing to judge" },
        { "tickover gas --co 1 --hc 100 --co2 14", "O₂ is missing" },
        { "tickover gas --co x --hc 100 --co2 14 --o2 1", "CO 'x' is not a number" },
        { "tickover gas --co NaN --hc 100 --co2 14 --o2 1", "CO 'NaN' is not a number" },
        { "tickover gas --co 1 --hc 1,200 --co2 14 --o2 1", "thousands or decimals" },
        { "tickover gas --co 1 --hc 100 --co2 0 --o2 20.9", "air, not exhaust" },
        { "tickover gas --co 1 --hc 100 --co2 14 --o2 30", "-2 to 21.5" },
        { "tickover gas --co \"1 ppm\" --hc 100 --co2 14 --o2 1", "the unit must be %" },
        { "tickover gas --co 1 --hc 100 --co2 14 --o2 1 --lambda 13.8", "air to fuel ratio" },
        { "tickover gas --co 1 --hc 100 --co2 14 --o2 1 --fuel water", "E0 to E100" },
        { "tickover gas samples/gas-readings.csv --co 1", "exclude each other" },
        { "tickover gas samples/gas-readings.csv --json --csv", "exclude each other" },
        { "tickover gas samples/tern-2800.car.json", "no column co, hc, co2, o2" },
        { "tickover gas samples/no-such.csv", "no file" },
        { "tickover gas samples", "folder" },
        { "tickover serve --port 70000", "0 to 65535" },
        { "tickover serve --port abc", "0 to 65535" },
    };

    [Theory]
    [MemberData(nameof(Lines))]
    public async Task Unusable_line_ends_with_code_2_and_a_sentence(string line, string names)
    {
        var ran = await Ran.LineAsync(line);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Empty(ran.Output);
        Assert.Contains(names, ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", ran.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{", 1)]
    [InlineData("{ \"name\": \"Larkfield Tern\", \"engine\": {", 1)]
    [InlineData("[]", 1)]
    [InlineData("null", 1)]
    [InlineData("\"car\"", 1)]
    [InlineData("{}", 1)]
    [InlineData("", 2)]
    [InlineData("   \n ", 2)]
    public async Task Document_that_is_no_car_is_refused_in_words(string document, int code)
    {
        var ran = await Ran.OfAsync(document, ["check", "-"]);

        Assert.Equal(code, ran.Code);
        Assert.NotEmpty(ran.Output + ran.Error);
        Assert.DoesNotContain("   at ", ran.Output + ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Broken_document_cannot_be_surveyed()
    {
        var ran = await Ran.OfAsync("{", ["mixture", "-"]);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Empty(ran.Output);
    }

    [Fact]
    public async Task Huge_file_is_refused_before_it_is_read_whole()
    {
        var ran = await Ran.OfAsync(new string(' ', CarFile.LargestBytes + 1), ["check", "-"]);

        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Contains("more than 1 MB", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task File_that_is_no_text_is_refused()
    {
        var file = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.car.json");
        await File.WriteAllBytesAsync(file, [0xFF, 0xFE, 0x00, 0xC3]);

        var ran = await Ran.OfAsync("check", file);

        File.Delete(file);
        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Contains("UTF-8", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Unreadable_file_is_refused()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows() || Environment.IsPrivilegedProcess, "No file is unreadable to this user.");
        var file = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.car.json");
        await File.WriteAllTextAsync(file, "{}");
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(file, UnixFileMode.None);
        }

        var ran = await Ran.OfAsync("check", file);

        File.Delete(file);
        Assert.Equal(ExitCode.UnusableInput, ran.Code);
        Assert.Contains("permissions", ran.Error, StringComparison.Ordinal);
    }
}
