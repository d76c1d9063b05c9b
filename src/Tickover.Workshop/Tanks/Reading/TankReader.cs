using Tickover.Physics.Tanks;
using Tickover.Workshop.Cars;
using Tickover.Workshop.Cars.Reading;
using Tickover.Workshop.Linkages.Reading;
using Tickover.Workshop.Tanks.Parts;

namespace Tickover.Workshop.Tanks.Reading;

/// <summary>Reads a document into tanks, or into everything that is wrong with it.</summary>
internal static class TankReader
{
    private const string Kind = "tank";

    public static TankReading Read(string json, Func<string, byte[]?>? mesh)
    {
        var root = SourceParser.Parse(json, out var syntax, Kind);
        if (root is null)
        {
            return new TankReading(null, [syntax!], []);
        }

        var faults = new Faults(Kind);
        const string Example = $"\"format\": \"{TankForm.Format}\"";
        if (root.Kind != SourceKind.Object)
        {
            faults.WrongKind("document", root, "an object in braces", "{ " + Example + ", … }");
            return new TankReading(null, faults.All, []);
        }

        if (root["format"] is { } format && format is not { Kind: SourceKind.Text, Text: TankForm.Format })
        {
            // A document of another kind would only be called wrong in every line.
            faults.WrongKind("format", format, $"\"{TankForm.Format}\", the one format this version reads", Example);
            return new TankReading(null, faults.All, []);
        }

        var set = Set(json, new ObjectReader(root, string.Empty, TankForm.Root, faults), mesh);
        return new TankReading(faults.All.Count > 0 ? null : set, InOrder(root, faults.All), faults.Warnings);
    }

    private static Fault[] InOrder(SourceNode root, IReadOnlyList<Fault> faults) =>
        [.. faults.OrderBy(f => DocumentPath.Parse(f.Path)?.NearestIn(root).Start ?? 0)];

    private static TankSet? Set(string json, ObjectReader root, Func<string, byte[]?>? mesh)
    {
        if (root["format"] is null)
        {
            root.Faults.Missing("format", "The marker of a tank document", $"\"{TankForm.Format}\"", $"\"format\": \"{TankForm.Format}\"");
        }

        var name = LinkReader.Named(root);
        var tanks = new TankPartReader(root, mesh).Read();
        var capacity = root.Number("capacity", TankLimit.Capacity);
        if (root["tanks"] is null && root["capacity"] is null)
        {
            root.Faults.Missing("tanks", "The tanks", "a list of tanks; for a sender alone at least \"capacity\", in litres", "\"tanks\": [{ \"name\": \"left\", \"box\": [500, 300, 250] }]");
        }

        var gauging = new GaugingReader(root, tanks).Read();
        if (root.Faults.All.Count > 0)
        {
            return null;
        }

        return gauging with
        {
            Name = name!,
            Document = json,
            Tanks = tanks,
            CapacityLitres = tanks.Count > 0 ? tanks.Sum(t => t.CapacityLitres) : capacity ?? 0,
            Stances = Stances(root),
            Joined = tanks.Count > 0 ? tanks.Select(t => t.Shape).Aggregate((a, b) => a.With(b)) : null,
        };
    }

    private static IReadOnlyList<TankStance> Stances(ObjectReader root)
    {
        var read = root.Items("stances", TankForm.Stance, "{ \"name\": \"uphill\", \"noseUp\": 15 }").Select(Stance).ToArray();
        return read.Length > 0 ? read : TankStance.Usual;
    }

    private static TankStance Stance(ObjectReader reader)
    {
        const double Hundred = 100;
        var (forward, left) = (reader.Number("forward", TankLimit.Push), reader.Number("left", TankLimit.Push));
        var tilt = new Tilt(
            (reader.Number("noseUp", TankLimit.Slope) ?? 0) / Hundred + (forward ?? 0),
            (reader.Number("leftUp", TankLimit.Slope) ?? 0) / Hundred + (left ?? 0));
        return new TankStance(LinkReader.Named(reader) ?? string.Empty, tilt, forward is not null || left is not null);
    }
}
