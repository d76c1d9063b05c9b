using Tickover.Workshop.Visits;

namespace Tickover.Workshop.Demonstration;

/// <summary>The invented workshop, its people, instruments, owners and cars. Telephone numbers are of the range kept free for drama.</summary>
internal static class Cast
{
    public static Person Hale { get; } = new() { Id = Named.Of<Person>("RH"), Name = "Ros Hale", Initials = "RH", Role = "Foreman" };

    public static Person Birch { get; } = new() { Id = Named.Of<Person>("TB"), Name = "Tam Birch", Initials = "TB", Role = "Fitter, carburettors" };

    public static Person Kerr { get; } = new() { Id = Named.Of<Person>("NK"), Name = "Nell Kerr", Initials = "NK", Role = "Fitter, tanks and pipes" };

    public static Instrument Air { get; } = Tool("airflow", "airflow meter", "SMH-01", "±0.1 kg/h", "Compared with the second meter on one barrel, adaptor B.");

    public static Instrument Gas { get; } = Tool("gas", "exhaust analyser", "SMH-02", "±0.3 % CO", "Zeroed and leak-checked before each use.");

    public static Instrument Lambda { get; } = Tool("lambda", "λ probe", "SMH-03", "±0.02", "Free-air check before each use.");

    public static Instrument Meter { get; } = Tool("meter", "multimeter", "SMH-04", "±1 %", "Against a 100 Ω resistor.");

    public static Instrument Gauge { get; } = Tool("pressure", "fuel pressure gauge", "SMH-05", "±0.02 bar", "Against a water column.");

    public static Instrument Compression { get; } = Tool("compression", "compression gauge", "SMH-06", "±0.3 bar", "Against the air line's gauge.");

    public static Instrument Calliper { get; } = Tool("calliper", "calliper and dial gauge", "SMH-07", "±0.02 mm", "Against the 25 mm block.");

    public static Instrument Wall { get; } = Tool("wall", "wall thickness gauge", "SMH-08", "±0.1 mm", "On a 1.0 mm step; misses deep narrow pits.");

    public static Instrument Strobe { get; } = Tool("strobe", "strobe with tachometer", "SMH-09", "±0.5°, ±10 rpm", "Speed against the logger.");

    public static Instrument Can { get; } = Tool("can", "measuring can", "SMH-10", "±0.05 L", "Weighed full of water.");

    public static Instrument Cylinder { get; } = Tool("cylinder", "measuring cylinder, 10 mL", "SMH-11", "±0.05 cm³", "");

    public static IReadOnlyList<Instrument> Instruments { get; } = [Air, Gas, Lambda, Meter, Gauge, Compression, Calliper, Wall, Strobe, Can, Cylinder];

    public static void Enter(Script script, DemonstrationDocuments documents)
    {
        script.Do("the invented workshop", null, null, [House]);
        script.Do("people and instruments", null, Hale.Id,
        [
            Hale, Birch, Kerr,
            .. Instruments.Select((tool, i) => tool with { CalibratedOn = script.Ago(60 + (20 * i)), DueOn = script.Ago(60 + (20 * i)).AddYears(1) }).Select(t => t.Id == Compression.Id ? t with { CalibratedOn = script.Ago(385), DueOn = script.Ago(20) } : t),
        ]);
        Car(script, "tern-2800", "Larkfield Tern 2800", "Mrs J. Teal", (1971, "DEMO 28"), (documents.Tern2800, "as described at her first visit"));
        Car(script, "osprey-v8", "Larkfield Osprey V8", "Mr P. Quill", (1968, "DEMO 8"), (documents.OspreyV8, "as fitted on arrival"));
        Car(script, "gannet-1500", "Samphire Gannet 1500", "Miss L. Stow", (1974, "DEMO 15"), (documents.Gannet1500, "as fitted on arrival"));
        Car(script, "marram-six", "Marram Six Tourer", "Mr H. Ashdown", (1958, "DEMO 6"), (Renamed(documents.Tern2800, "Larkfield Tern 2800", "Marram Six Tourer"), "taken for like another six until measured"));
        Car(script, "tern-2400", "Larkfield Tern 2400", "Dr E. Vane", (1969, "DEMO 24"), (Renamed(documents.Tern2800, "Larkfield Tern 2800", "Larkfield Tern 2400"), "taken for like the 2800 until measured"));
        Car(script, "dunlin", "Brackwater Dunlin", "Mr S. Lark", (1963, "DEMO 63"), ("", ""));
    }

    private static House House { get; } = new()
    {
        Id = Visits.House.TheOne,
        Name = "Saltmarsh Motor House",
        Address = "The Old Net Loft\nStaithe Lane\nSaltmarsh",
        Telephone = "01632 960128",
        Country = "GB",
        Guarantee = "Invented for the demonstration: workmanship for 12 months or 6,000 miles.",
        Privacy = "Invented for the demonstration: photographs and notes are kept ten years with the car's record and shown to nobody else.",
        Demonstration = true,
    };

    private static Instrument Tool(string key, string name, string number, string goodTo, string note) =>
        new() { Id = Named.Of<Instrument>(key), Name = name, SerialNumber = number, GoodTo = goodTo, Note = note };

    private static void Car(Script script, string slug, string name, string owner, (int Year, string Mark) built, (string Document, string Reason) description)
    {
        var person = new Owner { Id = Named.Of<Owner>(slug), Name = owner, Telephone = "01632 960144", Email = $"{slug}@example.org", Note = "Invented for the demonstration." };
        var car = new CustomerCar
        {
            Id = Named.Of<CustomerCar>(slug),
            Slug = $"{Cars.CarId.FromName(name)}",
            Name = name,
            Registration = built.Mark,
            ChassisNumber = $"INVENTED {slug.ToUpperInvariant()}",
            Year = built.Year,
            Owner = person.Id,
            Note = "Invented for the demonstration.",
        };
        List<RecordItem> items = [person, car];
        if (description.Document.Length > 0)
        {
            items.Add(new CarDescription { Id = Named.Of<CarDescription>(slug), Car = car.Id, Since = script.Ago(1200), Document = description.Document, Reason = description.Reason });
        }

        script.Do($"{name} entered", null, Hale.Id, items);
    }

    private static string Renamed(string document, string from, string to) => document.Replace($"\"{from}\"", $"\"{to}\"", StringComparison.Ordinal);
}
