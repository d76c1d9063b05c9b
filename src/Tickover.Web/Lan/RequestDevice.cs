namespace Tickover.Web.Lan;

/// <summary>What a request comes from: this machine, or a tablet that was paired with it.</summary>
/// <param name="Id">Names it to this server; never shown.</param>
/// <param name="Name">What a person calls it. No two devices ever share one, so it also stands in the record as <c>Act.Device</c>.</param>
public sealed record RequestDevice(string Id, string Name)
{
    /// <summary>The machine the server runs on.</summary>
    public static RequestDevice ThisMachine { get; } = new("this-machine", "this machine");
}
