namespace Byrelaw.Language.Syntax.Lines;

/// <summary><c>from "cows.csv", separated by semicolons, a row for each animal</c>: where a source of records is.</summary>
internal sealed record FromLine(TextSyntax File, ImmutableArray<FromOptionSyntax> Options) : HeadLine
{
    /// <summary>The option of a sort; null where it is not said.</summary>
    public T? Option<T>() where T : FromOptionSyntax => Options.OfType<T>().FirstOrDefault();
}

/// <summary>What is said of a source behind its file's name.</summary>
/// <param name="Words">The words by which people know it; each stands once.</param>
internal abstract record FromOptionSyntax(string Words) : SyntaxNode;

/// <summary><c>headings in row 2</c>, <c>headings in rows 2 to 3</c>.</summary>
internal sealed record HeadingsSyntax(NumberSyntax First, NumberSyntax? Last) : FromOptionSyntax("headings in row");

/// <summary><c>a row for each animal</c> or <c>a row for each event</c>.</summary>
internal sealed record RowForEachSyntax(SourceRows Rows) : FromOptionSyntax("a row for each");

/// <summary><c>as at 2026-09-30</c>: the day of which the rows are true.</summary>
internal sealed record AsAtSyntax(DateSyntax Day) : FromOptionSyntax("as at");

/// <summary><c>up to 2026-09-30</c>: how far this source reaches.</summary>
internal sealed record SourceUpToSyntax(DateSyntax Day) : FromOptionSyntax("up to");

/// <summary><c>separated by semicolons</c>.</summary>
internal sealed record SeparatorSyntax(char Separator) : FromOptionSyntax("separated by");

/// <summary><c>as layout "ICAR ADE"</c>: lines that say what stands where, known by a name.</summary>
internal sealed record LayoutSyntax(TextSyntax Name) : FromOptionSyntax("as layout");

/// <summary><c>times in "Pacific/Auckland"</c>: where the farm's clocks stand.</summary>
internal sealed record TimesInSyntax(TextSyntax Zone) : FromOptionSyntax("times in");

/// <summary><c>sheet "Cows"</c>: which sheet of a workbook.</summary>
internal sealed record SheetSyntax(TextSyntax Name) : FromOptionSyntax("sheet");

/// <summary><c>in Windows-1252</c>: how letters are written as bytes.</summary>
internal sealed record EncodingSyntax(NameSyntax Name) : FromOptionSyntax("in");
