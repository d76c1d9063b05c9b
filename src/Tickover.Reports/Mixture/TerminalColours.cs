namespace Tickover.Reports.Mixture;

/// <summary>What colours a terminal takes.</summary>
public enum TerminalColours
{
    /// <summary>None: NO_COLOR, a file or a pipe.</summary>
    None,

    /// <summary>The 256-colour palette of xterm.</summary>
    Palette256,

    /// <summary>24-bit colour.</summary>
    TrueColour,
}
