namespace Byrelaw.Reporting.Words;

/// <summary>What a condition found, told with what it was found of, so that it stands without the condition beside it.</summary>
public static class ToldWords
{
    /// <summary>Such as <c>parity 8</c>, <c>pregnancy test pregnant, 11 Mar</c>, <c>43 of 56 days since calving</c>.</summary>
    public static string Of(Finding finding, ListReport list)
    {
        var found = FoundWords.Of(finding, list);
        var nothing = finding.Found is FoundNothing;
        return finding.Condition switch
        {
            CountCondition count => Count(count, finding, found, list),
            TimeSinceCondition since when finding.Found is FoundNever => $"no {Kinds(since)} ever",
            TimeSinceCondition since when nothing => $"no {Kinds(since)} on record",
            TimeSinceCondition since => $"{found} since {Kinds(since)}",
            AgeCondition => nothing ? "age not known" : $"age {found}",
            ParityCondition => nothing ? "parity not known" : $"parity {found}",
            FactNumberCondition fact => $"{fact.Fact.Name} {found}",
            FactTextCondition fact => $"{fact.Fact.Name} {found}",
            FactDateCondition fact => $"{fact.Fact.Name} {found}",
            RecordedCondition fact => nothing && found == "nothing on record" ? $"{fact.Fact.Name} not on record" : $"{fact.Fact.Name} {found}",
            MeasuredCondition measured when nothing => $"no {ResultWords.Of(measured.Measure)}",
            MeasuredCondition measured => $"{(measured.Aggregate == Aggregate.Latest ? measured.Measure.Name : measured.Subject)} {found}",
            TestCondition test => nothing ? $"no {ResultWords.Of(test.Test)}" : $"{Tested(test.Test)} {found}",
            MobMeasuredCondition mob => $"{mob.Measure.Name} of her mob: {found}",
            MobCountCondition mob => $"{mob.Measure.Name} of her mob: {found}",
            StandingCondition standing => nothing ? $"no {standing.Fact.Name} on record" : $"{standing.Fact.Name} {found}",
            SpellCondition => found,
            InMobCondition => nothing ? "her mob is not known" : $"in mob {found}",
            var other => nothing ? $"{other.Subject}: not known" : $"{other.Subject}: {found}",
        };
    }

    /// <summary><c>no mating</c>, <c>lameness on 28 Sep</c>, <c>mating or transfer twice, last on 12 Sep</c>.</summary>
    private static string Count(CountCondition count, Finding finding, string found, ListReport list)
    {
        var records = finding.Evidence.Where(evidence => count.Counted.Any(one => one.Kind == evidence.Kind)).ToList();
        var happened = new CountCondition(count.Test, [.. count.Counted.Where(one => records.Any(evidence => evidence.Kind == one.Kind))], []) { Span = count.Span };
        return (finding.Found, records.Max(evidence => evidence.Date)) switch
        {
            (FoundCount { AtMost: 0 }, _) => $"no {Said(count)}",
            (FoundCount { AtLeast: 1, AtMost: 1 }, { } day) => $"{Happened(happened)} on {list.Short(day)}",
            (FoundCount { AtMost: not null }, { } day) => $"{Happened(happened)} {found}, last on {list.Short(day)}",
            (FoundCount { AtLeast: 0, AtMost: null }, _) => $"not known whether {(count.Counted.All(one => Answer(one) is null) ? "there was any" : "any")} {Said(count)}",
            (FoundCount { AtLeast: 0 }, _) => $"{Happened(count)}: {found}",
            _ => $"{Happened(count)} {found}",
        };
    }

    private static string Tested(TestKind test) => test.Filter is null ? test.Name : ResultWords.Of(test);

    /// <summary>Of what there is none, or may be one: <c>pregnancy test said pregnant</c>, for nobody says <c>no pregnant pregnancy test</c>.</summary>
    private static string Said(CountCondition count) =>
        Phrases.Or([.. count.Counted.Select(one => Answer(one) is { } answer ? $"{Tested((TestKind)one.Kind)} said {answer}" : one.Subject)]);

    /// <summary>As a record says it: <c>BVD virus positive</c>.</summary>
    private static string Happened(CountCondition count) =>
        Phrases.Or([.. count.Counted.Select(one => Answer(one) is { } answer ? $"{one.Kind.Name} {answer}" : one.Kind.Name)]);

    private static string? Answer(Counted counted) =>
        counted.Kind is TestKind test && counted.Answer >= 0 && counted.Answer < test.Answers.Length ? test.Answers[counted.Answer] : null;

    private static string Kinds(TimeSinceCondition since) => Phrases.Or([.. since.Kinds.Select(kind => kind.Name)]);
}
