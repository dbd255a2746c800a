namespace Byrelaw.Language.Binding.Plans;

/// <summary>Days as statements of a plan name them.</summary>
internal static class DayBinding
{
    /// <summary>The day meant; null, and a problem, where its name means no date or its length cannot be counted.</summary>
    public static DayReference? Day(this Context context, DayReferenceSyntax syntax)
    {
        if (syntax.Date is { } date)
        {
            return new DayReference(date.Value, null, default, false, syntax.Span);
        }

        if (context.Names.Find(syntax.Name!.Text) is not DateSymbol symbol)
        {
            return context.Fail<DayReference>(context.NotFound(syntax.Name, found => found is DateSymbol, "a date of the programme"));
        }

        var wait = syntax.Wait is null ? new TimeLength(0, TimeUnit.Days) : context.Length(syntax.Wait);
        if (syntax.IsBefore && wait is { Unit: TimeUnit.Months or TimeUnit.Years } back)
        {
            return context.Fail<DayReference>(PlanProblems.BeforeCountsDays(syntax.Wait!.Span, back));
        }

        return wait is { } length ? new DayReference(null, symbol.Name, length, syntax.IsBefore, syntax.Span) : null;
    }
}
