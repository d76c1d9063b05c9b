using Tickover.Workshop.Walls;

namespace Tickover.Workshop.Tests.Walls;

internal static class WallSamples
{
    /// <summary>A plain sheet of 300 by 200 mm with twelve readings.</summary>
    public const string Plain = """
        {
          "format": "tickover-wall-1", "name": "Marram Six, tank", "metal": "steel", "thickness": 1.2, "age": 20,
          "outline": [[0, 0], [300, 0], [300, 200], [0, 200]],
          "grid": { "cell": 50, "rows": [
            [0.10, 0.12, null, 0.09, null, 0.15],
            [null, 0.11, 0.14, null, 0.08, null],
            [0.13, null, 0.10, 0.16, null, 0.12],
            [null, null, 0.11, null, null, null]] }
        }
        """;

    public static WallSurvey Survey(string json)
    {
        var reading = WallDocument.Read(json);
        Assert.Empty(reading.Faults);
        return reading.Survey!;
    }

    public static WallAnalysis Analysis(string json) => WallAnalyst.Of(Survey(json));
}
