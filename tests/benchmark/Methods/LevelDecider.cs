namespace NanoDustSwitch.Benchmarks.Methods;

/// <summary>A method with two levels.</summary>
/// <param name="method">The method.</param>
/// <param name="start">Level at or above which a tool runs, A.</param>
/// <param name="stop">Level below which it has stopped, A.</param>
internal sealed class LevelDecider(Method method, double start, double stop) : IDecider
{
    private bool _isRunning;
    private int _against;

    /// <inheritdoc/>
    public bool Accept(int[] readings, int count)
    {
        if (method.Accept(readings, count))
        {
            _against = (_isRunning ? method.Answer < stop : method.Answer >= start) ? _against + 1 : 0;
            if (_against >= (_isRunning ? method.ConfirmStop : method.Confirm))
            {
                _isRunning = !_isRunning;
                _against = 0;
            }
        }

        return _isRunning;
    }
}
