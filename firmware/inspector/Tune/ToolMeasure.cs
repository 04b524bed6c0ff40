using NanoDustSwitch.Firmware;
using NanoDustSwitch.Inspector.Replay;

namespace NanoDustSwitch.Inspector.Tune;

/// <summary>
/// What a recording shows of a tool, measured as <c>teach</c> does it: the least tenth of a second after the start surge.
/// </summary>
internal sealed class ToolMeasure
{
    private readonly int _quiet;
    private readonly SwingMeter _afterSurge = new();
    private readonly SwingMeter _whole = new();
    private bool _isRunning;
    private double _since;

    private ToolMeasure(int quiet)
    {
        _quiet = quiet;
        _whole.ExpectToolAbove(quiet);
        Wait();
    }

    /// <summary>Gets what the tool shows at least, in mA; 0 where none was seen.</summary>
    public int Milliamperes { get; private set; }

    /// <summary>Measures a tool.</summary>
    /// <param name="source">Its recording.</param>
    /// <param name="quiet">What the line shows at most without it, in mA.</param>
    /// <returns>The measure.</returns>
    public static ToolMeasure Of(ReplaySource source, int quiet)
    {
        ToolMeasure measure = new(quiet);
        source.Run(
            source.Settings,
            (now, core) =>
            {
                if (core.IsWindowValid && now > 0 && now <= source.Seconds)
                {
                    measure.Accept(now, core.SwingMilliamperes);
                }
            });
        measure.Stop();
        return measure;
    }

    private void Accept(double now, int swing)
    {
        _whole.Accept(swing);
        if (!_isRunning)
        {
            if (!_whole.ShowsTool)
            {
                return;
            }

            _isRunning = true;
            _since = now;
            _whole.Reset();
            _afterSurge.Reset();
            return;
        }

        if (now - _since > Teacher.SurgeMilliseconds / 1000.0)
        {
            _afterSurge.Accept(swing);
        }

        _whole.Low = SwingMeter.StopLevel(_quiet, _afterSurge.Greatest > 0 ? _afterSurge.Greatest : _quiet);
        if (_whole.ShowsStop)
        {
            Stop();
        }
    }

    private void Stop()
    {
        if (_isRunning)
        {
            // A recording too short to have anything after the surge is taken whole.
            SwingMeter meter = _afterSurge.HasLeastMean ? _afterSurge : _whole;
            int shown = meter.LeastMean == int.MaxValue ? 0 : meter.LeastMean;
            Milliamperes = Milliamperes == 0 || (shown > 0 && shown < Milliamperes) ? shown : Milliamperes;
        }

        Wait();
    }

    private void Wait()
    {
        _isRunning = false;
        _whole.Reset();
        _afterSurge.Reset();
    }
}
