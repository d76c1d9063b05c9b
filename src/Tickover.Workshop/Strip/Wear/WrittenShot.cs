namespace Tickover.Workshop.Strip.Wear;

/// <summary>Shots of the accelerator pump as they are written.</summary>
internal sealed record WrittenShot(double? Millilitres, int? Strokes);
