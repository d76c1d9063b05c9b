namespace Tickover.Web.Lan;

/// <summary>What became of a code that was typed.</summary>
internal enum PairingOutcome
{
    /// <summary>It was the code, and is used up.</summary>
    Good,

    /// <summary>It was not the code.</summary>
    Wrong,

    /// <summary>There is no code: none was made, or it is used, too old or tried too often.</summary>
    NoCode,

    /// <summary>This address has had its tries.</summary>
    TooManyTries,
}
