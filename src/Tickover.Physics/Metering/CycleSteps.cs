using System.Runtime.Intrinsics;

namespace Tickover.Physics.Metering;

/// <summary>A cycle of a signal in steps of several of its own: each holds the mean of what it spans.</summary>
internal readonly struct CycleSteps
{
    internal CycleSteps(Vector256<double>[] depression, Vector256<double> seconds, int most)
    {
        var n = depression.Length;
        var together = Math.Max(1, n / most);
        while (n % together != 0)
        {
            together--;
        }

        var spans = new Vector256<double>[n / together];
        for (var s = 0; s < spans.Length; s++)
        {
            var first = s * together;
            var sum = (depression[first] + depression[first + together < n ? first + together : 0]) * 0.5;
            for (var k = 1; k < together; k++)
            {
                sum += depression[first + k];
            }

            spans[s] = sum / together;
        }

        (Depression, Seconds) = (spans, seconds * together);
    }

    /// <summary>Mean depression over each step, Pa.</summary>
    internal Vector256<double>[] Depression { get; }

    /// <summary>Length of a step, s.</summary>
    internal Vector256<double> Seconds { get; }
}
