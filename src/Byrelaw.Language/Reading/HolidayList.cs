namespace Byrelaw.Language.Reading;

/// <summary>Reads a list of public holidays: on each line an ISO date and a name; empty lines and lines that start with <c>#</c> say nothing.</summary>
internal static class HolidayList
{
    /// <summary>Every line that can be read; adds what is wrong with the others.</summary>
    public static ImmutableArray<Holiday> Read(string shown, byte[] bytes, List<Diagnostic> problems)
    {
        var source = new SourceFile(shown, Encoding.UTF8.GetString(bytes));
        var holidays = ImmutableArray.CreateBuilder<Holiday>();
        var start = 0;
        foreach (var written in source.Text.Split('\n'))
        {
            var line = written.Trim().TrimStart('\uFEFF');
            if (line.Length > 0 && line[0] != '#')
            {
                var space = line.AsSpan().IndexOfAny(' ', '\t');
                if (space > 0 && LocalDatePattern.Iso.Parse(line[..space]) is { Success: true } day)
                {
                    holidays.Add(new Holiday(day.Value, line[space..].Trim()));
                }
                else
                {
                    problems.Add(VisitProblems.HolidayLine(new SourceSpan(source, start, Math.Max(1, written.TrimEnd('\r').Length))));
                }
            }

            start += written.Length + 1;
        }

        return holidays.ToImmutable();
    }
}
