using System.Globalization;

namespace Tickover.Bench.Gauge;

/// <summary>The march of two tanks against the same equations on CVODE: how far each is off a very fine solution, and how long each takes.</summary>
/// <remarks>
/// The march has a step and no tolerance. So it is held against CVODE twice: against the quickest run that is at least as near as the march in volume, flow
/// and needle, and against the quickest at each tolerance.
/// </remarks>
internal sealed class TankPeer(TankPeerProgram peer)
{
    private const double Every = 0.1;
    private const double ReferenceTolerance = 1e-11;
    private const double AllowedLitres = 0.02;             // worst over the hour; the needle cannot show a tenth of a litre
    private const double AskedTolerance = 1e-6;            // where the ratio asked is judged
    private const double AskedRatio = 20;
    private const int Runs = 3;

    private static readonly double[] Tolerances = [1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8];

    internal static int Run(string executable, string input)
    {
        File.WriteAllText(input, TankPeerInput.Write(StudyTanks.Tern, GaugeSpeed.Hour, GaugeSpeed.Start, Every));
        return new TankPeer(new TankPeerProgram(executable, input)).Compare();
    }

    private int Compare()
    {
        var (wall, processor, _) = GaugeSpeed.Time();
        var reference = peer.Run("adams", ReferenceTolerance, 1).Moments;
        var other = peer.Run("bdf", ReferenceTolerance, 1).Moments;
        var moments = StudyTanks.Tern.Run(GaugeSpeed.Hour, GaugeSpeed.Start, Every).Moments;
        var ours = Off([.. moments.Select(m => (m.LeftCubicMetres, m.FlowToRight, m.Needle))], reference);
        Print($"Two tanks over one hour of 100 Hz, {reference.Count} moments, each against CVODE (Adams) at {ReferenceTolerance:E0}");
        Print($"                         worst: litres   L/min    needle     rms: litres   L/min    needle       ms    equations");
        Show("CVODE, BDF, 1e-11", Off(other, reference), null, null);
        Show("ours, step 10 ms", ours, processor, null);
        Print($"  (by the clock on the wall {wall * 1e3:F1} ms)");
        var runs = Tolerances.SelectMany(t => new[] { peer.Run("adams", t, Runs), peer.Run("bdf", t, Runs) }).Select(a => (Answer: a, Off: Off(a.Moments, reference))).ToList();
        foreach (var (answer, off) in runs)
        {
            Show($"CVODE, {answer.Method.Name}, {answer.Method.Tolerance:E0}", off, answer.Seconds, answer.Calls);
        }

        return Judge(ours, processor, runs) ? 0 : 1;
    }

    private static bool Judge(Errors ours, double processor, List<(TankPeerProgram.Answer Answer, Errors Off)> runs)
    {
        var equal = runs.Where(r => r.Off.Litres <= ours.Litres && r.Off.Flow <= ours.Flow && r.Off.Needle <= ours.Needle).MinBy(r => r.Answer.Seconds);
        Print(equal.Answer is { } asNear
            ? $"At equal accuracy (the quickest run as near in all three, worst: {asNear.Method.Name} at {asNear.Method.Tolerance:E0}): {asNear.Seconds / processor:F1} times as long as ours."
            : (FormattableString)$"No run of the peer is as near as ours in all three.");
        var ratio = 0.0;
        foreach (var same in runs.GroupBy(r => r.Answer.Method.Tolerance))
        {
            var quickest = same.MinBy(r => r.Answer.Seconds).Answer;
            Print($"Quickest at {same.Key:E0}: {quickest.Method.Name}, {quickest.Seconds / processor:F1} times as long as ours.");
            ratio = same.Key == AskedTolerance ? quickest.Seconds / processor : ratio;
        }

        var (near, fast) = (ours.Litres <= AllowedLitres, ratio >= AskedRatio);
        Print($"Ours within {AllowedLitres} litres all the hour: {(near ? "yes" : "NO")}; at least {AskedRatio} times as fast as CVODE at {AskedTolerance:E0}: {(fast ? "yes" : "NO")}");
        return near && fast;
    }

    private static Errors Off(List<(double Left, double Flow, double Needle)> moments, List<(double Left, double Flow, double Needle)> reference)
    {
        var pairs = moments.Zip(reference, (a, b) => (Litres: Math.Abs(a.Left - b.Left) * 1e3, Flow: Math.Abs(a.Flow - b.Flow) * 6e4, Needle: Math.Abs(a.Needle - b.Needle))).ToList();
        double Rms(Func<(double Litres, double Flow, double Needle), double> of) => Math.Sqrt(pairs.Average(p => of(p) * of(p)));
        return new Errors(pairs.Max(p => p.Litres), pairs.Max(p => p.Flow), pairs.Max(p => p.Needle), Rms(p => p.Litres), Rms(p => p.Flow), Rms(p => p.Needle));
    }

    private static void Show(string what, Errors off, double? seconds, long? calls) => Print(
        $"{what,-26} {off.Litres,12:E1} {off.Flow,8:E1} {off.Needle,9:E1} {off.RmsLitres,15:E1} {off.RmsFlow,8:E1} {off.RmsNeedle,9:E1} {seconds * 1e3,9:F1} {calls,12}");

    private static void Print(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));

    private sealed record Errors(double Litres, double Flow, double Needle, double RmsLitres, double RmsFlow, double RmsNeedle);
}
