using System.Globalization;

namespace Tickover.Workshop.Balance.Plans;

/// <summary>A fault and where it is.</summary>
/// <param name="Fault">What is wrong.</param>
/// <param name="Place">Number of the barrel, carburettor or bank, as the fault goes by; 0 of a screw.</param>
/// <param name="Screw">Key of the screw, for <see cref="BalanceFault.DeadScrew"/>; empty otherwise.</param>
public sealed record FaultPlace(BalanceFault Fault, int Place, string Screw = "")
{
    /// <summary>What the number counts.</summary>
    /// <param name="fault">The fault.</param>
    /// <returns>"barrel", "carburettor", "bank" or "screw".</returns>
    public static string Counts(BalanceFault fault) => fault switch
    {
        BalanceFault.BankTiming => "bank",
        BalanceFault.StopNotTouching or BalanceFault.RodLength or BalanceFault.LeverAngle or BalanceFault.WornSpindle => "carburettor",
        BalanceFault.DeadScrew => "screw",
        _ => "barrel",
    };

    /// <summary>Reads what <see cref="ToString"/> writes; never throws.</summary>
    /// <param name="text">Text such as "leakBelowPlate barrel 3".</param>
    /// <param name="plan">The engine.</param>
    /// <returns>The fault; null where the text is none, or the engine has no such place.</returns>
    public static FaultPlace? Read(string? text, EnginePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var parts = (text ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length != 3 || !Enum.TryParse<BalanceFault>(parts[0], ignoreCase: true, out var fault) || !Enum.IsDefined(fault) || char.IsAsciiDigit(parts[0][0]))
        {
            return null;
        }

        if (fault == BalanceFault.DeadScrew)
        {
            return plan.Find(parts[2]) is { } adjuster ? new FaultPlace(fault, 0, adjuster.Key) : null;
        }

        var count = Counts(fault) switch { "barrel" => plan.Barrels.Count, "carburettor" => plan.Carburettors.Count, _ => plan.Banks };
        return int.TryParse(parts[2], NumberStyles.None, CultureInfo.InvariantCulture, out var place) && place >= 1 && place <= count ? new FaultPlace(fault, place) : null;
    }

    /// <summary>The fault and its place as a text, such as "leakBelowPlate barrel 3".</summary>
    /// <returns>The text.</returns>
    public override string ToString()
    {
        var name = Fault.ToString();
        return string.Create(CultureInfo.InvariantCulture, $"{char.ToLowerInvariant(name[0])}{name[1..]} {Counts(Fault)} {(Screw.Length > 0 ? Screw : Place.ToString(CultureInfo.InvariantCulture))}");
    }
}
