using System.Runtime.InteropServices;

namespace NanoDustSwitch.Benchmarks.Starts;

/// <summary>What came of a start.</summary>
/// <param name="Above">True rms of the last cycle at the command, as a multiple of the settled one.</param>
/// <param name="Delay">From the onset to the command, s.</param>
/// <param name="AfterNear">
/// From when the current had come within a tenth of its settled value to the command, s; negative where the command came before.
/// </param>
/// <param name="IsStalled">Whether the motor did not get going at all: its rotor is held, and it settles at nothing.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Started(double Above, double Delay, double AfterNear, bool IsStalled);
