using System.Globalization;
using Tickover.Workshop.Balance.Plans;
using Tickover.Workshop.Exhaust;
using Tickover.Workshop.Visits;

namespace Tickover.Workshop.Balance.Recorded;

/// <summary>λ and CO of whole banks at idle, as the record holds them.</summary>
internal static class RecordedGas
{
    /// <summary>What a reading says of a bank.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="plan">The engine.</param>
    /// <returns>The gas of the bank; nothing where it is another measure, could not be read or names no bank of this engine.</returns>
    public static IEnumerable<BankGas> Of(Reading reading, EnginePlan plan)
    {
        if (!int.TryParse(reading.Place.Name, NumberStyles.None, CultureInfo.InvariantCulture, out var bank) || bank < 1 || bank > plan.Banks)
        {
            return [];
        }

        return (reading.Measure, reading.Si) switch
        {
            ("lambdaIdle", { } lambda) => [new BankGas(bank, lambda)],
            ("carbonMonoxide", { } share) when LambdaOfMonoxide.Of(100 * share) is { } lambda => [new BankGas(bank, lambda)],
            _ => [],
        };
    }
}
