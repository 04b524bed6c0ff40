using NanoDustSwitch.Simulator.Errors;

namespace NanoDustSwitch.Simulator.Tables;

/// <summary>Which column of a table holds the current, and in what unit.</summary>
/// <param name="Column">The column, from 1.</param>
/// <param name="IsCounts">Whether its numbers are counts of the board's own converter.</param>
/// <param name="Factor">What makes amperes, or counts, of its numbers.</param>
/// <param name="Understood">What was understood, and how a person changes it.</param>
internal sealed record TableValues(int Column, bool IsCounts, double Factor, string Understood)
{
    // Of the clamp in the example, of 100 mV/A.
    private const double AmperesAVolt = 10;

    /// <summary>Finds it.</summary>
    /// <param name="path">The file, for complaints.</param>
    /// <param name="layout">How it is written.</param>
    /// <param name="surveys">What its columns look like.</param>
    /// <param name="timeColumn">The column of times, from 1; 0 where there is none.</param>
    /// <param name="options">What a person says of it.</param>
    /// <returns>The column.</returns>
    public static TableValues Of(
        string path, TableLayout layout, ColumnSurvey?[] surveys, int timeColumn, TableOptions options)
    {
        int[] candidates =
        [
            .. Enumerable.Range(1, surveys.Length).Where(column => column != timeColumn
                && surveys[column - 1] is { Count: > 0 } survey
                && layout.Names[column - 1].Kind is not (ColumnKind.Row or ColumnKind.Time)
                && !survey.CountsRows),
        ];
        int[] currents =
            [.. candidates.Where(column => layout.Names[column - 1].Kind is ColumnKind.Current or ColumnKind.Counts)];
        int column = options.Column ?? (currents.Length > 0 ? currents[0] : candidates.FirstOrDefault());
        if (column == 0)
        {
            throw new UserException($"{path} has a column of times and no other numbers.");
        }

        if (column > surveys.Length || surveys[column - 1] is not { } numbers)
        {
            throw new UserException($"{path} has no numbers in a column {column}; --column names one that has.");
        }

        ColumnName name = layout.Names[column - 1];
        (ColumnName unit, string by) = Unit(path, name, numbers, column, options);
        string others = options.Column is null && (currents.Length > 0 ? currents : candidates).Length > 1
            ? $"the first of {(currents.Length > 0 ? currents : candidates).Length}, --column takes another; "
            : "";
        string scale = options.Scale is { } factor ? $", times {factor:0.######}" : "";
        return new TableValues(
            column,
            unit.Kind == ColumnKind.Counts,
            unit.Factor * (options.Scale ?? 1),
            $"column {column}{(name.Text.Length > 0 ? $" ('{name.Text}')" : "")} in {unit.Unit}{scale}, {others}{by}");
    }

    private static (ColumnName Unit, string By) Unit(
        string path, ColumnName name, ColumnSurvey numbers, int column, TableOptions options)
    {
        if (options.Unit is { } said)
        {
            return (ColumnName.Of(said), "by --unit");
        }

        switch (name.Kind)
        {
            case ColumnKind.Current or ColumnKind.Counts:
                return (name with { Unit = name.Kind == ColumnKind.Counts ? "counts" : name.Unit }, "by its name");
            case ColumnKind.Other:
                throw new UserException(
                    $"Column {column} of {path} is in {name.Unit} by its name, '{name.Text}', and no current; --column names "
                    + "another one, and --unit A says that the name is wrong.");
            case ColumnKind.Voltage when options.Scale is null:
                throw new UserException(
                    $"Column {column} of {path} is a voltage by its name, '{name.Text}'; --scale says how many amperes one of "
                    + $"its numbers is (a clamp of 100 mV/A: {AmperesAVolt * name.Factor:0.####}), or --unit A that they are "
                    + "amperes.");
            default:
                break;
        }

        return options.Scale is not null ? (ColumnName.Of("A"), "by --scale")
            : numbers.LookLikeCounts
                ? (ColumnName.Of("counts"), "as they are whole numbers about one above 100; --unit A changes that")
            : (ColumnName.Of("A"), "as nothing says otherwise; --unit or --scale changes that");
    }
}
