namespace Byrelaw.Language.Syntax.Lines;

/// <summary><c>wants 6 live heifer calves, 80% sure</c>.</summary>
internal sealed record WantsLine(NumberSyntax Count, Outcome What, NumberSyntax Sure) : BodyLine
{
    public override string? OnlyOnce => "wants";
}

/// <summary><c>budget 30000 NZD</c>.</summary>
internal sealed record BudgetLine(MoneySyntax Amount) : BodyLine
{
    public override string? OnlyOnce => "budget";
}

/// <summary><c>embryos made from collected eggs</c>, <c>embryos flushed</c>, <c>embryos frozen</c>.</summary>
/// <param name="Origin">Where from.</param>
/// <param name="Age">Days from heat; null where it is not said.</param>
internal sealed record EmbryosLine(EmbryoOrigin Origin, DurationSyntax? Age) : BodyLine
{
    public override string? OnlyOnce => "embryos";
}

/// <summary><c>tank holds 6 frozen embryos with sexed semen</c>.</summary>
internal sealed record TankLine(NumberSyntax Count, bool IsSexed) : BodyLine
{
    public override string? OnlyOnce => "tank";
}

/// <summary><c>costs shared "owner" 50%, "sharemilker" 50%</c>, <c>transfer costs shared ...</c>.</summary>
/// <param name="Kind">Which costs; null for all that no other line speaks of.</param>
/// <param name="Shares">Who pays, and how many hundredths.</param>
internal sealed record CostsSharedLine(SharedCosts? Kind, ImmutableArray<(TextSyntax Who, NumberSyntax Percent)> Shares) : BodyLine;

/// <summary><c>recipients on day 6 to 8, within 1 day of the embryo</c>.</summary>
internal sealed record RecipientDaysLine(NumberSyntax From, NumberSyntax? To, DurationSyntax? Within) : BodyLine
{
    public override string? OnlyOnce => "recipients on day";
}

/// <summary><c>prepare 24 recipients by "Progesterone insert", "Natural heat"</c>.</summary>
internal sealed record PrepareLine(NumberSyntax? Count, bool IsForDonors, ImmutableArray<TextSyntax> Methods) : BodyLine;

/// <summary><c>prepare "1031", "1040" by "Progesterone insert" for session 2</c>.</summary>
internal sealed record BookingLine(ImmutableArray<TextSyntax> Animals, TextSyntax Method, NumberSyntax? Session) : BodyLine;

/// <summary><c>semen sexed female</c>.</summary>
internal sealed record SemenLine(Semen Semen) : BodyLine
{
    public override string? OnlyOnce => "semen";
}

/// <summary><c>calves of breed Friesian, Jersey</c>.</summary>
internal sealed record CalvesLine(ImmutableArray<NameSyntax> Breeds) : BodyLine
{
    public override string? OnlyOnce => "calves of breed";
}

/// <summary><c>calve by 2027-09-30</c>.</summary>
internal sealed record CalveByLine(DateSyntax Day) : BodyLine
{
    public override string? OnlyOnce => "calve by";
}

/// <summary><c>region "North"</c>.</summary>
internal sealed record RegionLine(TextSyntax Region) : BodyLine
{
    public override string? OnlyOnce => "region";
}

/// <summary><c>holidays "holidays.txt"</c>.</summary>
internal sealed record HolidaysLine(TextSyntax Path) : BodyLine
{
    public override string? OnlyOnce => "holidays";
}

/// <summary><c>holiday 2026-10-26 "Labour Day"</c>.</summary>
internal sealed record HolidayLine(DateSyntax Day, TextSyntax Name) : BodyLine;
