using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Supply.Reading;

/// <summary>Reads the three cases; what is left out is what is usual.</summary>
internal static class CaseReader
{
    // Common practice, to be overwritten: temperatures in °C, height in m, load in per cent.
    private static readonly (string Name, SupplyCaseKind Kind, double Tank, double Floor, double Bonnet, double Altitude, double? Load)[] Usual =
    [
        ("idle", SupplyCaseKind.Idle, 20, 25, 50, 0, null),
        ("fullLoad", SupplyCaseKind.FullLoad, 20, 25, 45, 0, 100),
        ("hot", SupplyCaseKind.Hot, 35, 45, 75, 500, 25),
    ];

    public static List<SupplyCaseSetting> Read(ObjectReader root, double idleRpm, double fullRpm)
    {
        var cases = root.Object("cases", SupplyForm.Cases);
        return [.. Usual.Select(usual => One(cases?.Object(usual.Name, SupplyForm.Case), usual, idleRpm, fullRpm))];
    }

    private static SupplyCaseSetting One(
        ObjectReader? reader, (string Name, SupplyCaseKind Kind, double Tank, double Floor, double Bonnet, double Altitude, double? Load) usual, double idleRpm, double fullRpm)
    {
        double Celsius(string name, double otherwise) => SupplyUnits.ToKelvin(reader?.Number(name, SupplyLimits.Celsius) ?? otherwise);
        var load = (reader?.Number("load", SupplyLimits.Part) ?? usual.Load) / 100;
        return new SupplyCaseSetting
        {
            Kind = usual.Kind,
            Load = load,
            TankKelvin = Celsius("tank", usual.Tank),
            FloorKelvin = Celsius("floor", usual.Floor),
            BonnetKelvin = Celsius("bonnet", usual.Bonnet),
            AltitudeMetres = reader?.Number("altitude", SupplyLimits.Altitude) ?? usual.Altitude,
            Rpm = reader?.Number("rpm", SupplyLimits.Rpm) ?? (load is >= 0.5 ? fullRpm : idleRpm),
            Volts = reader?.Number("volts", SupplyLimits.Volts),
        };
    }
}
