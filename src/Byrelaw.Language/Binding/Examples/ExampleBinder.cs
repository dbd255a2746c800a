namespace Byrelaw.Language.Binding.Examples;

/// <summary>
/// Binds the worked examples of the file that was asked for. Those of a used file are tried against that file and what it
/// uses, so they are bound when it is read by itself.
/// </summary>
internal static class ExampleBinder
{
    private const int MostInHerd = 10_000;

    /// <summary>Binds all; an example with an error is not among them.</summary>
    public static ImmutableArray<Example> Bind(RuleFile root, Namespace names, RuleBinder rules)
    {
        var examples = ImmutableArray.CreateBuilder<Example>();
        var byName = new Dictionary<string, SourceSpan>(StringComparer.Ordinal);
        foreach (var block in root.Blocks.Where(block => block.Kind == BlockKind.Example))
        {
            var context = new Context(names, root.Problems);
            var before = context.Problems.Count;
            var example = Bind(context, block, rules);
            if (block.Head is ExampleLine head && !byName.TryAdd(NameFolding.Fold(head.Name.Value), block.Span))
            {
                context.Problems.Add(ExampleProblems.NameTaken(head.Name.Span, head.Name.Value, byName[NameFolding.Fold(head.Name.Value)]));
            }

            // What is missing or wrong has been told by now.
            if (example is not null && context.Problems.Count == before)
            {
                examples.Add(example);
            }
        }

        return examples.ToImmutable();
    }

    private static Example? Bind(Context context, Block block, RuleBinder rules)
    {
        var (animal, judged) = (block.First<AnimalLine>(), block.First<JudgedLine>());
        if (!block.IsBroken)
        {
            TellMissing(context, block);
        }

        var records = new ExampleRecordBinder(context);
        records.Bind(block);
        ImmutableArray<Expectation?> expectations = [.. block.Lines.OfType<ExpectLine>().Select(line => ExpectationBinder.Bind(context, line, rules))];
        if (block.IsBroken || block.Head is not ExampleLine head || animal is null || judged is null)
        {
            return null;
        }

        var last = judged.Last?.Value ?? judged.First.Value;
        if (last < judged.First.Value)
        {
            context.Problems.Add(ExampleProblems.JudgedBackwards(judged.First.Span, judged.Last!.Span));
        }

        var example = new Example
        {
            Name = head.Name.Value,
            Sort = animal.Sort,
            Born = animal.Born,
            AnimalSpan = animal.Span,
            Records = [.. records.Records],
            Facts = [.. records.Facts],
            Rank = Rank(context, block),
            NotKept = [.. block.Lines.OfType<NotKeptLine>().SelectMany(line => context.Kinds(line.Kinds) ?? []).Distinct()],
            Dates = [.. records.Dates.OrderBy(date => date.Date)],
            JudgedFrom = judged.First.Value,
            JudgedTo = last,
            RecordsTo = block.First<RecordsToLine>()?.Day.Value ?? last,
            Expectations = [.. expectations.OfType<Expectation>()],
            Span = block.Span,
        };
        TellContradictions(context, example, block);
        return example;
    }

    private static void TellMissing(Context context, Block block)
    {
        if (block.First<AnimalLine>() is null)
        {
            context.Problems.Add(ExampleProblems.NoAnimal(block.Span));
        }

        if (block.First<JudgedLine>() is null)
        {
            context.Problems.Add(ExampleProblems.NotJudged(block.Span));
        }

        if (block.First<ExpectLine>() is null)
        {
            context.Problems.Add(ExampleProblems.ExpectsNothing(block.Span));
        }
    }

    private static ExampleRank? Rank(Context context, Block block)
    {
        if (block.First<RankLine>() is not { } line)
        {
            return null;
        }

        if (context.Names.Find(line.Fact.Text) is not FactSymbol { Fact: { Type: FactType.Number or FactType.Amount } fact })
        {
            return context.Fail<ExampleRank>(context.NotFound(line.Fact, symbol => symbol is FactSymbol { Fact.Type: FactType.Number or FactType.Amount }, "a fact that is a number"));
        }

        var (rank, of) = (line.Rank.Value, line.Of.Value);
        return rank == Math.Floor(rank) && of == Math.Floor(of) && rank >= 1 && rank <= of && of <= MostInHerd
            ? new ExampleRank((int)rank, (int)of, fact, line.Span)
            : context.Fail<ExampleRank>(ExampleProblems.NotARank(line.Rank.Span, line.Of.Span, MostInHerd));
    }

    /// <summary>What cannot be so whatever the rules say.</summary>
    private static void TellContradictions(Context context, Example example, Block block)
    {
        var calving = context.Names.Find("calving") is KindSymbol { Kind: EventKind kind } ? kind : null;
        var calvings = example.Records.Where(record => record.Kind == calving).ToList();
        var parity = example.Facts.FirstOrDefault(fact => fact.Name == "parity");
        if (example.Sort == ExampleSort.Cow && calvings.Count == 0 && parity is null)
        {
            context.Problems.Add(ExampleProblems.CowWithoutCalving(example.AnimalSpan));
        }

        if (example.Sort == ExampleSort.Heifer && (calvings.FirstOrDefault()?.Span ?? (parity is { Value: not "0" } ? parity.Span : null)) is { } at)
        {
            context.Problems.Add(ExampleProblems.HeiferHasCalved(at, example.AnimalSpan));
        }

        var born = LocalDatePattern.Iso.Parse(example.Born) is { Success: true } day ? day.Value : (LocalDate?)null;
        foreach (var record in example.Records)
        {
            if (record.Date < born)
            {
                context.Problems.Add(ExampleProblems.BeforeBirth(record.Span, born.Value));
            }
            else if (record.Date > example.RecordsTo)
            {
                context.Problems.Add(ExampleProblems.AfterRecords(record.Span, example.RecordsTo, block.First<RecordsToLine>() is not null));
            }
        }

        if (example.Records.FirstOrDefault(record => record.OfHerMob > 0) is { } sample && !example.Records.Any(record => record.Kind is EventKind { IsMobMove: true }))
        {
            context.Problems.Add(ExampleProblems.NoMob(sample.Span));
        }
    }
}
