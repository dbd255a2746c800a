namespace Byrelaw.Language.Rulebooks.Plans;

/// <summary>A share with what it rests on: <c>45%, from 36 of 80 transfers</c> or <c>81%, weight 40</c>.</summary>
/// <param name="Written">As written, from 0 to 1.</param>
/// <param name="Opinion">About how many animals an opinion is worth; null where it is a count, or taken as exact.</param>
/// <param name="Counted">What was counted; null where nothing was.</param>
/// <param name="Span">Where.</param>
public sealed record Share(double Written, double? Opinion, Counting? Counted, SourceSpan Span)
{
    /// <summary>The share to plan with, from 0 to 1: the counted one where something was counted.</summary>
    public double Value => Counted is { } count ? (double)count.Hits / count.Of : Written;

    /// <summary>How many animals stand behind it; null where it is taken as exact.</summary>
    public double? Weight => Counted?.Of ?? Opinion;
}

/// <summary>So many of so many: <c>from 36 of 80 transfers</c>.</summary>
/// <param name="Hits">For how many it came true.</param>
/// <param name="Of">Of how many; above 0 and not below <paramref name="Hits"/>.</param>
/// <param name="What">What was counted; null where it is not said.</param>
public sealed record Counting(int Hits, int Of, string? What);
