namespace Byrelaw.Language.Binding.RecordSources;

/// <summary>Binds <c>in umol/L</c> behind a column or a text of it.</summary>
internal static class UnitBinding
{
    /// <summary>The unit as written; null for none. One that nobody knows is a problem.</summary>
    public static string? Unit(this Context context, InUnitSyntax? unit)
    {
        if (unit is not null && UnitTable.Find(unit.Unit.Text) is null)
        {
            context.Problems.Add(AmountProblems.UnknownUnit(unit.Unit.Span));
        }

        return unit?.Unit.Text;
    }
}
