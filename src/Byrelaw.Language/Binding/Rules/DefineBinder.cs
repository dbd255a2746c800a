namespace Byrelaw.Language.Binding.Rules;

/// <summary>Declares defines, orders them so that each stands after those it uses, and binds them.</summary>
internal static class DefineBinder
{
    private const int Deepest = 64;

    /// <summary>Puts the names of all defines into the namespace.</summary>
    public static List<DefineEntry> Declare(IReadOnlyList<RuleFile> files, Namespace names)
    {
        var entries = new List<DefineEntry>();
        foreach (var file in files)
        {
            foreach (var block in file.Blocks)
            {
                if (block.Head is DefineLine { Name: var name })
                {
                    var entry = new DefineEntry(name.Text, block, file) { IsBroken = block.IsBroken };
                    if (FloorText.Keeps(name.Text) && !FloorText.Is(file.Source))
                    {
                        file.Problems.Add(FloorProblems.NameKept(name.Span, name.Text));
                        entry.IsBroken = true;
                    }

                    if (names.Declare(name.Text, name.Span, new DefineSymbol(entry)) is { } problem)
                    {
                        file.Problems.Add(problem);

                        // Nobody can tell which of the two a rule means.
                        if (names.Find(name.Text) is DefineSymbol { Entry: var other })
                        {
                            other.IsBroken = true;
                        }
                    }
                    else
                    {
                        entries.Add(entry);
                    }
                }
            }
        }

        return entries;
    }

    /// <summary>Orders and binds; the result is in the rulebook's order.</summary>
    /// <param name="entries">As declared.</param>
    /// <param name="names">What they speak of.</param>
    /// <param name="before">Those that stand before them in the rulebook, bound already.</param>
    public static List<DefineEntry> Bind(List<DefineEntry> entries, Namespace names, IReadOnlyList<DefineEntry>? before = null)
    {
        foreach (var entry in entries)
        {
            entry.Uses.AddRange(Used(entry.Block, names).Distinct());
        }

        var ordered = DefineOrder.Of(entries);
        List<DefineEntry> all = [.. before ?? [], .. ordered];
        foreach (var entry in ordered)
        {
            entry.Index += all.Count - ordered.Count;
        }

        foreach (var entry in ordered)
        {
            Bind(entry, all, names);
        }

        return all;
    }

    private static void Bind(DefineEntry entry, List<DefineEntry> ordered, Namespace names)
    {
        var context = new Context(names, entry.File.Problems);
        var condition = context.Condition(entry.Block);
        if (condition is null && !entry.Block.IsBroken)
        {
            context.Problems.Add(RuleProblems.NoCondition(entry.Span, "define"));
        }

        if (entry.Depth > Deepest)
        {
            context.Problems.Add(NameProblems.ChainTooDeep(entry.Span, entry.Name, Deepest));
        }

        entry.Condition = condition ?? new BrokenCondition { Span = entry.Span };
        entry.IsBroken = entry.IsBroken || entry.Depth > Deepest || BrokenConditions.IsBroken(entry.Condition, ordered);
    }

    private static IEnumerable<DefineEntry> Used(Block block, Namespace names)
    {
        foreach (var line in block.Lines)
        {
            var condition = line switch
            {
                ConditionLine { Condition: var single } => single,
                BulletLine { Condition: var item } => item,
                _ => null,
            };
            if (condition is NamedSyntax { Name: var name } && names.Find(name.Text) is DefineSymbol { Entry: var entry })
            {
                yield return entry;
            }
        }
    }
}
