namespace Tickover.Web.Lan;

/// <summary>Notices tablets that a second server on the same data took off, and closes what they have open here.</summary>
internal sealed class RevocationWatch(DeviceRegister register, WebAppOptions options, TimeProvider time) : BackgroundService
{
    private static readonly TimeSpan Every = TimeSpan.FromSeconds(2);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var timer = new PeriodicTimer(Every, time);
        while (options.Lan is not null && await timer.WaitForNextTickAsync(stoppingToken))
        {
            register.CloseWhatIsOff();
        }
    }
}
