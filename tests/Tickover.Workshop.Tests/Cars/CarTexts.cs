using Tickover.Workshop.Cars;

namespace Tickover.Workshop.Tests.Cars;

/// <summary>Small documents that tests change in one place.</summary>
internal static class CarTexts
{
    /// <summary>A twin with one twin-barrel carburettor; the least a document needs and a little more.</summary>
    public const string Twin = """
        {
          "format": "tickover-car-1",
          "name": "Twin",
          "engine": { "cylinders": 2, "bore": "80 mm", "stroke": "75 mm" },
          "barrels": { "throttleBore": "40 mm", "choke": "32 mm" },
          "carburettors": [
            { "barrels": [{ "feeds": [1] }, { "feeds": [2], "mainJet": 130 }] }
          ]
        }
        """;

    public static Car Sound(string json)
    {
        var reading = CarDocument.Read(json);
        Assert.True(reading.Car is not null, Report(reading));
        return reading.Car;
    }

    public static string TwinWith(string old, string replacement)
    {
        Assert.Contains(old, Twin, StringComparison.Ordinal);
        return Twin.Replace(old, replacement, StringComparison.Ordinal);
    }

    public static string Report(CarReading reading) =>
        string.Join('\n', reading.Faults.Concat(reading.Warnings).Select(f => $"{f.Path}: {f.Problem} | {f.Allowed} | {f.WhatToDo}"));
}
