namespace Byrelaw.Workshop.Tidying.Printing;

/// <summary>
/// How a statement is set. Most are set word by word, as the grammar took the words, so a new kind of line needs
/// nothing here; what has several spellings, or lines up with its neighbours, has a printer of its own.
/// </summary>
internal static class StatementPrinter
{
    // As wide as the longer of the two, so that what they say starts in one column.
    private const string Because = "because";
    private const string Source = "source ";

    /// <summary>How it is set.</summary>
    public static Layout Print(Statement statement) => statement.Syntax switch
    {
        DeclarationLine declaration => DeclarationPrinter.Print(declaration),
        SpellLine spell => DeclarationPrinter.Print(spell),
        CallLine call => DeclarationPrinter.Print(call),
        AddDetailsLine add => DeclarationPrinter.Print(add),
        AddValuesLine add => DeclarationPrinter.Print(add),
        NeedsLine needs => new OneLine($"needs {ConditionPrinter.Print(needs.Condition, statement)}"),
        SuitsLine suits => new OneLine($"suits {ConditionPrinter.Print(suits.Condition, statement)}"),
        ConditionLine condition => new OneLine(ConditionPrinter.Print(condition.Condition, statement)),
        BulletLine bullet => new OneLine($"- {ConditionPrinter.Print(bullet.Condition, statement)}"),
        BecauseLine because => new EndsWithText(Because, because.Reason.Value),
        SourceLine source => new EndsWithText(Source, source.Source.Value),
        _ => new TokenPrinter(statement).Print(),
    };
}
