namespace Tickover.Physics.Sending;

/// <summary>The estimator's state with its covariance: left, right, flow, needle, burn; then what the document has wrong: logarithms of flow and lag against it, and the accelerometer's offset to the side.</summary>
internal sealed class FuelState
{
    internal const int Left = 0;
    internal const int Right = 1;
    internal const int Flow = 2;
    internal const int Needle = 3;
    internal const int Burn = 4;
    internal const int FlowOff = 5;
    internal const int LagOff = 6;
    internal const int LeanOff = 7;
    internal const int Size = 8;

    internal FuelState(double[] mean, double wide, double apart, double needle, double burn, EstimatorSettings settings)
    {
        Mean = mean;
        Covariance[FlowOff, FlowOff] = settings.FlowOff * settings.FlowOff;
        Covariance[LagOff, LagOff] = settings.LagOff * settings.LagOff;
        Covariance[LeanOff, LeanOff] = settings.LeanOff * settings.LeanOff;
        Spread(wide, apart);
        Covariance[Flow, Flow] = 1e-14;
        Covariance[Needle, Needle] = needle * needle;
        Covariance[Burn, Burn] = burn * burn;
    }

    internal double[] Mean { get; }

    internal double[,] Covariance { get; } = new double[Size, Size];

    /// <summary>Total and its variance.</summary>
    internal (double Total, double Variance) Total() =>
        (Mean[Left] + Mean[Right], Covariance[Left, Left] + Covariance[Right, Right] + 2 * Covariance[Left, Right]);

    /// <summary>Admits that much may have been filled into either tank.</summary>
    internal void Loosen(double wide) => Spread(wide, wide);

    /// <summary>Takes a reading of the needle with its variance.</summary>
    internal void Take(double needle, double variance)
    {
        var (off, scale) = (needle - Mean[Needle], 1 / (Covariance[Needle, Needle] + variance));
        Span<double> column = stackalloc double[Size];
        for (var i = 0; i < Size; i++)
        {
            column[i] = Covariance[i, Needle];
        }

        for (var i = 0; i < Size; i++)
        {
            Mean[i] += column[i] * scale * off; // sending (29)
            for (var j = 0; j < Size; j++)
            {
                Covariance[i, j] -= column[i] * column[j] * scale;
            }
        }
    }

    // Variance of the total and, apart from it, of the difference of both.
    private void Spread(double wide, double apart)
    {
        var (sum, difference) = (0.25 * wide * wide, 0.25 * apart * apart);
        Covariance[Left, Left] += sum + difference;
        Covariance[Right, Right] += sum + difference;
        Covariance[Left, Right] += sum - difference;
        Covariance[Right, Left] += sum - difference;
    }
}
