namespace Byrelaw.Judging.Tests.Generators;

/// <summary>Rules of three layers over a farm's own words, and its programme: texts, read by the program's own reader.</summary>
public static class GenFloorRules
{
    /// <summary>Below it stands what the farm does otherwise.</summary>
    public const string EndOfProgramme = "# What we do otherwise";

    private static readonly string[] Lists = ["treatment", "recipients", "donors", "scanning"];

    private static readonly string[] Ordinary =
    [
        "at least 40 days since last calving", "no heat in the last 3 days", "age at least 13 months", "latest body condition in the last 60 days at least 4", "parity at most 6",
        "at least 1 heat since last calving", "no drying off since last calving", "any of\n    - at least 1 calving ever\n    - age at least 14 months",
    ];

    private static readonly string[] Safe =
    [
        "no mating in the last 20 days", "no mating or transfer in the last 27 days", "not running with bull in the last 35 days", "not running with bull in the last 10 days",
        "any of\n    - no mating since last calving\n    - latest pregnancy test from 28 days after last mating is empty", "no pregnant pregnancy test in the last 100 days",
        "latest pregnancy test in the last 300 days is empty", "seen empty", "no transfer since last calving", "age at least 2 months",
    ];

    public static Gen<ImmutableSortedDictionary<string, string>> For(Season season, FloorWordsDrawn words, ImmutableArray<string> numbers) =>
        from counts in Gen.Int[1, 2].Array[Lists.Length]
        from @base in InTurn(Lists.SelectMany((list, place) => Enumerable.Range(1, counts[place]).Select(i => Rule($"{list} {i}"))))
        let names = Lists.SelectMany((list, place) => Enumerable.Range(1, counts[place]).Select(i => $"{list} {i}")).ToArray()
        from practice in Layer(season, numbers, names, "practice")
        from own in Layer(season, numbers, names, "farm")
        from keeping in Keeping(season, words)
        from programme in Programme(season, numbers)
        select ImmutableSortedDictionary.CreateRange(StringComparer.Ordinal, new Dictionary<string, string>
        {
            ["words.byre"] = words.Text,
            ["base.byre"] = "use \"words.byre\"\n\ndefine seen empty\n  latest pregnancy test since last calving is empty\n\n"
                + string.Concat(Lists.Select((list, place) => $"rules for {list}\n{string.Concat(@base.Where(rule => rule.StartsWith($"rule \"{list} ", StringComparison.Ordinal) || rule.StartsWith($"safety rule \"{list} ", StringComparison.Ordinal)))}\n")),
            ["practice.byre"] = "use \"base.byre\"\n\n" + practice,
            [FloorCase.Programme] = "use \"practice.byre\"\n\n" + keeping + programme + own,
        });

    private static Gen<string> Rule(string name) =>
        from safety in Gen.Bool
        from needs in Gen.OneOf(safety ? Safe : Ordinary)
        from audience in Gen.OneOf("", "", "", "  applies to cows\n", "  applies to heifers\n")
        from notKnown in safety ? Gen.OneOf("", "", "  if not known exclude\n") : Gen.OneOf("", "", "  if not known pass\n", "  if not known exclude\n")
        from onTheDay in safety ? Gen.Const("") : Gen.Frequency((6, Gen.Const("")), (1, Gen.Const("  on the day\n")))
        select $"{(safety ? "safety " : "")}rule \"{name}\"\n{audience}  needs {needs}\n{notKnown}{onTheDay}  because \"it is so\"\n  source \"example\"\n";

    /// <summary>What a practice or a farm does otherwise.</summary>
    private static Gen<string> Layer(Season season, ImmutableArray<string> numbers, string[] names, string layer) =>
        Gen.Frequency((3, Gen.Const(0)), (2, Gen.Const(1)), (1, Gen.Const(2))).SelectMany(count => InTurn(Enumerable.Range(1, count).Select(i => Statement(season, numbers, names, $"{layer} {i}"))))
            .Select(some => string.Concat(some));

    private static Gen<string> Statement(Season season, ImmutableArray<string> numbers, string[] names, string own)
    {
        var agreed = $"  because \"we know our cows\"\n  agreed by \"farmer\", \"herd vet\" on {Text(season.Known.PlusDays(-20))}\n";
        return
            from name in Gen.OneOf(names)
            from which in Gen.Int[0, 6]
            from needs in Gen.OneOf([.. Ordinary, .. Safe])
            from animal in Gen.OneOf([.. numbers])
            from list in Gen.OneOf(Lists)
            from rule in Rule(own)
            select which switch
            {
                0 or 1 => $"change \"{name}\"\n  needs {needs}\n{agreed}",
                2 => $"drop \"{name}\"\n{agreed}",
                3 => $"waive \"{name}\" for \"{animal}\"\n  until {Text(season.Known.PlusDays(90))}\n{agreed}",
                4 => $"accept \"{name}\" as passing what is not known\n  because \"we know our cows\"\n",
                5 => $"rules for {list}\n{rule}",
                _ => $"rules for every list\n{rule}",
            };
    }

    private static Gen<string> Programme(Season season, ImmutableArray<string> numbers) =>
        from given in Gen.Frequency((3, Gen.Const("")), (1, Gen.Const(", nothing given")))
        from taken in Gen.OneOf("females", "females", "cows")
        from treated in Gen.Int[-10, 40]
        select $"""
            programme "Random farm"
              collection on {Text(season.Collection)}
              transfer 8 days after collection, over 2 days
              choose treatment from females, judged on {Text(season.Known.PlusDays(treated))}
              choose recipients from {taken}, judged from first transfer to final transfer
              choose donors from "{numbers[0]}", judged on collection{given}
              choose scanning from females, judged on collection, for looking only

            {EndOfProgramme}

            """;

    /// <summary>Most kinds complete for long, some since lately, some not at all.</summary>
    private static Gen<string> Keeping(Season season, FloorWordsDrawn words) =>
        from all in Gen.Frequency((3, Gen.Const(true)), (1, Gen.Const(false)))
        from since in Gen.Frequency((6, Gen.Const(1350)), (1, Gen.Int[0, 300]), (1, Gen.Const(-1))).Array[words.Kinds.Count()]
        from none in Gen.Frequency((8, Gen.Const("")), (1, Gen.Int[20, 200].Select(days => $"  no bull in on this farm since {Text(season.Known.PlusDays(-days))}\n")))
        select $"records \"records\"\n  up to {Text(season.Known)}\n"
            + string.Concat(words.Kinds.Select((kind, i) => (kind, Days: all ? 1350 : since[i])).Where(one => one.Days >= 0)
                .Select(one => $"  complete for {one.kind} since {Text(season.Known.PlusDays(-one.Days))}\n")) + none + "\n";

    /// <summary>A layer that would have less of a safety rule: changed, dropped, waived, accepted, its words defined anew, or written once more.</summary>
    public static Gen<string> Loosening(ImmutableArray<string> safetyRules, ImmutableArray<string> numbers, LocalDate known)
    {
        var agreed = $"  because \"we know our cows\"\n  agreed by \"farmer\", \"herd vet\" on {Text(known.PlusDays(-20))}\n";
        return
            from name in Gen.OneOf([.. safetyRules, "Floor: not in calf", "Floor: away from the bull"])
            from which in Gen.Int[0, 8]
            from needs in Gen.OneOf([.. Ordinary, .. Safe])
            from line in Gen.OneOf("", "", "  if not known exclude\n", "  if not known pass\n", "  on the day\n", "  applies to heifers\n")
            from animal in Gen.OneOf([.. numbers])
            select which switch
            {
                <= 3 => $"change \"{name}\"\n  needs {needs}\n{line}{agreed}",
                4 => $"drop \"{name}\"\n{agreed}",
                5 => $"waive \"{name}\" for \"{animal}\"\n  until {Text(known.PlusDays(90))}\n{agreed}",
                6 => $"accept \"{name}\" as passing what is not known\n  because \"we know our cows\"\n",
                7 => "define seen empty\n  age at least 1 day\n",
                _ => $"rules for recipients\nrule \"{name}\"\n  needs {needs}\n{line}  because \"it is so\"\n  source \"example\"\n",
            };
    }

    private static Gen<ImmutableArray<T>> InTurn<T>(IEnumerable<Gen<T>> each) =>
        each.Aggregate(Gen.Const(ImmutableArray<T>.Empty), (before, one) => Gen.Select(before, one, (values, value) => values.Add(value)));

    private static string Text(LocalDate date) => LocalDatePattern.Iso.Format(date);
}
