using System.Globalization;

namespace Tickover.Workshop.Visits.Measures;

/// <summary>How an instrument stood on a day.</summary>
/// <param name="State">In date, due, or never checked.</param>
/// <param name="Words">The same as it is said, such as "in date, checked 3 March 2026".</param>
public sealed record InstrumentStanding(StandingState State, string Words)
{
    /// <summary>Says how an instrument stood.</summary>
    /// <param name="instrument">The instrument.</param>
    /// <param name="day">The day it was used.</param>
    /// <returns>The standing.</returns>
    public static InstrumentStanding On(Instrument instrument, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(instrument);
        return (instrument.CalibratedOn, instrument.DueOn) switch
        {
            (null, _) => new(StandingState.NeverChecked, "never checked"),
            ({ } checkedOn, _) when checkedOn > day => new(StandingState.NeverChecked, $"not checked before {Said(checkedOn)}"),
            ({ } checkedOn, { } due) when due < day => new(StandingState.Due, $"due since {Said(due)}, checked {Said(checkedOn)}"),
            ({ } checkedOn, _) => new(StandingState.InDate, $"in date, checked {Said(checkedOn)}"),
        };
    }

    private static string Said(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);
}
