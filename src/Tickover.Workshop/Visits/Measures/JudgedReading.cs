namespace Tickover.Workshop.Visits.Measures;

/// <summary>A reading with all that must stand beside it: instrument, day, what it is good to, and how it lies to the limit.</summary>
public sealed record JudgedReading
{
    /// <summary>The reading.</summary>
    public required Reading Reading { get; init; }

    /// <summary>What it was taken with; null where that is not noted.</summary>
    public Instrument? Instrument { get; init; }

    /// <summary>How the instrument stood on the day; null where none is noted.</summary>
    public InstrumentStanding? Standing { get; init; }

    /// <summary>The day it was taken, by the tablet's calendar.</summary>
    public required DateOnly On { get; init; }

    /// <summary>Half the width of the band, in SI; null where the instrument says nothing of it.</summary>
    public double? BandSi { get; init; }

    /// <summary>How it lies to the limit for a single place; not judged where the limit is on the spread alone.</summary>
    public Verdict Verdict { get; init; }

    internal static JudgedReading Of(MeasureDefinition measure, Reading reading, WorkshopRecord workshop)
    {
        var instrument = workshop.Find(reading.Instrument);
        var on = DateOnly.FromDateTime(reading.TakenAt.DateTime);
        var band = reading.Si is { } si ? GoodToText.Read(measure, instrument?.GoodTo)?.Of(si) : null;
        return new JudgedReading
        {
            Reading = reading,
            Instrument = instrument,
            Standing = instrument is null ? null : InstrumentStanding.On(instrument, on),
            On = on,
            BandSi = band,
            Verdict = Judgement.Judge(reading.Si ?? double.NaN, band, measure.Limit?.LowestSi, measure.Limit?.HighestSi),
        };
    }
}
