namespace Tickover.Records.Model;

/// <summary>The picture of a photograph.</summary>
internal sealed class PictureRow
{
    /// <summary>The photograph.</summary>
    public Guid Photograph { get; init; }

    /// <summary>SHA-256 of <see cref="Whole"/>.</summary>
    public string Hash { get; init; } = "";

    /// <summary>Width of <see cref="Whole"/> in pixels.</summary>
    public int Width { get; init; }

    /// <summary>Height of <see cref="Whole"/> in pixels.</summary>
    public int Height { get; init; }

    /// <summary>The picture, a JPEG without anything but the picture.</summary>
    public byte[] Whole { get; init; } = [];

    /// <summary>The same, small, for lists.</summary>
    public byte[] Small { get; init; } = [];
}
