using Tickover.Physics.Inference;
using Tickover.Workshop.Cars.Reading;

namespace Tickover.Workshop.FaultFinding.Reading;

/// <summary>Moves the chance of causes by what closed cases found; the prior stays beside it.</summary>
internal static class ClosedCases
{
    public static void Learn(ObjectReader root, Dictionary<string, FaultCause> causes)
    {
        foreach (var reader in FaultFields.Items(root, "closed", FaultForm.Closed))
        {
            var key = FaultFields.Needed(reader, "cause");
            var of = (int)FaultFields.Number(reader, "of", 1, 1e6, 1);
            var found = (int)FaultFields.Number(reader, "found", 0, of, 0);
            if (!causes.TryGetValue(key, out var cause))
            {
                reader.Faults.Add(reader.At("cause"), $"There is no cause \"{key}\"", "the key of a cause", Spelling.Nearest(key, causes.Keys) is { } near ? $"Did you mean \"{near}\"?" : "Mend the key.");
                continue;
            }

            causes[key] = cause with { Learned = BetaCount.Mean(cause.Prior, FaultForm.PriorWorth, found, of), Closed = (found, of) };
        }
    }
}
