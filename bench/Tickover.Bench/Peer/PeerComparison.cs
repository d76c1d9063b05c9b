using System.Globalization;
using Tickover.Physics.Breathing;
using Tickover.Workshop.Cars;

namespace Tickover.Bench.Peer;

/// <summary>The product's solver against the C program: agreement over the points, and the ratio of times.</summary>
internal sealed class PeerComparison
{
    private const double AllowedDifference = 0.2;          // %, of air and of fuel a cycle
    private const double AskedRatio = 10;
    private const int PeerRuns = 5;
    private const int OurRuns = 21;
    private const int WarmUpRuns = 20;                     // enough for the second tier of the run-time compiler
    private const int Refinement = 8;

    private readonly string _name;
    private readonly OurSolver _our;
    private readonly PeerProgram _peer;

    private PeerComparison(string executable, string input)
    {
        var car = Samples.Read("osprey-v8");
        var (engine, ambient, fuel) = (car.ToEngineSpec(), car.ToAmbientAir(), car.ToFuelProperties());
        _name = car.Name;
        _our = new OurSolver(engine, ambient, fuel);
        _peer = new PeerProgram(executable, input, t => PeerInput.Write(engine, ambient, fuel, PeerGrids.All, t));
    }

    /// <summary>Runs both and prints; 0 where both the agreement and the ratio are what was asked.</summary>
    internal static int Run(string executable, string input) => new PeerComparison(executable, input).Run();

    private int Run()
    {
        var (one, two) = (new AirSideSettings { Workers = 1 }, new AirSideSettings { Workers = 2 });
        _our.Seconds(one, WarmUpRuns);
        var oneCore = _our.Seconds(one, OurRuns);
        var same = _peer.Run(PeerTolerances.Same, PeerRuns);
        var loose = _peer.Run(PeerTolerances.Loose, PeerRuns);
        var twoCores = _our.Seconds(two, OurRuns);
        var tight = _peer.Run(PeerTolerances.Tight, 1).Points;
        var ours = _our.Solve(one);

        Console.WriteLine($"{_name}, one barrel on its cylinder, {ours.Count} operating points.");
        Console.WriteLine();
        Points(ours, same.Points, tight);
        var agree = Agreement(ours, same.Points, loose.Points, tight);
        var fast = Times((same, loose), oneCore, twoCores, ours.Count);
        return agree && fast ? 0 : 1;
    }

    private static void Points(List<PeerPoint> ours, List<PeerPoint> peer, List<PeerPoint> tight)
    {
        Console.WriteLine("                 air, mg a cycle              fuel, mg a cycle                main alone         idle side       off tight peer");
        Console.WriteLine("   rpm     °      ours      peer  diff %      ours     peer  diff %       ours     peer      ours    peer     air %  fuel %");
        for (var i = 0; i < ours.Count; i++)
        {
            var (a, b, c) = (ours[i], peer[i], tight[i]);
            Print(
                $"{a.Rpm,6:F0} {a.Degrees,5:F0} {a.Air * 1e6,9:F2} {b.Air * 1e6,9:F2} {Percent(a.Air, b.Air),7:F3} {a.Fuel * 1e6,9:F3} {b.Fuel * 1e6,8:F3} {Percent(a.Fuel, b.Fuel),7:F3} {a.Main * 1e6,10:F3} {b.Main * 1e6,8:F3} {a.Idle * 1e6,9:F3} {b.Idle * 1e6,7:F3} {Percent(a.Air, c.Air),9:F3} {Percent(a.Fuel, c.Fuel),7:F3}{Remark(a, b)}");
        }

        Console.WriteLine();
    }

    private static string Remark(PeerPoint a, PeerPoint b) => (a.Settled, b.Settled) switch
    {
        (true, true) => "",
        (false, true) => "  ours not settled",
        (true, false) => "  peer not settled",
        _ => "  neither settled",
    };

    private bool Agreement(List<PeerPoint> ours, List<PeerPoint> same, List<PeerPoint> loose, List<PeerPoint> tight)
    {
        var fine = _our.Solve(new AirSideSettings { StepsPerCycle = 720 * Refinement, Tolerance = 2e-6, MaximumCycles = 60 });
        var good = Worst("Ours against the peer", ours, same) <= AllowedDifference;
        Worst("Peer against itself at 1e-9", same, tight);
        Worst("Peer, looser, against itself at 1e-9", loose, tight);
        Worst("Ours against the peer at 1e-9", ours, tight);
        Worst($"Ours at 1/{Refinement} of the step against the same", fine, tight);
        var unsettled = ours.Count(p => !p.Settled);
        Print($"Points that did not settle: ours {unsettled}, peer {same.Count(p => !p.Settled)}, looser {loose.Count(p => !p.Settled)}.");
        good &= unsettled == 0;
        Print($"Air and fuel a cycle within {AllowedDifference} % at every point, all settled: {(good ? "yes" : "NO")}");
        Console.WriteLine();
        return good;
    }

    private static double Worst(string what, List<PeerPoint> a, List<PeerPoint> b)
    {
        var (air, fuel) = (Differences(a, b, p => p.Air), Differences(a, b, p => p.Fuel));
        Print($"{what,-45} air worst {air[^1]:F4} % median {air[air.Length / 2]:F4} %, fuel worst {fuel[^1]:F4} % median {fuel[fuel.Length / 2]:F4} %");
        return Math.Max(air[^1], fuel[^1]);
    }

    private static double[] Differences(List<PeerPoint> a, List<PeerPoint> b, Func<PeerPoint, double> value) =>
        [.. a.Zip(b, (x, y) => Math.Abs(Percent(value(x), value(y)))).Order()];

    private static bool Times(
        (PeerProgram.Answer Same, PeerProgram.Answer Loose) peer, (double Wall, double Processor) one, (double Wall, double Processor) two, int points)
    {
        Time("Peer, one core, CVODE at 1e-6", (peer.Same.Seconds, peer.Same.ProcessorSeconds), points);
        Time("Peer, one core, looser: 1e-5", (peer.Loose.Seconds, peer.Loose.ProcessorSeconds), points);
        Time("Ours, one core, four points a vector", one, points);
        Time("Ours, two cores, as the product runs", two, points);
        // Judged by the processor's clock, which others on the machine do not stretch, and against the faster of the two peers.
        var ratio = Math.Min(peer.Same.ProcessorSeconds, peer.Loose.ProcessorSeconds) / one.Processor;
        Print($"Ratio core for core {peer.Same.Seconds / one.Wall:F1} (by the processor's clock {peer.Same.ProcessorSeconds / one.Processor:F1}), as used {peer.Same.Seconds / two.Wall:F1}.");
        Print($"Against the looser peer {peer.Loose.Seconds / one.Wall:F1} (by the processor's clock {peer.Loose.ProcessorSeconds / one.Processor:F1}), as used {peer.Loose.Seconds / two.Wall:F1}.");
        Print($"At least {AskedRatio} core for core, against the faster peer, by the processor's clock: {(ratio >= AskedRatio ? "yes" : "NO")}");
        return ratio >= AskedRatio;
    }

    private static void Time(string what, (double Wall, double Processor) seconds, int points) =>
        Print($"{what,-40} {seconds.Wall * 1e3,8:F1} ms, {seconds.Wall * 1e3 / points:F2} ms a point; processor {seconds.Processor * 1e3:F1} ms");

    private static void Print(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));

    private static double Percent(double a, double b) => 100 * (a - b) / b;
}
