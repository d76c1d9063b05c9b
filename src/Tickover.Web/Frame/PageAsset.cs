namespace Tickover.Web.Frame;

/// <summary>One embedded file.</summary>
/// <param name="Content">Its bytes.</param>
/// <param name="ContentType">Its media type.</param>
public sealed record PageAsset(ReadOnlyMemory<byte> Content, string ContentType);
