namespace Byrelaw.Reporting.Log;

/// <summary>Follows the chain of hashes through a log and says where it is broken.</summary>
internal sealed class LogChain
{
    private readonly List<Diagnostic> _found = [];
    private readonly Dictionary<int, LogLine> _genuine = [];
    private readonly LogProblems _problems;
    private readonly List<LogLine> _waiting = [];
    private int _last;

    private LogChain(IEnumerable<LogLine> lines, LogProblems problems)
    {
        _problems = problems;
        foreach (var line in lines.Where(line => line.Entry is not null))
        {
            _genuine.TryAdd(line.Entry!.Number, line);
        }
    }

    /// <summary>All that is wrong, in the order of the file.</summary>
    public static ImmutableArray<Diagnostic> Check(ImmutableArray<LogLine> lines, LogProblems problems)
    {
        var chain = new LogChain(lines, problems);
        foreach (var line in lines)
        {
            chain.Follow(line);
        }

        chain.End();
        return [.. chain._found.OrderBy(problem => problem.Line)];
    }

    private void Follow(LogLine line)
    {
        if (line.Entry is not { Number: var number })
        {
            _waiting.Add(line);
            return;
        }

        var after = _last;
        Settle(line, number > after ? number - after - 1 - _genuine.Keys.Count(other => other > after && other < number) : 0);
        if (number > after)
        {
            _last = number;
        }
        else
        {
            _found.Add(ReferenceEquals(_genuine[number], line) ? _problems.Moved(line, after) : _problems.Twice(line, _genuine[number]));
        }

        Hold(line, number);
    }

    /// <summary>Whether the line above says what it said when this one was written.</summary>
    private void Hold(LogLine line, int number)
    {
        if (number == 1 && line.Entry!.Before is not null)
        {
            _found.Add(_problems.Missing(line, "another first line is"));
        }
        else if (_genuine.TryGetValue(number - 1, out var before) && before.Hash != line.Entry!.Before)
        {
            _found.Add(_problems.Replaced(before, line));
        }
    }

    /// <summary>Says what the lines are that came before this one and are none, and how many are not there at all.</summary>
    /// <param name="line">A line that is whole.</param>
    /// <param name="gap">How many numbers before it are nowhere.</param>
    private void Settle(LogLine line, int gap)
    {
        var missing = gap - _waiting.Count(waiting => waiting.HasHash);
        foreach (var waiting in _waiting)
        {
            _found.Add(waiting.HasHash ? _problems.Changed(waiting)
                : missing-- > 0 ? _problems.Spoilt(waiting)
                : waiting.MayBeStartOf(_last + 1) ? _problems.Half(waiting)
                : _problems.Foreign(waiting));
        }

        _waiting.Clear();
        if (missing > 0)
        {
            _found.Add(_problems.Missing(line, missing == line.Entry!.Number - _last - 1 ? Named(_last + 1, _last + missing) : Counted(missing)));
        }
    }

    private void End()
    {
        foreach (var line in _waiting)
        {
            _found.Add(line.HasHash ? _problems.Changed(line)
                : !line.MayBeStartOf(_last + 1) ? _problems.Foreign(line)
                : line.IsEnded ? _problems.Spoilt(line)
                : _problems.Half(line));
        }
    }

    private static string Named(int from, int to) => string.Create(
        CultureInfo.InvariantCulture, $"{(from == to ? $"number {from} is" : to == from + 1 ? $"numbers {from} and {to} are" : $"numbers {from} to {to} are")}");

    private static string Counted(int missing) => missing == 1 ? "another line is" : string.Create(CultureInfo.InvariantCulture, $"{missing} other lines are");
}
