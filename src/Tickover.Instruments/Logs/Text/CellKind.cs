namespace Tickover.Instruments.Logs.Text;

/// <summary>What stands in a cell.</summary>
internal enum CellKind
{
    /// <summary>Nothing, or a sign for nothing.</summary>
    Missing,

    /// <summary>A figure.</summary>
    Number,

    /// <summary>Anything else.</summary>
    Text,
}
