using System.Text.Json;
using Tickover.Records.Model;
using Tickover.Workshop.Visits;

namespace Tickover.Records.Opening;

/// <summary>A note beside the record that says which one belongs to this folder, so that a missing or exchanged one is noticed.</summary>
/// <param name="Record">Number of the record.</param>
/// <param name="Where">The file or database, in words.</param>
/// <param name="BegunAt">When it was begun.</param>
internal sealed record RecordNote(Guid Record, string Where, DateTimeOffset BegunAt)
{
    /// <summary>Folder for what belongs to this server, inside the data folder.</summary>
    public const string Folder = ".tickover";

    private const string Name = "record.json";

    /// <summary>Reads the note.</summary>
    /// <returns>The note, or null where none is there.</returns>
    /// <exception cref="RecordTroubleException">There is one, and it cannot be read.</exception>
    public static RecordNote? Read(RecordPlace place)
    {
        var path = PathOf(place);
        if (!File.Exists(path))
        {
            return null;
        }

        try
        {
            return JsonSerializer.Deserialize<RecordNote>(File.ReadAllText(path), JsonSerializerOptions.Web) ?? throw new JsonException("Empty.");
        }
        catch (JsonException fault)
        {
            throw new RecordTroubleException($"{path} cannot be read. It says which record belongs to this folder; move it away if you know that {place.Words} is the right one.", fault);
        }
    }

    /// <summary>Compares the note with the record, or writes it where there is none.</summary>
    /// <exception cref="RecordTroubleException">The folder belongs to another record.</exception>
    public static void Check(RecordPlace place, RecordNote? note, StampRow stamp)
    {
        if (note is null)
        {
            Write(place, new RecordNote(stamp.Record, place.Words, stamp.BegunAt));
        }
        else if (note.Record != stamp.Record)
        {
            throw new RecordTroubleException(
                $"{place.Words} is another record than the one that belongs to this folder (begun {note.BegunAt:yyyy-MM-dd}, {note.Where}). Put the right one back, or move {PathOf(place)} away if this one is meant.");
        }
    }

    /// <summary>Notes that another record belongs here from now on.</summary>
    public static void Replace(RecordPlace place, StampRow stamp) => Write(place, new RecordNote(stamp.Record, place.Words, stamp.BegunAt));

    private static string PathOf(RecordPlace place) => Path.Combine(place.DataFolder, Folder, Name);

    private static void Write(RecordPlace place, RecordNote note)
    {
        Directory.CreateDirectory(Path.Combine(place.DataFolder, Folder));

        // Written beside and moved, so that a power cut leaves the old note or the new one and never half of one.
        var beside = PathOf(place) + ".new";
        File.WriteAllText(beside, JsonSerializer.Serialize(note, JsonSerializerOptions.Web));
        File.Move(beside, PathOf(place), overwrite: true);
    }
}
