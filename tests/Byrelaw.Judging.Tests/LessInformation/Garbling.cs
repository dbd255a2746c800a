using Byrelaw.Judging.Tests.Reference;

namespace Byrelaw.Judging.Tests.LessInformation;

/// <summary>Ways to know less: each gives the same case with something blanked, garbled, broken or no longer kept.</summary>
/// <remarks>
/// What no design can survive, and none of these does: a cell garbled into another that is right as it stands (another
/// animal's number, another known mob, another date or number: without <c>up to</c>, a date typed a year late even moves the
/// known day), and a row that is gone altogether.
/// </remarks>
public static class Garbling
{
    private static readonly string[] Nonsense = ["", "3 May", "2026-13-01"];

    public static Gen<JudgingCase?> BlankAResult(JudgingCase one) => OnARow(one,
        row => Words.Vocabulary.FindKind(row.Kind) is MeasureKind or TestKind,
        row => Gen.OneOf("", "pending").Select(value => row with { Value = value }));

    /// <summary>
    /// Not a row that contradicts a birth: with its animal or date garbled it contradicts nothing any more. Nor one dated before
    /// the age at which its kind is said to be possible: one of that kind that cannot be read is taken not to be of those days. Nor one of an
    /// animal that it cannot be about, which may be anybody's as it stands.
    /// </summary>
    public static Gen<JudgingCase?> GarbleARow(JudgingCase one) => OnARow(one, row => !one.Farm.Animals.Any(animal => IsTooEarly(row, animal)) && !IsOfAWrongAnimal(one, row), row => Gen.Frequency(
        (3, Gen.OneOf(Nonsense).Select(date => row with { Date = date })),
        (3, Gen.OneOf("", "9999", "mob:", "herd?").Select(animal => row with { Animal = animal })),
        (3, Gen.OneOf("", "hiccup").Select(kind => row with { Kind = LetsMatesIn(one, row) ? row.Kind : kind })),
        (3, Gen.Const(Words.Vocabulary.FindKind(row.Kind) switch
        {
            MeasureKind => row with { Value = "4,x" },
            TestKind => row with { Value = "smudged" },
            _ => row with { Value = "?" },
        })),
        (1, Gen.Const(row with { Unit = "furlong" })),
        (1, Gen.Const(row with { Recorded = "soon" }))));

    /// <summary>
    /// Blanking a fact makes <c>is not recorded</c> true: that is what the condition asks, so it is left out. So is a birth
    /// that shows other rows, or the parity, to be wrong: without it, a row dated before it can no longer be told from a right one.
    /// </summary>
    public static Gen<JudgingCase?> GarbleAnAnimal(JudgingCase one)
    {
        if (one.Farm.Animals.IsEmpty)
        {
            return Gen.Const((JudgingCase?)null);
        }

        return
            from i in Gen.Int[0, one.Farm.Animals.Length - 1]
            let row = one.Farm.Animals[i]
            from column in Gen.Int[one.Farm.Events.Any(other => IsTooEarly(other, row)) || IsTooYoungForHerParity(one, row) ? 1 : 0, 3 + row.Facts.Length]
            from text in column == Parity ? Gen.Const("n/a") : Gen.OneOf("", "n/a")
            select (column == Sex && one.Farm.Events.Any(other => other.Animal == row.Number && IsOfAWrongAnimal(one, other)))
                || (column == Mob && one.Farm.Events.Any(other => other.Animal.StartsWith("mob:", StringComparison.Ordinal) && IsTooEarly(other, row)))
                ? null
                : one with { Farm = one.Farm with { Animals = one.Farm.Animals.SetItem(i, Garbled(row, column, text)) } };
    }

    private const int Sex = 1;

    /// <summary>Without it, what a mob's row says of her before the age at which it may happen is taken not to be hers.</summary>
    private const int Mob = 2;

    /// <summary>A blank parity says "count the calvings", which is another thing to say, not less.</summary>
    private const int Parity = 3;

