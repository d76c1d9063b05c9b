using Tickover.Physics.Inspection;

namespace Tickover.Workshop.StripDown.Levels;

/// <summary>Judges float levels, each and as a set.</summary>
public static class LevelJudge
{
    private const double Millimetres = 1000;
    private const double Grams = 1000;
    private const double Kilopascals = 1000;
    private const double LitresAnHour = 3.6e6;              // of m³/s

    /// <summary>Judges all of a sheet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <returns>What it comes to.</returns>
    public static LevelAnswer Judge(LevelSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var raw = sheet.Floats.Select(f => Stand(sheet, f)).ToList();
        var levels = raw.Where(v => v.Level is not null).Select(v => v.Level!.Value.Value).ToList();
        var target = sheet.Wanted ?? (levels.Count > 0 ? Middle.Of(levels) : sheet.Spill);
        var mass = Middle.Of(sheet.Floats.Select(f => f.Grams));
        var verdicts = raw.Select(v => Against(sheet, v, target, mass)).ToList();
        var spread = levels.Count > 1 ? levels.Max() - levels.Min() : (double?)null;
        return new LevelAnswer(verdicts, target, spread, LevelMixtures.Of(sheet, sheet.Nozzle is { } nozzle ? target - nozzle : null), LevelWords.Verdict(sheet, verdicts, spread));
    }

    private static LevelVerdict Stand(LevelSheet sheet, MeasuredFloat f)
    {
        var setting = Setting(sheet, f);
        var (idle, dead) = (sheet.Pressure * Kilopascals, sheet.DeadHead * Kilopascals);
        double? Level(FloatSetting with, double pressure) => with.Level(pressure, sheet.IdleFlow / LitresAnHour, sheet.Density) * Millimetres;
        var verdict = new LevelVerdict { Float = f, Flooding = setting.FloodingPressure(sheet.Density) / Kilopascals };
        if (Level(setting, idle) is not { } level || level <= sheet.Spill)
        {
            return verdict with { Finding = LevelFinding.Floods };
        }

        double Off(FloatSetting with, double pressure) => (Level(with, pressure) ?? level) - level;
        var heavier = Off(setting with { MassKilograms = setting.MassKilograms + (sheet.Scales / Grams) }, idle);
        var wider = Off(Wider(setting), idle);
        var pressed = Off(setting, idle * (1 + LevelUsual.PressurePart));
        var own = Root(sheet.Rule, heavier);
        var computed = new Band(level, Root(own, wider, pressed));
        var (rest, shut) = (setting.Level(dead, 0, sheet.Density) * Millimetres, setting.Sunk(idle, sheet.Density) * Millimetres);
        return verdict with
        {
            Sunk = shut,
            Computed = computed,
            Level = f.WetMillimetres is { } wet ? new Band(wet, LevelUsual.SightTube) : computed,
            OwnBand = f.WetMillimetres is null ? own : LevelUsual.SightTube,
            RiseAtDeadHead = rest is { } at && at > sheet.Spill ? level - at : null,
            WetOverDry = level - f.WetMillimetres,
        };
    }

    private static LevelVerdict Against(LevelSheet sheet, LevelVerdict v, double target, double mass)
    {
        var massOff = v.Float.Grams - mass;
        var off = target - v.Level?.Value;
        var lip = v.Level?.Value - sheet.Nozzle;
        var judged = v with
        {
            MassOff = massOff,
            IsMassOff = Math.Abs(massOff) > sheet.MassLimit / 2 && sheet.Floats.Max(f => f.Grams) - sheet.Floats.Min(f => f.Grams) > sheet.MassLimit,
            Off = off,
            Lip = lip,
            FuelPart = off is { } rise && sheet.Nozzle is { } nozzle ? LevelMixtures.Plain(sheet, rise, target - nozzle) : null,
            Finding = Finding(sheet, v, off),
        };
        if (judged.Finding is LevelFinding.High or LevelFinding.Low or LevelFinding.Doubtful)
        {
            judged = judged with { Tang = FloatSetting.TangBend(off!.Value, sheet.Valve.LeverRatio) };
        }

        return judged with { Words = LevelWords.Of(sheet, judged) };
    }

    // within half the limit of the middle all are within the limit of each other
    private static LevelFinding Finding(LevelSheet sheet, LevelVerdict v, double? off) => off is not { } by ? LevelFinding.Floods
        : Math.Abs(by) <= sheet.Limit / 2 ? LevelFinding.Equal
        : Math.Abs(by) - v.OwnBand <= sheet.Limit / 2 ? LevelFinding.Doubtful
        : by > 0 ? LevelFinding.High : LevelFinding.Low;

    private static FloatSetting Setting(LevelSheet sheet, MeasuredFloat f) => new()
    {
        Shape = sheet.Shape,
        MassKilograms = f.Grams / Grams,
        Valve = sheet.Valve,
        SpillMetres = sheet.Spill / Millimetres,
        BottomMetres = ((f.DryMillimetres + (f.From == HeightDatum.Gasket ? sheet.Gasket : 0)) / Millimetres) + (f.To == HeightEnd.Top ? sheet.Shape.HeightMetres : 0),
    };

    private static FloatSetting Wider(FloatSetting setting) => setting with
    {
        Shape = setting.Shape switch
        {
            StraightFloat straight => straight with { AreaSquareMetres = straight.AreaSquareMetres * (1 + LevelUsual.AreaPart) },
            LyingFloat lying => lying with { LengthMetres = lying.LengthMetres * (1 + LevelUsual.AreaPart) },
            var other => other,
        },
    };

    private static double Root(params ReadOnlySpan<double> parts)
    {
        var sum = 0.0;
        foreach (var part in parts)
        {
            sum += part * part;
        }

        return Math.Sqrt(sum);
    }
}
