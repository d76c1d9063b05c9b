namespace Tickover.Web.Tanks;

/// <summary>A corner as it was typed.</summary>
/// <param name="Right">mm to the right.</param>
/// <param name="Up">mm up.</param>
/// <param name="Radius">Radius, mm; empty for a sharp one.</param>
public sealed record SketchRow(string Right, string Up, string Radius)
{
    /// <summary>Nothing typed yet.</summary>
    public static SketchRow Blank { get; } = new("", "", "");

    /// <summary>Whether nothing was typed.</summary>
    public bool IsBlank => Right.Length == 0 && Up.Length == 0;
}
