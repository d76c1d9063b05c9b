using Tickover.Physics.Inference;

namespace Tickover.Acceptance.Tests.Catalogue;

/// <summary>The alarm of the textbook, fever by noisy-OR, and what a noisy channel carries.</summary>
public static class InferenceChecks
{
    private const string Alarm = "S. Russell and P. Norvig, Artificial Intelligence, 3rd ed. 2010, section 14.4, burglary and earthquake (after Pearl 1988)";
    private const string Fever = "S. Russell and P. Norvig, Artificial Intelligence, 3rd ed. 2010, section 14.3, table of fever by noisy-OR";
    private const string Channel = "C. E. Shannon, A Mathematical Theory of Communication, 1948: symmetric channel, 1 − H(0.11), evaluated independently";
    private const double Burglary = 0.001, Earthquake = 0.002;

    public static CheckGroup Group { get; } = new("Causes from signs", [.. Alarms(), .. Fevers(), Carried()]);

    private static IEnumerable<OutsideCheck> Alarms()
    {
        static Observed Calls(double john, double johnIdle, double mary, double maryIdle) =>
            Belief.Before([Burglary, Earthquake], 2).After(set =>
            {
                var (burglary, earthquake) = (set.Span.Contains(0), set.Span.Contains(1));
                var rings = (burglary, earthquake) switch { (true, true) => 0.95, (true, false) => 0.94, (false, true) => 0.29, _ => 0.001 };
                return rings * john * mary + (1 - rings) * johnIdle * maryIdle;
            });

        static OutsideCheck Check(string quantity, double published, double tolerance, Func<double> ours) => new()
        {
            Subject = "burglary or earthquake, alarm, two neighbours who call",
            Quantity = quantity,
            Source = Alarm,
            Kind = SourceKind.FromMemory,
            Published = published,
            Unit = "1",
            Tolerance = tolerance,
            Ours = ours,
        };

        return
        [
            Check("burglary when both call", 0.284, 0.002, () => Calls(0.9, 0.05, 0.7, 0.01).Belief.Of(0)),
            Check("chance that John calls", 0.0521, 0.002, () => Calls(0.9, 0.05, 1, 1).Chance),
            Check("burglary when John calls", 0.0163, 0.005, () => Calls(0.9, 0.05, 1, 1).Belief.Of(0)),
        ];
    }

    private static IEnumerable<OutsideCheck> Fevers()
    {
        var fever = new NoisyOr(0, [0.4, 0.8, 0.9]);
        OutsideCheck Check(string which, double published, int[] active) => new()
        {
            Subject = "cold, flu, malaria that fail to bring fever in 0.6, 0.2, 0.1",
            Quantity = $"fever with {which}",
            Source = Fever,
            Kind = SourceKind.FromMemory,
            Published = published,
            Unit = "1",
            Tolerance = 1e-6,
            Ours = () => fever.Probability(NoisyOr.Present, active),
        };

        return [Check("cold and flu", 0.88, [0, 1]), Check("cold and malaria", 0.94, [0, 2]), Check("flu and malaria", 0.98, [1, 2]), Check("all three", 0.988, [0, 1, 2])];
    }

    private static OutsideCheck Carried() => new()
    {
        Subject = "an even cause, a sure sign, an answer wrong in 11 of 100",
        Quantity = "expected information",
        Source = Channel,
        Kind = SourceKind.Derived,
        Published = 0.500084,
        Unit = "bit",
        Tolerance = 1e-5,
        Ours = () => Belief.Before([0.5], 1).ExpectedBits(new NoisyOr(0, [1]), new Telling(0.11, 0)),
    };
}
