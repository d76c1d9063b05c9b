using System.Text;
using System.Text.Json;
using Tickover.Physics.Air;
using Tickover.Physics.Sending;
using Tickover.Workshop.Gauges;

namespace Tickover.Web.Gauges;

/// <summary>The film as numbers for the browser: everything already worked out, in the picture's own units.</summary>
public static class GaugeFrames
{
    /// <summary>Writes them.</summary>
    /// <param name="film">The drive.</param>
    /// <returns>JSON; one list for each thing that moves.</returns>
    public static string Json(GaugeFilm film)
    {
        ArgumentNullException.ThrowIfNull(film);
        var scene = new GaugeScene(film);
        var m = film.Moments;
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            json.WriteNumber("step", Math.Round(scene.Stride * m.EverySeconds, 4));
            Texts(json, scene, "leftFuel", i => scene.Fuel(TankSide.Left, i));
            Texts(json, scene, "rightFuel", i => scene.Fuel(TankSide.Right, i));
            Numbers(json, scene, "float", i => scene.Float(i).Y);
            Numbers(json, scene, "needle", i => GaugeScene.Turn(film.Pointer[i]));
            Numbers(json, scene, "truthTurn", i => GaugeScene.Turn(film.Truth[i] / scene.Capacity));
            Numbers(json, scene, "truth", i => film.Truth[i]);
            Numbers(json, scene, "shown", i => film.Needle[i]);
            Numbers(json, scene, "estimate", i => film.Estimate[i]);
            Numbers(json, scene, "band", i => film.HalfBand[i]);
            Numbers(json, scene, "left", i => 1000 * m.LeftVolumes[i]);
            Numbers(json, scene, "right", i => 1000 * m.RightVolumes[i]);
            Numbers(json, scene, "flow", i => 60000 * m.PipeFlows[i]);
            Numbers(json, scene, "side", i => m.Left[i] / AirConstants.StandardGravityMetresPerSecondSquared);
            Numbers(json, scene, "truthUp", i => scene.Up(film.Truth[i]));
            Numbers(json, scene, "shownUp", i => scene.Up(film.Needle[i]));
            Numbers(json, scene, "lamp", i => m.Lamps[i] ? 1 : 0);
            Numbers(json, scene, "covered", i => m.Covered[i] ? 1 : 0);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Numbers(Utf8JsonWriter json, GaugeScene scene, string name, Func<int, double> value)
    {
        json.WriteStartArray(name);
        for (var f = 0; f < scene.Frames; f++)
        {
            json.WriteNumberValue(Math.Round(value(f * scene.Stride), 2));
        }

        json.WriteEndArray();
    }

    private static void Texts(Utf8JsonWriter json, GaugeScene scene, string name, Func<int, string> value)
    {
        json.WriteStartArray(name);
        for (var f = 0; f < scene.Frames; f++)
        {
            json.WriteStringValue(value(f * scene.Stride));
        }

        json.WriteEndArray();
    }
}
