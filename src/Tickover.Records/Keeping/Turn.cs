namespace Tickover.Records.Keeping;

/// <summary>Which way a journal is walked.</summary>
internal enum Turn
{
    /// <summary>Taking an act back.</summary>
    Back,

    /// <summary>Doing again what was taken back.</summary>
    Forth,
}
