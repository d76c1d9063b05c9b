namespace Tickover.Workshop.Exhaust;

/// <summary>What can be wrong with a gas reading before anyone asks about the mixture.</summary>
public enum GasFaultKind
{
    /// <summary>CO₂ came in tenths of a per cent; it was divided by ten.</summary>
    DioxideInTenths,

    /// <summary>A gas reads further below zero than a zero wanders.</summary>
    NotZeroed,

    /// <summary>The gases cannot stand beside each other.</summary>
    ImpossibleSum,

    /// <summary>Much HC with the oxygen that belongs to it: charges pass unburnt.</summary>
    Misfire,

    /// <summary>Air got in behind the engine, or one barrel is lean beside rich ones.</summary>
    DilutedSample,

    /// <summary>Lean, or diluted: with so little CO these gases cannot tell.</summary>
    LeanOrLeak,

    /// <summary>Much HC without the oxygen of a misfire.</summary>
    HighHydrocarbons,

    /// <summary>The λ on the instrument is not the λ of its gases.</summary>
    LambdaDisagrees,

    /// <summary>λ lies where the formula is not stated.</summary>
    OutsideFormula,
}
