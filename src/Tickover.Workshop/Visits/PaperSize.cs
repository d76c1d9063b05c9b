namespace Tickover.Workshop.Visits;

/// <summary>Paper for accounts and cards.</summary>
public enum PaperSize
{
    /// <summary>ISO 216 A4, 210 x 297 mm.</summary>
    A4,

    /// <summary>ANSI Y14.1 A, "Letter", 8.5 x 11 in.</summary>
    Letter,
}
