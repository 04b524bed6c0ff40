using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;

namespace NanoDustSwitch.Benchmarks;

/// <summary>How many seconds of shop time one second of this PC's time gives; every benchmark works through one second.</summary>
internal sealed class TimesRealTimeColumn : IColumn
{
    private const double NanosecondsASecond = 1e9;

    /// <inheritdoc/>
    public string Id => nameof(TimesRealTimeColumn);

    /// <inheritdoc/>
    public string ColumnName => "x real time";

    /// <inheritdoc/>
    public bool AlwaysShow => true;

    /// <inheritdoc/>
    public ColumnCategory Category => ColumnCategory.Custom;

    /// <inheritdoc/>
    public int PriorityInCategory => 0;

    /// <inheritdoc/>
    public bool IsNumeric => true;

    /// <inheritdoc/>
    public UnitType UnitType => UnitType.Dimensionless;

    /// <inheritdoc/>
    public string Legend => "seconds of shop time in a second of this PC's time";

    /// <inheritdoc/>
    public string GetValue(Summary summary, BenchmarkCase benchmarkCase) =>
        summary[benchmarkCase]?.ResultStatistics is { } statistics ? $"{NanosecondsASecond / statistics.Mean:#,0}" : "-";

    /// <inheritdoc/>
    public string GetValue(Summary summary, BenchmarkCase benchmarkCase, SummaryStyle style) => GetValue(summary, benchmarkCase);

    /// <inheritdoc/>
    public bool IsAvailable(Summary summary) => true;

    /// <inheritdoc/>
    public bool IsDefault(Summary summary, BenchmarkCase benchmarkCase) => false;
}