    /// <summary>Whether it says of a male what only females have, or anything of one that has left for good, or is what shows that of another row.</summary>
    private static bool IsOfAWrongAnimal(JudgingCase one, EventRow row) =>
        one.Farm.Animals.Any(animal => animal.Number == row.Animal && animal.Sex is "M" or "steer")
        || one.Farm.Events.Any(other => other.Animal == row.Animal
            && ((other.Kind == "death" && string.CompareOrdinal(other.Date, row.Date) < 0) || (row.Kind == "death" && string.CompareOrdinal(row.Date, other.Date) < 0)));

    /// <summary>A bull put in with one cow is doubt for her mob mates; a row of hers of which nobody can read the kind is doubt for her alone (decision 212).</summary>
    private static bool LetsMatesIn(JudgingCase one, EventRow row) =>
        row.Kind is "bull in" or "bull out" && one.Farm.Animals.Any(animal => animal.Number == row.Animal && animal.Sex == "F");

    /// <summary>Whether a row that may be hers is dated before her birth, or before the age at which its kind may happen. ISO dates sort as texts do.</summary>
    private static bool IsTooEarly(EventRow row, AnimalRow animal) =>
        (row.Animal == animal.Number || row.Animal.StartsWith("mob:", StringComparison.Ordinal) || row.Animal == "herd")
        && string.CompareOrdinal(row.Date, EarliestDate(row.Kind, animal.Born)) < 0;

    /// <summary>Whether her birth says that she cannot have calved by a day that her parity is of, or that is judged.</summary>
    private static bool IsTooYoungForHerParity(JudgingCase one, AnimalRow animal)
    {
        var judged = one.Rulebook.Programme!.Choices.Select(choice => one.On ?? choice.JudgedFrom).Min();
        return CellReading.Number(animal.Parity) > 0
            && string.CompareOrdinal(EarliestDate("calving", animal.Born), new[] { LocalDatePattern.Iso.Format(judged), animal.ParityOn }.Where(day => day.Length > 0).Min(StringComparer.Ordinal)) > 0;
    }

    private static string EarliestDate(string kind, string born)
    {
        var age = (Words.Vocabulary.FindKind(kind) as EventKind)?.NotBeforeAge;
        var latestBirth = born.Length switch { 4 => born + "-12-31", 7 => born + "-28", _ => born };
        return age is { } least && LocalDatePattern.Iso.Parse(latestBirth) is { Success: true, Value: var day }
            ? LocalDatePattern.Iso.Format(least.After(day))
            : born;
    }

    /// <summary>The line of an animal that no list names, whose own number cannot be read any more.</summary>
    public static Gen<JudgingCase?> LoseAnAnimal(JudgingCase one) =>
        from i in Gen.Int[0, one.Farm.Animals.Length - 1]
        let number = one.Farm.Animals[i].Number
        select one.Farm.Animals.Length < 2 || one.Rulebook.Programme!.Choices.Any(choice => choice.Animals.Contains(number))
            ? null
            : one with { Farm = one.Farm with { Animals = one.Farm.Animals.SetItem(i, one.Farm.Animals[i] with { Number = "" }) } };

    public static Gen<JudgingCase?> BreakALine(JudgingCase one)
    {
        var book = one.Rulebook;
        var part = Gen.OneOf("recipients", "donors", null).Select(list =>
            book with { BrokenParts = book.BrokenParts.Add(new BrokenPart(list, Words.Nowhere)) });
        var rule = book.Rules.IsEmpty ? part : Gen.Int[0, book.Rules.Length - 1].SelectMany(i => Gen.OneOf(
            Gen.Const(book.Rules[i] with { IsBroken = true }),
            Gen.Const(book.Rules[i] with { Needs = Broken(book.Rules[i].Needs) })).Select(broken => book with { Rules = book.Rules.SetItem(i, broken) }));
        var define = book.Defines.IsEmpty ? part : Gen.Int[0, book.Defines.Length - 1].Select(i =>
            book with { Defines = book.Defines.SetItem(i, book.Defines[i] with { IsBroken = true }) });
        return Gen.OneOf(part, rule, define).Select(broken => (JudgingCase?)(one with { Rulebook = GenRulebooks.AsBound(broken) }));
    }

