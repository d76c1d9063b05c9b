using Tickover.Physics.Metering;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>Fuel on the walls after the throttle opens.</summary>
public static class WallFilmChecks
{
    private const string Aquino = "C. F. Aquino, SAE 810494 (form from memory), integrated independently in steps of 1 ms";
    private const string Subject = "three tenths settle for half a second, metering doubled";
    private const double StepOfAMillisecond = 5e-4; // the explicit steps leave this much

    private static readonly WallFilm Film = new(0.3, 0.5);

    public static CheckGroup Group { get; } = new("Wall film",
    [
        Check("fuel delivered at once, of the former", 1.7, () => Film.Delivered(Film.AtRest(1), 2)),
        Check("fuel delivered after 0.5 s, of the former", 1.8896, () => Film.Delivered(Film.After(Film.AtRest(1), 2, 0.5), 2)),
        Check("fuel missing in all, seconds of the former flow", 0.15, () => Film.Owed(1)),
    ]);

    private static OutsideCheck Check(string quantity, double published, Func<double> ours) => new()
    {
        Subject = Subject,
        Quantity = quantity,
        Unit = "1",
        Published = published,
        Ours = ours,
        Source = Aquino,
        Kind = SourceKind.Derived,
        Tolerance = StepOfAMillisecond,
    };
}
