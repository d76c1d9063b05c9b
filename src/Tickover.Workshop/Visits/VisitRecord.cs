namespace Tickover.Workshop.Visits;

/// <summary>Everything the record holds of one visit, at one moment. Items taken off are left out, except struck readings.</summary>
public sealed record VisitRecord
{
    /// <summary>The visit.</summary>
    public required Visit Visit { get; init; }

    /// <summary>The car.</summary>
    public required CustomerCar Car { get; init; }

    /// <summary>The workshop with its people and instruments.</summary>
    public required WorkshopRecord Workshop { get; init; }

    /// <summary>The owner at the time; null where none is noted.</summary>
    public Owner? Owner { get; init; }

    /// <summary>The car's descriptions, oldest first.</summary>
    public IReadOnlyList<CarDescription> Descriptions { get; init; } = [];

    /// <summary>Worksheets of the car, of this visit and of those before it, in the order they were kept.</summary>
    public IReadOnlyList<Worksheet> Worksheets { get; init; } = [];

    /// <summary>Numbered parts that are or were on the car.</summary>
    public IReadOnlyList<Component> Components { get; init; } = [];

    /// <summary>How far the stages have got; those not begun may be missing.</summary>
    public IReadOnlyList<StageMark> Stages { get; init; } = [];

    /// <summary>Readings in the order they were kept, the struck ones among them.</summary>
    public IReadOnlyList<Reading> Readings { get; init; } = [];

    /// <summary>Findings in the order they were kept.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>Photographs in the order they were kept.</summary>
    public IReadOnlyList<Photograph> Photographs { get; init; } = [];

    /// <summary>Parts.</summary>
    public IReadOnlyList<PartLine> Parts { get; init; } = [];

    /// <summary>Time spent.</summary>
    public IReadOnlyList<TimeLine> Times { get; init; } = [];

    /// <summary>Questions to the owner.</summary>
    public IReadOnlyList<Approval> Approvals { get; init; } = [];

    /// <summary>What was done, changed, left or advised.</summary>
    public IReadOnlyList<WorkNote> Notes { get; init; } = [];

    /// <summary>Road logs of the visit, come down to points.</summary>
    public IReadOnlyList<RoadRun> Runs { get; init; } = [];

    /// <summary>Sets of jets that were chosen and fitted, in the order they were kept.</summary>
    public IReadOnlyList<JetFitting> Fittings { get; init; } = [];

    /// <summary>What was turned and done while balancing, in the order it was kept.</summary>
    public IReadOnlyList<ScrewTurn> ScrewTurns { get; init; } = [];

    /// <summary>Checks signed and gates overridden, in the order they were kept.</summary>
    public IReadOnlyList<SignOff> SignOffs { get; init; } = [];

    /// <summary>Cautions confirmed.</summary>
    public IReadOnlyList<CautionSeen> Cautions { get; init; } = [];

    /// <summary>Signatures under the account.</summary>
    public IReadOnlyList<Signature> Signatures { get; init; } = [];

    /// <summary>The worksheet of a form that counts: the last one kept.</summary>
    /// <param name="form">What the document's format says.</param>
    /// <returns>The worksheet; null where there is none.</returns>
    public Worksheet? SheetOf(string form) => Worksheets.LastOrDefault(s => string.Equals(s.Form, form, StringComparison.Ordinal));
}
