namespace Byrelaw.Records.Tests.Literal;

/// <summary>A row of an event as the specification sees it: null where something cannot be read.</summary>
/// <param name="Day">Days after the first day of the play; null where the date cannot be read.</param>
/// <param name="Animal">0 to 2; null where the animal cannot be read.</param>
/// <param name="Kind">One of <see cref="Kinds"/>; null where the kind cannot be read.</param>
/// <param name="Sound">False where a value stands that does not belong there.</param>
internal sealed record LiteralRow(int? Day, int? Animal, string? Kind, bool Sound)
{
    public static readonly string[] Kinds = ["heat", "purchase", "sale"];

    /// <summary>Three animals: one born before the play, one born in it, one whose birth is not known.</summary>
    public static readonly string[] Animals = ["1", "2", "3"];

    public const int Days = 24;
    public const int BornInPlay = 6;
    public static readonly NodaTime.LocalDate First = new(2026, 1, 1);

    public static readonly Gen<LiteralRow> Any =
        from day in Gen.Int[0, Days - 1]
        from hasDay in Gen.Int[0, 11]
        from animal in Gen.Int[0, 2]
        from hasAnimal in Gen.Int[0, 11]
        from kind in Gen.Int[0, 2]
        from hasKind in Gen.Int[0, 11]
        from sound in Gen.Int[0, 9]
        select new LiteralRow(hasDay == 0 ? null : day, hasAnimal == 0 ? null : animal, hasKind == 0 ? null : Kinds[kind], sound > 0);

    /// <summary>What this row may have said, where it cannot be read; with a date before birth it may be of any day.</summary>
    public bool IsGap => Day is null || Animal is null || Kind is null || !Sound || IsBeforeBirth;

    /// <summary>Whether the date is one that cannot be.</summary>
    public bool IsBeforeBirth => Animal == 1 && Day < BornInPlay;

    /// <summary>Whether it can be dated on a day.</summary>
    public bool MayBeOn(int day) => Day is null || IsBeforeBirth || Day == day;

    /// <summary>Whether it can be about an animal; what happened before she was born was not hers.</summary>
    public bool MayBeOf(int animal) => Animal is null ? !(animal == 1 && Day < BornInPlay) : Animal == animal;

    /// <summary>Whether it can be of a kind.</summary>
    public bool MayBe(string kind) => Kind is null || Kind == kind;

    /// <summary>The row as the file has it.</summary>
    public string Text()
    {
        var date = Day is { } day ? NodaTime.Text.LocalDatePattern.Iso.Format(First.PlusDays(day)) : "soon";
        return $"{date},{(Animal is { } animal ? Animals[animal] : "99")},{Kind ?? "foot trim"},{(Sound ? "" : "x")},";
    }
}
