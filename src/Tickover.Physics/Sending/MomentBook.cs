namespace Tickover.Physics.Sending;

/// <summary>Where a run writes its moments down.</summary>
internal sealed class MomentBook(int count, double every)
{
    private readonly double[] _leftVolumes = new double[count], _rightVolumes = new double[count], _leftLevels = new double[count], _rightLevels = new double[count];
    private readonly double[] _leftSlopes = new double[count], _rightSlopes = new double[count], _flows = new double[count];
    private readonly double[] _levels = new double[count], _travels = new double[count], _ohms = new double[count], _needles = new double[count];
    private readonly double[] _ahead = new double[count], _left = new double[count];
    private readonly bool[] _lamps = new bool[count], _covered = new bool[count];

    internal int Written { get; private set; }

    internal void Fuel(TankLane left, TankLane right, (double Left, double Right) slopes, double flow, bool covered)
    {
        var i = Written;
        (_leftVolumes[i], _rightVolumes[i]) = (left.Volume, right.Volume);
        (_leftLevels[i], _rightLevels[i]) = (left.Level, right.Level);
        (_leftSlopes[i], _rightSlopes[i]) = slopes;
        (_flows[i], _covered[i]) = (flow, covered);
    }

    internal void Road(double ahead, double left) => (_ahead[Written], _left[Written]) = (ahead, left);

    // Closes the moment: call it last.
    internal void Sender(SenderChain? chain)
    {
        if (chain is not null)
        {
            var i = Written;
            (_levels[i], _travels[i], _ohms[i], _needles[i], _lamps[i]) = (chain.Level, chain.Travel, chain.SeenOhms, chain.Needle, chain.Lamp);
        }

        Written++;
    }

    internal TankMoments Close(Validity validity) => new()
    {
        EverySeconds = every,
        LeftVolumes = _leftVolumes,
        RightVolumes = _rightVolumes,
        LeftLevels = _leftLevels,
        RightLevels = _rightLevels,
        LeftSlopes = _leftSlopes,
        RightSlopes = _rightSlopes,
        PipeFlows = _flows,
        SenderLevels = _levels,
        Travels = _travels,
        Ohms = _ohms,
        Needles = _needles,
        Lamps = _lamps,
        Covered = _covered,
        Ahead = _ahead,
        Left = _left,
        Validity = validity,
    };
}