    public static Gen<JudgingCase?> KeepLess(JudgingCase one)
    {
        var keeping = one.Rulebook.Records!;
        if (keeping.Complete.IsEmpty)
        {
            return Gen.Const((JudgingCase?)null);
        }

        return
            from i in Gen.Int[0, keeping.Complete.Length - 1]
            let complete = keeping.Complete[i]
            from k in Gen.Int[0, complete.Kinds.Length - 1]
            from later in Gen.Frequency((1, Gen.Const(0)), (2, Gen.Int[1, 2000]))
            let without = complete with { Kinds = complete.Kinds.RemoveAt(k) }
            let narrowed = new Completeness([complete.Kinds[k]], complete.Since.PlusDays(later), Words.Nowhere)
            let all = keeping.Complete.SetItem(i, without)
            select one with { Rulebook = one.Rulebook with { Records = keeping with { Complete = later == 0 ? all : all.Add(narrowed) } } };
    }

    /// <summary>"<c>if not known pass</c>" is the one place where knowing less may let an animal through: a rule that fails by a
    /// record passes without it. Rules that say so are asked instead.</summary>
    public static JudgingCase WithoutPass(JudgingCase one) => one with
    {
        Rulebook = one.Rulebook with
        {
            Rules = [.. one.Rulebook.Rules.Select(rule => rule.IfNotKnown == IfNotKnown.Pass ? rule with { IfNotKnown = IfNotKnown.Ask } : rule)],
        },
    };

    /// <summary>Every rule passes what is not known, but those of safety.</summary>
    public static JudgingCase WithPass(JudgingCase one) => one with
    {
        Rulebook = one.Rulebook with
        {
            Rules = [.. one.Rulebook.Rules.Select(rule => rule.IsSafety ? rule : rule with { IfNotKnown = IfNotKnown.Pass })],
        },
    };

    /// <summary>A cell of <c>animals.csv</c> that cannot be read: none that is blank, and none that any text is right in.</summary>
    public static Gen<JudgingCase?> SmudgeAnAnimal(JudgingCase one) => GarbleAnAnimal(one).Select(less =>
        less is null || less.Farm.Animals.Zip(one.Farm.Animals).Any(pair => IsBlanked(pair.First, pair.Second)) ? null : less);

    private static bool IsBlanked(AnimalRow less, AnimalRow row) =>
        (less.Born.Length == 0 && row.Born.Length > 0) || (less.Sex.Length == 0 && row.Sex.Length > 0) || (less.Mob.Length == 0 && row.Mob.Length > 0)
        || less.Facts.Zip(row.Facts).Any(fact => fact.First.Length == 0 && fact.Second.Length > 0);

    /// <summary>Whether any condition asks that something is not on record.</summary>
    public static bool AsksForNothingOnRecord(Rulebook book) =>
        book.Rules.Select(rule => rule.Needs).Concat(book.Defines.Select(define => define.Condition)).Any(Asks);

    private static bool Asks(Condition condition) => condition switch
    {
        RecordedCondition => true,
        ListCondition list => list.Items.Any(Asks),
        _ => false,
    };

    private static Gen<JudgingCase?> OnARow(JudgingCase one, Func<EventRow, bool> fits, Func<EventRow, Gen<EventRow>> garbled)
    {
        var places = Enumerable.Range(0, one.Farm.Events.Length).Where(i => fits(one.Farm.Events[i])).ToArray();
        return places.Length == 0
            ? Gen.Const((JudgingCase?)null)
            : Gen.OneOf(places).SelectMany(i => garbled(one.Farm.Events[i])
                .Select(row => (JudgingCase?)(one with { Farm = one.Farm with { Events = one.Farm.Events.SetItem(i, row) } })));
    }

    private static AnimalRow Garbled(AnimalRow row, int column, string text) => column switch
    {
        0 => row with { Born = text },
        1 => row with { Sex = text },
        2 => row with { Mob = "" },
        3 => row with { Parity = text },
        _ => row with { Facts = row.Facts.SetItem(column - 4, Words.Vocabulary.Facts[column - 4].Type is FactType.Text or FactType.Identity ? "" : text) },
    };

    private static Condition Broken(Condition condition)
    {
        Condition broken = new BrokenCondition { Span = Words.Nowhere };
        return condition is ListCondition list ? list with { Items = list.Items.SetItem(0, broken) } : broken;
    }
}
