using System.Globalization;

namespace Tickover.Acceptance.Tests.Regression;

/// <summary>One set of the NIST Statistical Reference Datasets for nonlinear regression.</summary>
public sealed record RegressionSet
{
    private const string FileName = "nist-strd-nonlinear.txt";

    /// <summary>The published name.</summary>
    public required string Name { get; init; }

    /// <summary>The published level: lower, average or higher.</summary>
    public required string Level { get; init; }

    /// <summary>The farther start.</summary>
    public required IReadOnlyList<double> StartOne { get; init; }

    /// <summary>The nearer start.</summary>
    public required IReadOnlyList<double> StartTwo { get; init; }

    /// <summary>Certified parameters, eleven digits.</summary>
    public required IReadOnlyList<double> Certified { get; init; }

    /// <summary>Certified residual sum of squares.</summary>
    public required double SumOfSquares { get; init; }

    /// <summary>The response.</summary>
    public required double[] Y { get; init; }

    /// <summary>The predictors, each as long as the response.</summary>
    public required IReadOnlyList<double[]> X { get; init; }

    /// <summary>The sets, in the order of the file.</summary>
    public static IReadOnlyList<RegressionSet> All { get; } = ReadAll();

    public override string ToString() => Name;

    private static List<RegressionSet> ReadAll()
    {
        var lines = File.ReadAllLines(Path.Combine(Repository.Root, "tests", "Tickover.Acceptance.Tests", "Data", FileName))
            .Where(line => !line.StartsWith('#')).Select(line => line.Split(' ')).ToList();
        var heads = Enumerable.Range(0, lines.Count).Where(i => lines[i][0] is "set").Append(lines.Count).ToList();
        return [.. heads.Zip(heads.Skip(1), (from, to) => Read(lines.GetRange(from, to - from)))];
    }

    private static RegressionSet Read(List<string[]> lines)
    {
        var parameters = Rows("b");
        var y = Rows("y").Single();
        return new RegressionSet
        {
            Name = lines[0][1],
            Level = lines[0][2],
            StartOne = [.. parameters.Select(b => b[0])],
            StartTwo = [.. parameters.Select(b => b[1])],
            Certified = [.. parameters.Select(b => b[2])],
            SumOfSquares = Rows("rss").Single().Single(),
            Y = y,
            X = [.. Rows("x").Select(x => Enumerable.Range(0, y.Length).Select(i => x[i % x.Length]).ToArray())],
        };

        List<double[]> Rows(string name) =>
            [.. lines.Where(line => string.Equals(line[0], name, StringComparison.Ordinal)).Select(line => line.Skip(1).SelectMany(Numbers).ToArray())];
    }

    private static IEnumerable<double> Numbers(string text)
    {
        if (text.Split('*') is [var value, var times])
        {
            return Enumerable.Repeat(Number(value), (int)Number(times));
        }

        return text.Split(':') is [var first, var step, var count]
            ? Enumerable.Range(0, (int)Number(count)).Select(i => Number(first) + i * Number(step))
            : [Number(text)];
    }

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
