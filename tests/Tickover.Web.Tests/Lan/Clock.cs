namespace Tickover.Web.Tests.Lan;

/// <summary>A clock on the wall and a running counter, moved apart or together.</summary>
internal sealed class Clock : TimeProvider
{
    private DateTimeOffset _wall = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);
    private TimeSpan _run;

    public override long TimestampFrequency => TimeSpan.TicksPerSecond;

    public override DateTimeOffset GetUtcNow() => _wall;

    public override long GetTimestamp() => _run.Ticks;

    public void Pass(TimeSpan time)
    {
        _wall += time;
        _run += time;
    }

    public void Set(TimeSpan by) => _wall += by;
}
