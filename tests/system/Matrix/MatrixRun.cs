using NanoDustSwitch.Detection;
using NanoDustSwitch.Simulator.Board;
using NanoDustSwitch.Simulator.Days;
using NanoDustSwitch.Simulator.Shop;

namespace NanoDustSwitch.SystemTests.Matrix;

/// <summary>
/// Plays a case of the load matrix through the whole firmware, and compares the switch with the tool's own switch.
/// </summary>
internal sealed class MatrixRun
{
    // Long enough for the board to come up, to take the settings and to learn the line.
    private const double WarmUp = 5;

    // Three cycles in the fast lane, a cycle in hand; half a second in the slow one.
    private const double MostToFind = 4;
    private const double MostToRelease = 4;
    private const double SlowSeconds = 0.5;

    private readonly MatrixCase _case;
    private readonly List<Entry> _timeline = [];
    private readonly VirtualShop _shop;
    private readonly Rig _rig;
    private readonly Person _person;
    private string _complaint = "";
    private double _found;
    private double _released = double.NegativeInfinity;
    private bool _wasOn;
    private bool _isFound;
    private bool _hasCome;
    private bool _hasGone;
    private bool _isReleased = true;
    private bool _wasCommanded;
    private long _changed;

    private MatrixRun(MatrixCase of, double[]? course)
    {
        _case = of;
        Day day = of.Day(course, WarmUp);
        _shop = ShopBuilder.Build(day, of.Seed);
        _person = new Person(day, of.Seed, _shop, _timeline);
        _rig = new Rig(
            new PcBoard(new ShopLine(_shop, _person), of.Pace.Clock(of.Seed), FlashImage.Blank(), of.Pace.Time(of.Seed)));
    }

    /// <summary>Plays it.</summary>
    /// <param name="of">The case.</param>
    /// <param name="course">Course of the recorded noise, or null.</param>
    /// <returns>What came of it.</returns>
    public static MatrixOutcome Play(MatrixCase of, double[]? course) => new MatrixRun(of, course).Play();

    private MatrixOutcome Play()
    {
        foreach (string line in _case.Settings)
        {
            string answer = _rig.Ask(line);
            if (!answer.Contains("saved", StringComparison.Ordinal))
            {
                Complain($"the switch does not take '{line}'");
            }
        }

        _rig.RunUntil((long)((WarmUp + 0.2) * 1e6));
        long end = (long)((WarmUp + 1 + MatrixCase.FirstRun + MatrixCase.Pause + 1 + 1.5 + 1 + (2 * _case.Brake)) * 1e6);
        while (_rig.Board.ShopTime < end)
        {
            _rig.Step();
            Look(_rig.Board.ShopTime, _rig.Switch.Core);
        }

        if (!_isReleased)
        {
            Complain("never released");
        }

        return new MatrixOutcome(_case, _found, _released, _complaint);
    }

    private void Look(long now, DetectionCore core)
    {
        bool isOn = _shop.Wiring.Tools[0].IsSwitchedOn;
        if (isOn != _wasOn)
        {
            Change(isOn);
        }

        if ((_case.Tool.ComesLater || _hasGone) && isOn && !_hasCome)
        {
            _hasCome = _shop.ToolLine.Rms >= _case.Tool.HasCome;
            _hasGone = !_hasCome;
            _changed = now;
            return;
        }

        _wasCommanded = _wasCommanded || core.IsRelayClosed;
        double sinceCycles = (now - _changed) * 1e-6 * _case.Hertz;
        if (isOn)
        {
            if (core.IsToolRunning && !_isFound)
            {
                _isFound = true;
                _found = Math.Max(_found, sinceCycles);
                if (sinceCycles > (_case.Tool.IsSmall ? SlowSeconds * _case.Hertz : MostToFind))
                {
                    Complain($"found after {sinceCycles:0.00} cycles");
                }
            }
            else if (!core.IsToolRunning && _isFound)
            {
                if (!_wasCommanded
                    || _shop.ToolLine.Rms < (_case.Tool.ComesLater ? _case.Tool.HasCome : _case.Tool.StopBelow))
                {
                    // While its start is waited for a tool is on trial: what is let go then has not stopped the vacuum.
                    // The first stage was a surge of its own; or the mains has sagged, and a rectifier draws nothing until its
                    // capacitor has come down to what is left of the mains.
                    _isFound = false;
                    _hasCome = false;
                    _hasGone = true;
                    return;
                }

                Complain($"dropped while it runs, {sinceCycles / _case.Hertz:0.000} s after it was switched on");
                _isFound = false;
            }
        }
        else if (core.IsToolRunning && _isReleased)
        {
            Complain($"seen while it is off, at {now * 1e-6:0.000} s");
        }
        else if (!core.IsToolRunning && !_isReleased)
        {
            _isReleased = true;
            double late = sinceCycles - (_case.Brake * _case.Hertz);
            _released = Math.Max(_released, late);
            if (late > (_case.Tool.IsSmall ? SlowSeconds * _case.Hertz : MostToRelease))
            {
                Complain($"released {late:0.00} cycles after the end of its current");
            }
        }
    }

    private void Change(bool isOn)
    {
        // The person's own note of it is exact to the microsecond; a look comes up to a bucket later.
        _changed = _timeline.Last(entry => entry.Text.EndsWith(" the tool", StringComparison.Ordinal)).Time;
        _wasOn = isOn;
        if (isOn)
        {
            if (!_isReleased)
            {
                Complain("not released before it was switched on again");
            }

            _isFound = false;
            _hasCome = false;
            _hasGone = false;
            return;
        }

        _isReleased = !_isFound;
        if (!_isFound)
        {
            Complain("never found");
        }

        if (!_wasCommanded)
        {
            Complain("found, but the vacuum was not started");
        }
    }

    // The first complaint says what matters.
    private void Complain(string text) => _complaint = _complaint.Length == 0 ? $"{_case}: {text}" : _complaint;
}
