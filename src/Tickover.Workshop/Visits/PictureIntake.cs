namespace Tickover.Workshop.Visits;

/// <summary>What came of taking a picture in.</summary>
/// <param name="Refusal">Why it was not taken, and what to do; null where it was.</param>
/// <param name="Hash">SHA-256 of the picture kept, in small hexadecimal letters.</param>
/// <param name="Width">Width in pixels.</param>
/// <param name="Height">Height in pixels.</param>
public sealed record PictureIntake(string? Refusal, string Hash, int Width, int Height);
