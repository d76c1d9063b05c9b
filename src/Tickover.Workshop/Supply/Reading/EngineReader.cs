using Tickover.Physics.Fuels;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Reading;

namespace Tickover.Workshop.Supply.Reading;

/// <summary>Reads what the engine takes: litres an hour, power and consumption, or a car whose fuel the models give.</summary>
internal sealed class EngineReader
{
    private const double UsualIdleRpm = 850;
    private const double UsualFullRpm = 5000;
    private static readonly string[] Ways = ["power", "fullLoad", "car"];

    private readonly ObjectReader? _reader;
    private readonly Car? _car;
    private readonly double? _rpm;
    private readonly CarFuel? _wideOpen;

    /// <summary>Reads it, and lets the models find where a car takes most.</summary>
    /// <param name="root">The document.</param>
    /// <param name="json">Its text.</param>
    /// <param name="fuel">Name of the fuel in the line.</param>
    public EngineReader(ObjectReader root, string json, string fuel)
    {
        if (root["engine"] is null)
        {
            root.Faults.Missing("engine", "What the engine takes", "its power, its fuel at full load, or its car document", "\"engine\": { \"power\": 95 }");
        }

        _reader = root.Object("engine", SupplyForm.Engine);
        _rpm = _reader?.Number("rpm", SupplyLimits.Rpm);
        IdleRpm = _reader?.Number("idleRpm", SupplyLimits.Rpm) ?? UsualIdleRpm;
        _car = _reader is null || !IsOneWay(_reader) ? null : Burning(CarIn(_reader, json), fuel);
        if (_car is not null && root.Faults.All.Count == 0)
        {
            _wideOpen = CarDemand.WideOpen(_car, _rpm);
        }

        FullRpm = _rpm ?? _wideOpen?.Rpm ?? UsualFullRpm;
    }

    /// <summary>Idle speed, rpm.</summary>
    public double IdleRpm { get; }

    /// <summary>Speed at full load, rpm: as stated, else where the car takes most.</summary>
    public double FullRpm { get; }

    /// <summary>What the engine takes.</summary>
    /// <param name="density">Density of the fuel in the tank, kg/m³.</param>
    /// <returns>It; null where there are faults.</returns>
    public SupplyEngine? Read(double density)
    {
        if (_reader is not { } reader)
        {
            return null;
        }

        var words = new DemandWords(density, reader.Number("consumption", SupplyLimits.Consumption));
        var (power, stated) = (reader.Number("power", SupplyLimits.Power), reader.Number("fullLoad", SupplyLimits.LitresHour));
        var (idle, jet) = (reader.Number("idle", SupplyLimits.LitresHour), reader.Number("smallestJet", SupplyLimits.Jet));
        if (reader.Faults.All.Count > 0)
        {
            return null;
        }

        var full = stated is { } litres ? words.Stated(litres) : power is { } kilowatts ? words.OfPower(kilowatts) : OfCar(reader, words);
        var little = idle is null && _car is not null ? IdleOfCar(reader, words) : words.Idle(idle);
        return full is null || little is null ? null : new SupplyEngine
        {
            FullLoadKilogramsPerSecond = full.KilogramsPerSecond,
            IdleKilogramsPerSecond = little.KilogramsPerSecond,
            Origin = full.Origin,
            IdleOrigin = little.Origin,
            Working = [.. full.Working, .. little.Working],
            SmallestJetMetres = jet is { } mm ? SupplyUnits.FromMillimetres(mm) : null,
        };
    }

    private static bool IsOneWay(ObjectReader reader)
    {
        var given = Ways.Where(way => reader[way] is not null).ToList();
        if (given.Count != 1)
        {
            reader.Faults.Add(
                reader.At(given.Count == 0 ? Ways[0] : given[^1]),
                given.Count == 0 ? "Nothing tells the fuel at full load" : $"The fuel at full load is told more than once, by {string.Join(" and ", given.Select(way => $"\"{way}\""))}",
                "one of \"fullLoad\", \"car\" and \"power\"",
                "Keep the one known best: fuel as measured, else the car, else the power.");
        }

        return given.Count == 1;
    }

    private static Car? CarIn(ObjectReader reader, string json)
    {
        if (reader["car"] is not { } node)
        {
            return null;
        }

        var reading = CarDocument.Read(node.WrittenIn(json), reader.At("car"));
        foreach (var fault in reading.Faults)
        {
            reader.Faults.Add(fault.Path, fault.Problem, fault.Allowed, fault.WhatToDo);
        }

        return reading.Car;
    }

    // The engine burns what the line carries, whatever the car document says or leaves out.
    private static Car? Burning(Car? car, string fuel) =>
        car is null || (FuelGrade.TryParse(car.FuelGrade, out var own) && string.Equals(own.Name, fuel, StringComparison.Ordinal)) ? car
        : CarDocument.Change(car, "fuel", fuel).Car ?? car;

    private DemandFigure? OfCar(ObjectReader reader, DemandWords words)
    {
        if (_wideOpen is { } most)
        {
            return words.OfCar(_car!, most, _rpm is null ? CarDemand.Speeds(_car!) : [most.Rpm]);
        }

        reader.Faults.Add(reader.At("car"), "The models find no fuel for this car wide open", "a car whose mixture 'tickover mixture' gives at full load", "Look at its jets and chokes, or write \"fullLoad\" or \"power\" instead.");
        return null;
    }

    private DemandFigure? IdleOfCar(ObjectReader reader, DemandWords words)
    {
        if (CarDemand.Idle(_car!, IdleRpm) is { } idle)
        {
            return words.IdleOfCar(idle, _car!.Barrels.Count);
        }

        reader.Faults.Add(reader.At("idle"), FormattableString.Invariant($"The models find no idle for this car at {IdleRpm:0} rpm"), "litres an hour, or a speed it idles at as \"idleRpm\"", "Write what it takes at idle, such as \"idle\": 1.5.");
        return null;
    }
}
