namespace Byrelaw.Judging.Lists;

/// <summary>The days a list is judged on, and the span its timelines cover: from the earlier of the known day
/// and the programme's first date (or the judging day itself) to a year after the judging days.</summary>
internal readonly record struct JudgingDays(int First, int Last, int SpanFirst, int SpanLast)
{
    /// <summary>How many days are judged in a row.</summary>
    public int Length => Last - First + 1;

    /// <summary>The last day of the later stretch that begins on a day: the last judging day for one that begins on a judging day, else as many days
    /// in a row as are judged.</summary>
    public int EndOfStretch(int from) => from <= Last ? Last : from + Last - First;

    public static JudgingDays Of(Choice choice, Programme programme, int knownDay)
    {
        var first = Day.Number(choice.JudgedFrom);
        var spanFirst = Math.Min(first, knownDay);
        foreach (var date in programme.Dates)
        {
            spanFirst = Math.Min(spanFirst, Day.Number(date.Date));
        }

        var year = new TimeLength(1, TimeUnit.Years);
        return new JudgingDays(first, Day.Number(choice.JudgedTo), spanFirst, Day.Number(year.After(choice.JudgedTo)));
    }

    /// <summary>The choice with another judging day.</summary>
    public static Choice On(Choice choice, LocalDate? on) =>
        on is { } day ? choice with { JudgedFrom = day, JudgedTo = day } : choice;
}
