using System.Runtime.InteropServices;

namespace NanoDustSwitch.Simulator.Terminal;

/// <summary>Ctrl-C, a hang-up or a request to end: noted, so that a session ends as it should and not in the middle.</summary>
internal sealed class EndSignals : IDisposable
{
    private readonly List<PosixSignalRegistration> _registrations = [];
    private volatile bool _came;

    /// <summary>Initializes a new instance of the <see cref="EndSignals"/> class.</summary>
    /// <param name="isStopKeyOff">Whether Ctrl-Z does nothing: for a session that must not leave its screen behind.</param>
    public EndSignals(bool isStopKeyOff = false)
    {
        foreach (PosixSignal signal in (PosixSignal[])[PosixSignal.SIGINT, PosixSignal.SIGTERM, PosixSignal.SIGHUP])
        {
            _registrations.Add(PosixSignalRegistration.Create(signal, context =>
            {
                context.Cancel = true;
                _came = true;
            }));
        }

        if (isStopKeyOff && !OperatingSystem.IsWindows())
        {
            _registrations.Add(PosixSignalRegistration.Create(PosixSignal.SIGTSTP, context => context.Cancel = true));
        }
    }

    /// <summary>Gets a value indicating whether one came.</summary>
    public bool HaveCome => _came;

    /// <inheritdoc/>
    public void Dispose() => _registrations.ForEach(registration => registration.Dispose());
}
