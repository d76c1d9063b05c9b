using System.Runtime.Intrinsics;

namespace Tickover.Physics.Metering;

/// <summary>What holds over one pass of the cycle at one level.</summary>
/// <param name="AirArea">2 ρ A² of corrector and uncovered holes, kg²/(s² Pa).</param>
/// <param name="Column">Weight of the emulsion between holes and lip, Pa.</param>
/// <param name="Foot">Weight of the fuel from the level at rest to the holes, Pa; negative below.</param>
/// <param name="CorrectorShare">Part of the air's pressure drop that falls at the corrector, 1.</param>
internal readonly record struct MainSetting(
    Vector256<double> AirArea, Vector256<double> Column, Vector256<double> Foot, Vector256<double> CorrectorShare);
