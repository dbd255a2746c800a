namespace Byrelaw.Language.Binding.Farm;

/// <summary>Binds what the files expect of true records.</summary>
internal static class RecordExpectationBinder
{
    /// <summary>All expectations of all files. One that cannot be read is broken, as far as it is known whose promises it is about.</summary>
    public static List<RecordExpectation> Bind(IReadOnlyList<RuleFile> files, Namespace names)
    {
        var found = new List<RecordExpectation>();
        foreach (var file in files)
        {
            var context = new Context(names, file.Problems);
            foreach (var block in file.Blocks.Where(block => block.Kind == BlockKind.Expectation))
            {
                if (Bind(context, block) is not { } expectation)
                {
                    continue;
                }

                if (found.Find(other => NameFolding.Fold(other.Name) == NameFolding.Fold(expectation.Name)) is { } first)
                {
                    context.Problems.Add(ExpectationProblems.Twice(block.Span, expectation.Name, first.Span));
                }

                found.Add(expectation);
            }
        }

        return found;
    }

    private static RecordExpectation? Bind(Context context, Block block)
    {
        if (block.Head is not ExpectationLine head)
        {
            return null;
        }

        var otherwise = block.First<ElseLine>();
        var kinds = otherwise is null ? null : context.Kinds(otherwise.Kinds);
        RecordExpectation? expectation = block.First<EveryComesLine>() is { } every ? Entries(context, every, otherwise)
            : block.First<RateLine>() is { } rate ? Rate(context, rate, otherwise)
            : null;
        if (!block.IsBroken && block.First<EveryComesLine>() is null && block.First<RateLine>() is null)
        {
            context.Problems.Add(ExpectationProblems.ExpectsNothing(block.Span));
        }

        if (!block.IsBroken && otherwise is null)
        {
            context.Problems.Add(ExpectationProblems.NoElse(block.Span));
        }

        var isBroken = block.IsBroken || expectation is null || kinds is null;
        return (expectation ?? new UnreadableExpectation { Name = "", Else = [], Span = block.Span }) with
        {
            Name = head.Name.Value,
            IsSafety = head.IsSafety,
            Else = kinds ?? [],
            Because = block.First<BecauseLine>()?.Reason.Value,
            Source = block.First<SourceLine>()?.Source.Value,
            IsBroken = isBroken,
            Span = block.Span,
        };
    }

    /// <summary>What a change of an expectation expects besides: lines that it does not state are those of what it changes.</summary>
    public static RecordExpectation Changed(Context context, Block block, RecordExpectation before, Stated stated)
    {
        var otherwise = block.First<ElseLine>();
        var kinds = otherwise is null ? before.Else : context.Kinds(otherwise.Kinds);
        var expectation = block.First<EveryComesLine>() is { } every ? Entries(context, every, otherwise) is { } entries ? AsBefore(entries, otherwise, before) : null
            : block.First<RateLine>() is { } rate ? Rate(context, rate, otherwise)
            : AsStated(context, before, otherwise);
        return (expectation ?? new UnreadableExpectation { Name = "", Else = [], Span = block.Span }) with
        {
            Name = before.Name,
            IsSafety = before.IsSafety,
            IsAdded = true,
            Else = kinds ?? before.Else,
            Because = stated.Because ?? before.Because,
            Source = stated.Source ?? before.Source,
            Agreement = stated.Agreement,
            IsBroken = block.IsBroken || expectation is null or { IsBroken: true } || kinds is null,
            Span = block.Span,
        };
    }

    private static EntryExpectation AsBefore(EntryExpectation entries, ElseLine? otherwise, RecordExpectation before) =>
        otherwise is null && before is EntryExpectation was ? entries with { ForHer = was.ForHer, OverPercent = was.OverPercent } : entries;

    private static RecordExpectation AsStated(Context context, RecordExpectation before, ElseLine? otherwise)
    {
        TellElse(context, otherwise, isOfEntries: before is EntryExpectation);
        return before is EntryExpectation entries && otherwise is not null
            ? entries with { ForHer = otherwise.ForHer, OverPercent = otherwise.Over?.Value ?? 0 }
            : before;
    }

    private static void TellElse(Context context, ElseLine? otherwise, bool isOfEntries)
    {
        if (isOfEntries && otherwise is { ForHer: false, Over: null })
        {
            context.Problems.Add(ExpectationProblems.HowMany(otherwise.Span));
        }
        else if (!isOfEntries && otherwise is ({ ForHer: true } or { Over: not null }))
        {
            context.Problems.Add(ExpectationProblems.RateOfHerd(otherwise.Span));
        }
    }

    private static EntryExpectation? Entries(Context context, EveryComesLine line, ElseLine? otherwise)
    {
        var (entry, from, to) = (context.Counted([line.Entry]), line.From is null ? new TimeLength(0, line.To.Unit) : context.Length(line.From), context.Length(line.To));
        ImmutableArray<NameSyntax> spells = [.. line.Others.Where(name => context.Names.Find(name.Text) is SpellSymbol)];
        var others = context.Counted([.. line.Others.Where(name => !spells.Contains(name))]);
        if (from is { } a && to is { } b && CountBinding.IsAbove(a, b))
        {
            context.Problems.Add(AmountProblems.Backwards(line.Span));
            return null;
        }

        TellElse(context, otherwise, isOfEntries: true);
        return entry is not [var every] || from is not { } near || to is not { } far || others is null ? null : new EntryExpectation
        {
            Name = "",
            Else = [],
            Span = line.Span,
            Every = every,
            IsBefore = line.Side == ComesSide.Before,
            From = near,
            To = far,
            Others = others.Value,
            Spells = [.. spells.Select(name => (context.Names.Find(name.Text) as SpellSymbol)?.Spell).OfType<Spell>()],
            ForHer = otherwise?.ForHer ?? false,
            OverPercent = otherwise?.Over?.Value ?? 0,
        };
    }

    private static RateExpectation? Rate(Context context, RateLine line, ElseLine? otherwise)
    {
        TellElse(context, otherwise, isOfEntries: false);
        if (line.Count.Value <= 0 || line.Cows.Value <= 0)
        {
            context.Problems.Add(ExpectationProblems.RateOfNothing(line.Span));
            return null;
        }

        return context.Kinds([line.Kind]) is not [var kind] ? null
            : new RateExpectation { Name = "", Else = [], Span = line.Span, Kind = kind, Count = line.Count.Value, Cows = line.Cows.Value };
    }
}
