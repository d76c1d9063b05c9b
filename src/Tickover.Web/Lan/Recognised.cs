namespace Tickover.Web.Lan;

/// <summary>What a cookie told.</summary>
/// <param name="Device">The tablet.</param>
/// <param name="NewToken">A token to send back in place of the one it came with; null while that is fresh.</param>
internal sealed record Recognised(RequestDevice Device, string? NewToken);
