using System.Globalization;
using Tickover.Web.Visits;
using Tickover.Workshop.Visits;

namespace Tickover.Web.Papers;

/// <summary>Reads the brief of a visit and the particulars of its owner from a form.</summary>
internal static class BriefFields
{
    private const int LastOdometer = 9_999_999;

    /// <summary>The visit as the form has it.</summary>
    public static Visit Visit(FormFields fields, Visit visit) => visit with
    {
        Complaint = fields.Needed("complaint", "Write down what the owner says is wrong, word for word."),
        Story = fields.Text("story"),
        Wishes = fields.Text("wishes"),
        Fuel = fields.Text("fuel"),
        DueOn = Due(fields, visit.ArrivedOn),
        Scope = fields.Text("scope"),
        ScopeAgreed = fields.Text("scopeAgreed"),
        EstimateHours = Amount(fields, "estimateHours", "Hours"),
        Estimate = Amount(fields, "estimate", "Estimate"),
        StopAndAsk = Amount(fields, "stopAndAsk", "Stop and ask"),
        OdometerIn = Odometer(fields, "odometerIn", "Odometer in"),
    };

    /// <summary>The visit as the longer form of a visit under way has it.</summary>
    public static Visit Longer(FormFields fields, Visit visit, DateOnly today)
    {
        var waits = fields.Choice("waitsOn", WaitsOn.Us);
        return Visit(fields, visit with { ArrivedOn = fields.Day("arrivedOn", "Arrived on") ?? visit.ArrivedOn }) with
        {
            Summary = fields.Text("summary"),
            OdometerOut = Odometer(fields, "odometerOut", "Odometer out"),
            WaitsOn = waits,
            WaitingFor = fields.Text("waitingFor"),
            WaitingSince = fields.Day("waitingSince", "Since") ?? (waits == WaitsOn.Us ? null : today),
            WaitingUntil = Moment(fields, "waitingUntil", "Until"),
        };
    }

    /// <summary>The owner as the form has it; null where no name is given and none is needed.</summary>
    public static Owner? Owner(FormFields fields, Owner? known)
    {
        var owner = (known ?? new Owner()) with
        {
            Name = fields.Text("ownerName"),
            Telephone = fields.Text("ownerTelephone"),
            Email = fields.Text("ownerEmail"),
            Address = fields.Text("ownerAddress"),
        };
        var rest = owner.Telephone + owner.Email + owner.Address;
        if (owner.Name.Length == 0 && (known is not null || rest.Length > 0))
        {
            fields.Complain("ownerName", "The owner needs a name.");
        }

        if (owner.Email.Length > 0 && !owner.Email.Contains('@'))
        {
            fields.Complain("ownerEmail", $"\"{owner.Email}\" is no address for e-mail: it has no @.");
        }

        return owner.Name.Length == 0 ? null : owner;
    }

    /// <summary>A sum or a time that is not below nothing.</summary>
    public static decimal? Amount(FormFields fields, string name, string label)
    {
        var number = fields.Number(name, label);
        if (number < 0)
        {
            fields.Complain(name, $"{label}: it cannot be less than 0.");
        }

        return number;
    }

    private static int? Odometer(FormFields fields, string name, string label)
    {
        var number = fields.Whole(name, label);
        if (number is < 0 or > LastOdometer)
        {
            fields.Complain(name, $"{label}: an odometer shows 0 to {LastOdometer.ToString("#,##0", CultureInfo.InvariantCulture)}.");
        }

        return number;
    }

    private static DateOnly? Due(FormFields fields, DateOnly arrived)
    {
        var due = fields.Day("dueOn", "Promised for");
        if (due < arrived)
        {
            fields.Complain("dueOn", "Promised for: that day is before the car came.");
        }

        return due;
    }

    private static DateTimeOffset? Moment(FormFields fields, string name, string label)
    {
        var text = fields.Text(name);
        if (text.Length == 0)
        {
            return null;
        }

        if (DateTime.TryParseExact(text, ["yyyy-MM-dd'T'HH:mm", "yyyy-MM-dd'T'HH:mm:ss", "yyyy-MM-dd HH:mm", "yyyy-MM-dd"], CultureInfo.InvariantCulture, DateTimeStyles.AssumeLocal, out var moment))
        {
            return new DateTimeOffset(moment);
        }

        fields.Complain(name, $"{label}: \"{text}\" is no day and time. Write it as 2026-12-24 16:30.");
        return null;
    }
}
