namespace NanoDustSwitch.Simulator.Tables;

/// <summary>What a whole column of numbers looks like, found out row by row.</summary>
internal sealed class ColumnSurvey
{
    // Below that no converter rests that reads both halves of a current.
    private const double LeastCounts = 100;
    private const double MostCounts = 65_535;
    private const int MostFalls = 20;

    private double _sum;
    private bool _countsRows = true;
    private bool _isWhole = true;

    /// <summary>Gets the rows.</summary>
    public int Count { get; private set; }

    /// <summary>Gets the first number.</summary>
    public double First { get; private set; }

    /// <summary>Gets the last number.</summary>
    public double Last { get; private set; }

    /// <summary>Gets how often a number is less than the one before.</summary>
    public int Falls { get; private set; }

    /// <summary>Gets the line of the first number that is less than the one before.</summary>
    public int FallLine { get; private set; }

    /// <summary>Gets the number before that.</summary>
    public double FallFrom { get; private set; }

    /// <summary>Gets how often a number is the same as the one before.</summary>
    public int Repeats { get; private set; }

    /// <summary>Gets the largest step up.</summary>
    public double LongestStep { get; private set; }

    /// <summary>Gets the smallest step up.</summary>
    public double ShortestStep { get; private set; } = double.PositiveInfinity;

    /// <summary>Gets the first line whose cell is no number; 0 where all are.</summary>
    public int BadLine { get; private set; }

    /// <summary>Gets a value indicating whether the numbers can be times: they hardly ever fall, and end later than they begin.
    /// </summary>
    public bool LooksLikeTimes => Count > 1 && Last > First && Falls * MostFalls <= Count;

    /// <summary>Gets a value indicating whether the numbers are 0, 1, 2, … or 1, 2, 3, ….</summary>
    public bool CountsRows => Count > 1 && _countsRows && First is 0 or 1;

    /// <summary>Gets a value indicating whether the numbers look like counts of a converter.</summary>
    public bool LookLikeCounts => _isWhole && _sum / Count >= LeastCounts;

    /// <summary>Takes the next number.</summary>
    /// <param name="value">The number.</param>
    /// <param name="line">The line that it stands in.</param>
    public void Add(double value, int line)
    {
        if (Count == 0)
        {
            First = value;
        }
        else
        {
            double step = value - Last;
            _countsRows &= step == 1;
            if (step < 0 && Falls++ == 0)
            {
                (FallLine, FallFrom) = (line, Last);
            }

            Repeats += step == 0 ? 1 : 0;
            LongestStep = Math.Max(LongestStep, step);
            ShortestStep = step > 0 ? Math.Min(ShortestStep, step) : ShortestStep;
        }

        Last = value;
        _sum += value;
        _isWhole &= value == Math.Floor(value) && value is >= 0 and <= MostCounts;
        Count++;
    }

    /// <summary>Takes a cell that is no number, or missing.</summary>
    /// <param name="line">The line.</param>
    public void AddBad(int line) => BadLine = BadLine == 0 ? line : BadLine;
}
