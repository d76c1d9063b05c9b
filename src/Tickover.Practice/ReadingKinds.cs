namespace Tickover.Practice;

/// <summary>What is read at a barrel; engine speed is noted with every reading.</summary>
[Flags]
public enum ReadingKinds
{
    /// <summary>Nothing but the speed.</summary>
    None = 0,

    /// <summary>Air with the dial meter, kg/h.</summary>
    Air = 1,

    /// <summary>Depression behind the plate, kPa.</summary>
    Vacuum = 2,

    /// <summary>Lambda in the header.</summary>
    Lambda = 4,

    /// <summary>Temperature of the header, °C.</summary>
    Header = 8,

    /// <summary>All four.</summary>
    All = Air | Vacuum | Lambda | Header,
}
