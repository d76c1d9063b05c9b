using Tickover.Workshop.Visits;

namespace Tickover.Records.Carrying;

/// <summary>Explains an export to a person who finds it without the program.</summary>
internal static class ReadMeText
{
    /// <summary>The text.</summary>
    /// <param name="car">The car that alone is in it; null for everything.</param>
    /// <param name="currency">The money that prices are in.</param>
    public static string Of(CustomerCar? car, string currency) =>
        $"""
        This is an export of a workshop's record, written by Tickover.
        It holds {(car is null ? "everything the record held" : $"one car, {car.Name}, with its visits")}.

        tables/     One table for each kind of thing, for a spreadsheet: comma-separated, RFC 4180, UTF-8.
                    What was typed stands as typed; "si" is the same value in the unit of "siUnit" beside it.
                    Prices are in {currency}. A text that begins with = + - @ or a tab has an apostrophe put
                    before it, so that no spreadsheet takes it for a formula. The JSON has it without.
        items/      The same as JSON, one thing a line, exactly as the record keeps it.
        journal.json  Every act in its order: who did what, when, and what each thing was before and after.
        pictures/   The photographs as JPEG, named by their number in items/Photograph.json.
        schemas/    JSON Schemas (draft 2020-12) of the above.
        manifest.json  What is in here, with the size and the SHA-256 of each file.

        Things that were taken off are marked "removed" and still here. PINs are not in here at all.
        To read it into a record again: tickover import FILE.zip --data FOLDER

        It names people, telephone numbers and addresses. Keep it as carefully as the record itself.

        """;
}
