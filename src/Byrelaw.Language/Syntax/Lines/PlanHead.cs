namespace Byrelaw.Language.Syntax.Lines;

/// <summary><c>method "..."</c>.</summary>
internal sealed record MethodLine(TextSyntax Name) : HeadLine;

/// <summary><c>task "..."</c>.</summary>
internal sealed record TaskLine(TextSyntax Name) : HeadLine;

/// <summary><c>done "Book the scanner" on 2026-10-28 for session 1</c>.</summary>
internal sealed record DoneLine(TextSyntax Task, DateSyntax On, NumberSyntax? Session) : HeadLine;

/// <summary><c>stopped session 2</c>.</summary>
internal sealed record StoppedLine(NumberSyntax Session) : HeadLine;

/// <summary><c>yardstick "Prostaglandin once" used 65%</c>, <c>yardstick cost per embryo transferred 400 NZD</c>.</summary>
/// <param name="Method">Of which so many are used; null for the cost.</param>
/// <param name="Used">So many.</param>
/// <param name="Amount">The cost.</param>
internal sealed record YardstickLine(TextSyntax? Method, NumberSyntax? Used, MoneySyntax? Amount) : HeadLine;

/// <summary><c>caution prostaglandin "..."</c>.</summary>
internal sealed record CautionLine(NameSyntax About, TextSyntax Text) : HeadLine;

/// <summary><c>visits "collection" in "North" every 14 days from 2026-07-06 to 2026-12-18</c>.</summary>
internal sealed record VisitsLine(TextSyntax Name, TextSyntax? Region, ScheduleSyntax? Schedule) : HeadLine;

/// <summary><c>assume pregnant per transfer fresh 45%, from 36 of 80 transfers</c>.</summary>
/// <param name="Quantity">All words before the number.</param>
/// <param name="Named">The method in <c>cost per animal treated by "..."</c>, or the donor in <c>oocytes per collection of "1021"</c>.</param>
/// <param name="Value">The number.</param>
/// <param name="IsShare">Whether it has a per cent sign.</param>
/// <param name="Unit">A currency or <c>days</c>.</param>
/// <param name="Evidence">What it rests on.</param>
internal sealed record AssumeLine(
    NameSyntax Quantity, TextSyntax? Named, NumberSyntax Value, bool IsShare, UnitSyntax? Unit, ImmutableArray<EvidenceSyntax> Evidence) : HeadLine
{
    /// <summary>The donor of whom it is said.</summary>
    public TextSyntax? Donor => NameFolding.Fold(Quantity.Text).EndsWith(" of", StringComparison.Ordinal) ? Named : null;

    /// <summary>The method of which it is said.</summary>
    public TextSyntax? Method => Donor is null ? Named : null;
}
