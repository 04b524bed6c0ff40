using System.Numerics;

namespace NanoDustSwitch.Simulator.Shop;

/// <summary>
/// The equivalent circuit of a motor with a main and a start winding at right angles, by the two revolving fields (textbooks).
/// The parts' ratios are those of a textbook's small motor, from memory; their size follows from what is asked.
/// </summary>
/// <param name="scale">Impedance with the rotor held over that of the ratios below.</param>
/// <param name="magnetising">Reactance of the iron.</param>
/// <param name="hasCapacitor">Whether a capacitor is in series with the start winding.</param>
internal sealed class InductionCircuit(double scale, double magnetising, bool hasCapacitor)
{
    private const double StatorOhms = 0.35;
    private const double RotorOhms = 0.30;
    private const double StatorReactance = 0.40;
    private const double RotorReactance = 0.36;

    // The start winding: more turns, thinner wire.
    private const double Turns = 1.25;
    private const double StartOhms = 3.0;
    private const double StartReactance = 0.5;
    private const double CapacitorOhms = 1.3;
    private const double CapacitorReactance = -2.6;

    /// <summary>Makes the circuit of a motor.</summary>
    /// <param name="startMultiple">Current of both windings with the rotor held, per unit of rated.</param>
    /// <param name="idlePart">Current of the main winding without load, per unit.</param>
    /// <param name="hasCapacitor">Whether a capacitor is in series with the start winding.</param>
    /// <returns>The circuit.</returns>
    public static InductionCircuit Fit(double startMultiple, double idlePart, bool hasCapacitor)
    {
        double scale = 1.0 / startMultiple;
        double magnetising = 2.0 / idlePart;
        for (int i = 0; i < 20; i++)
        {
            InductionCircuit circuit = new(scale, magnetising, hasCapacitor);
            scale *= circuit.At(0.0, true).Amperes / startMultiple;
            magnetising *= circuit.At(0.995, false).Amperes / idlePart;
        }

        return new InductionCircuit(scale, magnetising, hasCapacitor);
    }

    /// <summary>Works out currents and torque.</summary>
    /// <param name="speed">Speed, 1 is synchronous.</param>
    /// <param name="withStart">Whether the start winding is in.</param>
    /// <returns>The line's current and the torque.</returns>
    public InductionPoint At(double speed, bool withStart)
    {
        Complex forward = Field(1.0 - speed);
        Complex backward = Field(1.0 + speed);
        Complex main = new Complex(StatorOhms, StatorReactance) * scale;
        if (!withStart)
        {
            Complex alone = 1.0 / (main + forward + backward);
            return Point(alone, MeanSquare(alone) * (forward.Real - backward.Real));
        }

        // Two windings couple through speed alone: with the rotor held the fields are alike and their difference is nothing.
        double square = Turns * Turns;
        Complex start = new Complex(
            square * StatorOhms * (hasCapacitor ? CapacitorOhms : StartOhms),
            square * StatorReactance * (hasCapacitor ? CapacitorReactance : StartReactance)) * scale;
        Complex difference = Complex.ImaginaryOne * Turns * (forward - backward);
        Complex own = main + forward + backward;
        Complex other = start + (square * (forward + backward));
        Complex determinant = (own * other) + (difference * difference);
        Complex mainCurrent = (other + difference) / determinant;
        Complex startCurrent = (own - difference) / determinant;
        double angle = (startCurrent * Complex.Conjugate(mainCurrent)).Imaginary;
        double torque = ((MeanSquare(mainCurrent) + (square * MeanSquare(startCurrent))) * (forward.Real - backward.Real))
            + (2.0 * Turns * angle * (forward.Real + backward.Real));
        return Point(mainCurrent + startCurrent, torque);
    }

    private static double MeanSquare(Complex current) =>
        (current.Real * current.Real) + (current.Imaginary * current.Imaginary);

    private static InductionPoint Point(Complex current, double torque) => new(current.Real, current.Imaginary, torque);

    private Complex Field(double slip)
    {
        Complex iron = new(0.0, magnetising);
        Complex rotor = new Complex(RotorOhms / Math.Max(1e-6, slip), RotorReactance) * scale;
        return 0.5 * iron * rotor / (iron + rotor);
    }
}
