using System.Text;
using System.Text.Json;
using Tickover.Records.Keeping;
using Tickover.Records.Model;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Carrying;

/// <summary>Reads the items and acts of an export, and makes sure that they are such as a record keeps.</summary>
/// <param name="intake">The export.</param>
internal sealed class CargoParser(ZipIntake intake)
{
    /// <summary>Reads everything but the pictures.</summary>
    /// <exception cref="RecordTroubleException">Something in it is not understood or against a rule.</exception>
    public async Task<Cargo> ReadAsync(CancellationToken cancellation)
    {
        var items = new Dictionary<Type, IReadOnlyList<RecordItem>>();
        foreach (var kind in RecordKinds.All)
        {
            items[kind] = await ItemsAsync(kind, cancellation);
        }

        var cargo = new Cargo(items, await ActsAsync(cancellation));
        MustAgree(cargo);
        return cargo;
    }

    private async Task<IReadOnlyList<RecordItem>> ItemsAsync(Type kind, CancellationToken cancellation)
    {
        var name = Form.Items(kind);
        using var document = Parse(name, await intake.ReadAsync(name, cancellation));
        var items = new List<RecordItem>();
        foreach (var element in document.RootElement.EnumerateArray())
        {
            var item = Item(kind.Name, element, name);
            if (ItemRules.Complaint(item) is { } complaint)
            {
                throw intake.Trouble($"in \"{name}\": {complaint}");
            }

            items.Add(item);
        }

        return items;
    }

    private async Task<IReadOnlyList<CarriedAct>> ActsAsync(CancellationToken cancellation)
    {
        using var document = Parse(Form.Journal, await intake.ReadAsync(Form.Journal, cancellation));
        var acts = new List<CarriedAct>();
        foreach (var element in document.RootElement.EnumerateArray())
        {
            var act = Act(element);
            if (act.Number <= (acts.Count == 0 ? 0 : acts[^1].Number) || act.Key == Guid.Empty || !Enum.TryParse<ActKind>(act.Kind, out var kind) || !Enum.IsDefined(kind))
            {
                throw intake.Trouble($"act {act.Number} of its journal is not understood");
            }

            foreach (var change in act.Changes)
            {
                _ = Item(change.Kind, change.After, Form.Journal);
                _ = change.Before is { } before ? Item(change.Kind, before, Form.Journal) : null;
            }

            acts.Add(act);
        }

        return acts;
    }

    private JsonDocument Parse(string name, byte[] bytes)
    {
        try
        {
            // Reading as text first refuses what is no UTF-8.
            var document = JsonDocument.Parse(new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes));
            return document.RootElement.ValueKind == JsonValueKind.Array ? document : throw new JsonException("No list.");
        }
        catch (Exception fault) when (fault is JsonException or ArgumentException)
        {
            throw intake.Trouble($"\"{name}\" is no list in JSON", fault);
        }
    }

    private CarriedAct Act(JsonElement element)
    {
        try
        {
            var act = element.Deserialize<CarriedAct>(RecordKinds.Json) ?? throw new JsonException("Empty.");
            return act.Words is null || act.Device is null || act.Changes?.Any(c => c is null) != false ? throw new JsonException("Incomplete.") : act;
        }
        catch (JsonException fault)
        {
            throw intake.Trouble("its journal holds an act that is not understood", fault);
        }
    }

    private RecordItem Item(string kind, JsonElement element, string where)
    {
        try
        {
            // Without a number of its own it would get a new one at each reading.
            return element.ValueKind == JsonValueKind.Object && element.TryGetProperty("id", out _)
                ? RecordKinds.Read(kind, element.GetRawText())
                : throw new JsonException("No id.");
        }
        catch (JsonException fault)
        {
            throw intake.Trouble($"\"{where}\" holds a {kind} that is not understood", fault);
        }
    }

    private void MustAgree(Cargo cargo)
    {
        var acts = cargo.Acts.Select(a => a.Number).ToHashSet();
        if (cargo.All.FirstOrDefault(i => !acts.Contains(i.Kept) || !acts.Contains(i.Changed) || i.Version < 1) is { } lost)
        {
            throw intake.Trouble($"the {RecordKinds.NameOf(lost)} {lost.Key:N} was kept by an act that its journal does not hold");
        }

        if (cargo.All.GroupBy(i => i.Key).FirstOrDefault(g => g.Skip(1).Any()) is { } twice)
        {
            throw intake.Trouble($"the number {twice.Key:N} stands for two things");
        }

        if (cargo.Acts.DistinctBy(a => a.Key).Count() != cargo.Acts.Count)
        {
            throw intake.Trouble("its journal holds an act twice");
        }
    }
}
