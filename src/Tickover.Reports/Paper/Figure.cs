using Tickover.Reports.Charts;

namespace Tickover.Reports.Paper;

/// <summary>A drawn picture.</summary>
/// <param name="Draw">Draws it from its origin.</param>
/// <param name="Width">Width in drawing units, 96 to the inch at its natural size.</param>
/// <param name="Height">Height in drawing units.</param>
/// <param name="Label">The sentence that stands for the picture.</param>
internal sealed record Figure(Action<IDrawing> Draw, double Width, double Height, string Label) : Block;
