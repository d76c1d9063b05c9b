namespace Tickover.Records.Model;

/// <summary>What sort of act.</summary>
internal enum ActKind
{
    /// <summary>Something done.</summary>
    Done,

    /// <summary>Something taken back.</summary>
    Undo,

    /// <summary>Something taken back and done again.</summary>
    Redo,
}
