namespace Tickover.Workshop.Exhaust;

/// <summary>Something wrong with a gas reading.</summary>
/// <param name="Kind">What.</param>
/// <param name="Words">What the gases show, with their numbers: a sentence.</param>
/// <param name="WhatToDo">What to look at or read next: a sentence.</param>
public sealed record GasFault(GasFaultKind Kind, string Words, string WhatToDo)
{
    /// <summary>What it leaves the reading worth.</summary>
    public GasStanding Leaves => Kind switch
    {
        GasFaultKind.DioxideInTenths => GasStanding.Good,
        GasFaultKind.LeanOrLeak or GasFaultKind.HighHydrocarbons or GasFaultKind.LambdaDisagrees or GasFaultKind.OutsideFormula => GasStanding.Doubtful,
        _ => GasStanding.Spoilt,
    };
}
