using System.Globalization;
using Tickover.Workshop.Cars;

namespace Tickover.Workshop.JetChoice;

/// <summary>A part of the barrels that a choice of jets may change.</summary>
/// <param name="Name">Its name in the car's document, such as <c>mainJet</c>.</param>
/// <param name="Label">The trade's name.</param>
/// <param name="Suffix">What stands behind the number in a document; empty for jets, which are bare numbers.</param>
/// <param name="ToSi">What a number is multiplied by to come to SI.</param>
/// <param name="Series">Smallest and largest size sold and the step between them, in the number's own unit. Common practice.</param>
/// <param name="Reach">How many steps either way are tried.</param>
/// <param name="Effort">Work of changing it in all barrels against a set of main jets, 1. Assumed.</param>
/// <param name="IsSetting">Whether it is set and not bought.</param>
/// <param name="Order">When it is done, from 1 (trade reference 3.6).</param>
/// <param name="IsLength">Whether its effect goes with the length itself rather than with its logarithm.</param>
public sealed record JetPart(
    string Name,
    string Label,
    string Suffix,
    double ToSi,
    (double Smallest, double Largest, double Step) Series,
    int Reach,
    double Effort,
    bool IsSetting,
    int Order,
    bool IsLength = false)
{
    /// <summary>Key of its figure.</summary>
    public string Key => $"barrel.{Name}";

    /// <summary>The size fitted in the first barrel, in the number's own unit.</summary>
    /// <param name="car">The car.</param>
    /// <returns>The size.</returns>
    public double Fitted(Car car)
    {
        ArgumentNullException.ThrowIfNull(car);
        return Math.Round(car.Barrels[0].Figures.Si(Key) / ToSi, 4);
    }

    /// <summary>A size as documents write it.</summary>
    /// <param name="size">The size, in the number's own unit.</param>
    /// <returns>Text such as "135" or "32 mm".</returns>
    public string Text(double size) => size.ToString("0.####", CultureInfo.InvariantCulture) + Suffix;
}
