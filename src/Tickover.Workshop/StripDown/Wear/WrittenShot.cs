namespace Tickover.Workshop.StripDown.Wear;

/// <summary>Shots of the accelerator pump as they are written.</summary>
internal sealed record WrittenShot(double? Millilitres, int? Strokes);
