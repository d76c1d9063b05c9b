using System.Globalization;
using System.Threading.RateLimiting;
using Microsoft.AspNetCore.RateLimiting;
using Tickover.Web.Frame;

namespace Tickover.Web.Lan;

/// <summary>How much one tablet, or one address that is not let in, may ask for.</summary>
/// <remarks>
/// A tablet that was away sends 500 entries at once and reloads its pages beside it; twenty do so at the same time, each on its own
/// account. This machine itself is not counted: whoever sits at it can stop the server anyway.
/// </remarks>
internal static class LanLimits
{
    /// <summary>Requests a tablet may send at once.</summary>
    public const int DeviceBurst = 1500;

    /// <summary>Requests a second that a tablet may go on sending.</summary>
    public const int DeviceRate = 100;

    /// <summary>Requests that an address not let in may send at once: the page to pair on with its files, a few times over.</summary>
    public const int StrangerBurst = 120;

    /// <summary>Requests a second that such an address may go on sending.</summary>
    public const int StrangerRate = 5;

    /// <summary>Requests of one tablet or address under way at one time, open streams among them.</summary>
    public const int AtOneTime = 64;

    private static readonly TimeSpan RetryUnlessTold = TimeSpan.FromSeconds(1);

    public static void Set(RateLimiterOptions limiter)
    {
        limiter.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
        limiter.GlobalLimiter = PartitionedRateLimiter.CreateChained(
            PartitionedRateLimiter.Create<HttpContext, string>(Rate),
            PartitionedRateLimiter.Create<HttpContext, string>(Concurrency));
        limiter.OnRejected = async (rejected, _) =>
        {
            var wait = rejected.Lease.TryGetMetadata(MetadataName.RetryAfter, out var told) ? told : RetryUnlessTold;
            rejected.HttpContext.Response.Headers.RetryAfter = Math.Max(1, Math.Ceiling(wait.TotalSeconds)).ToString(CultureInfo.InvariantCulture);
            await Faults.SayAsync(
                rejected.HttpContext, StatusCodes.Status429TooManyRequests, "That is more than this server takes at once.", "Wait a moment; what is in the outbox is sent again by itself.");
        };
    }

    private static RateLimitPartition<string> Rate(HttpContext context) => context.Features.Get<RequestDevice>() switch
    {
        { } device when device == RequestDevice.ThisMachine => RateLimitPartition.GetNoLimiter(device.Id),
        { } device => RateLimitPartition.GetTokenBucketLimiter(device.Id, _ => Bucket(DeviceBurst, DeviceRate)),
        null => RateLimitPartition.GetTokenBucketLimiter(Address(context), _ => Bucket(StrangerBurst, StrangerRate)),
    };

    private static RateLimitPartition<string> Concurrency(HttpContext context) => context.Features.Get<RequestDevice>() is { } device && device == RequestDevice.ThisMachine
        ? RateLimitPartition.GetNoLimiter(device.Id)
        : RateLimitPartition.GetConcurrencyLimiter(
            context.Features.Get<RequestDevice>()?.Id ?? Address(context),
            _ => new ConcurrencyLimiterOptions { PermitLimit = AtOneTime, QueueLimit = 0 });

    private static string Address(HttpContext context) => DeviceCheck.Caller(context)?.ToString() ?? "";

    private static TokenBucketRateLimiterOptions Bucket(int burst, int rate) => new()
    {
        TokenLimit = burst,
        TokensPerPeriod = rate,
        ReplenishmentPeriod = TimeSpan.FromSeconds(1),
        QueueLimit = 0,
        AutoReplenishment = true,
    };
}
