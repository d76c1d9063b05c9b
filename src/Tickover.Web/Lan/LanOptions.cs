namespace Tickover.Web.Lan;

/// <summary>How tablets on the workshop's network reach this server.</summary>
public sealed record LanOptions
{
    /// <summary>Whether paired tablets are also answered over plain http, where anyone on the network can listen in.</summary>
    public bool PlainHttp { get; init; }
}
