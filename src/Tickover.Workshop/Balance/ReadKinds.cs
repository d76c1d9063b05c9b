namespace Tickover.Workshop.Balance;

/// <summary>What is read in a round.</summary>
[Flags]
public enum ReadKinds
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>Airflow.</summary>
    Air = 1,

    /// <summary>Depression behind the plate.</summary>
    Vacuum = 2,

    /// <summary>Lambda by cylinder.</summary>
    Lambda = 4,

    /// <summary>Header temperature.</summary>
    Header = 8,

    /// <summary>Engine speed alone, as it is noted between turns of a mixture screw.</summary>
    Speed = 16,

    /// <summary>λ or CO of a whole bank, in its tail pipe.</summary>
    BankGas = 32,
}
