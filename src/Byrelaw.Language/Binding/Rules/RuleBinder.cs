namespace Byrelaw.Language.Binding.Rules;

/// <summary>Binds the rules and preferences of all files, before any layer changes them.</summary>
internal sealed class RuleBinder(Namespace names, IReadOnlyList<DefineEntry> defines)
{
    // Where hundreds of names are unknown a file is missing, not a letter; and no file may take long to read.
    private const int MostSearches = 300;

    private int _searches;
    private readonly Dictionary<string, RuleEntry> _byName = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (string Name, SourceSpan Span)> _lists = new(StringComparer.Ordinal);

    /// <summary>Rules and preferences in the order of reading.</summary>
    public List<RuleEntry> Entries { get; } = [];

    /// <summary>Lines that may have been rules.</summary>
    public List<BrokenPart> Broken { get; } = [];

    /// <summary>The lists that there are rules for, by declared spelling.</summary>
    public IReadOnlyCollection<(string Name, SourceSpan Span)> Lists => _lists.Values;

    /// <summary>Whether there are rules for every list.</summary>
    public bool HasRulesForEveryList { get; private set; }

    /// <summary>The rule or preference with a name; null where there is none.</summary>
    public RuleEntry? Find(string name) => _byName.GetValueOrDefault(NameFolding.Fold(name));

    /// <summary>The rule or preference whose name is nearest to one that nobody has; null where none is near.</summary>
    public (string Name, SourceSpan Span)? Nearest(string name) =>
        _searches++ < MostSearches && NearestName.To(name, _byName.Select(entry => (entry.Key, entry.Value.Name))) is { } near ? (near, Find(near)!.Span) : null;

    /// <summary>The declared spelling of a list that there are rules for; null where there is none.</summary>
    public string? FindList(string name) => _lists.TryGetValue(NameFolding.Fold(name), out var list) ? list.Name : null;

    /// <summary>Binds one file; files come after those they use. What was agreed after <paramref name="knownOn"/> does not exist.</summary>
    public void Bind(RuleFile file, LocalDate? knownOn)
    {
        string? list = null;
        var isListUnreadable = false;
        var context = new Context(names, file.Problems);
        foreach (var block in file.Blocks)
        {
            switch (block.Kind)
            {
                case BlockKind.RulesFor:
                    list = block.Head is RulesForLine head ? List(head) : null;
                    isListUnreadable = list is null;
                    if (isListUnreadable)
                    {
                        Broken.Add(new BrokenPart(null, block.Span));
                    }

                    break;
                case BlockKind.Rule or BlockKind.Prefer:
                    Bind(context, file, block, list, knownOn, isListUnreadable);
                    break;
                case BlockKind.Define when block.Head is null:
                    context.TellProblems(block);
                    break;
                case BlockKind.Use when block.Head is null:
                    Broken.Add(new BrokenPart(null, block.Span));
                    break;
                case BlockKind.Unreadable:
                    context.TellProblems(block);
                    // `rules for` has no lines below it: where lines follow, it was not that, and the list is still the one above.
                    Broken.Add(new BrokenPart(block.HasBody ? list : null, block.Span));
                    break;
                default:
                    break;
            }
        }
    }

    private string List(RulesForLine head)
    {
        var folded = NameFolding.Fold(head.List.Text);
        if (folded == Rulebooks.Rule.EveryList)
        {
            HasRulesForEveryList = true;
            return Rulebooks.Rule.EveryList;
        }

        if (!_lists.TryGetValue(folded, out var list))
        {
            _lists[folded] = list = (head.List.Text, head.List.Span);
        }

        return list.Name;
    }

    private void Bind(Context context, RuleFile file, Block block, string? list, LocalDate? knownOn, bool isListUnreadable)
    {
        var stated = Stated.Bind(context, block, defines);
        if (block.Head is null)
        {
            if (block.Kind == BlockKind.Rule)
            {
                Broken.Add(new BrokenPart(list, block.Span));
            }

            return;
        }

        if (list is null)
        {
            if (!isListUnreadable)
            {
                context.Problems.Add(RuleProblems.NoList(block.Span));
            }

            Broken.Add(new BrokenPart(null, block.Span));
            return;
        }

        var entry = block.Head is RuleLine rule ? Rule(context, file, block, rule, stated, list) : Prefer(context, file, block, (PreferLine)block.Head, stated, list);
        if (_byName.TryGetValue(NameFolding.Fold(entry.Name), out var first))
        {
            context.Problems.Add(RuleProblems.NameTaken(block.Span, entry.Name, first.Span));
            Broken.Add(new BrokenPart(list, block.Span));
            return;
        }

        if (FloorText.Keeps(entry.Name) && !FloorText.Is(file.Source))
        {
            context.Problems.Add(FloorProblems.NameKept(block.Head.Span, entry.Name));
            entry.Break();
        }

        var exists = !(stated.Agreement?.On > knownOn);
        _byName[NameFolding.Fold(entry.Name)] = entry;
        entry.Exists = exists;
        if (exists)
        {
            Entries.Add(entry);
        }
    }

    private static RuleEntry Rule(Context context, RuleFile file, Block block, RuleLine head, Stated stated, string list)
    {
        var passes = head.IsSafety && stated.IfNotKnown == IfNotKnown.Pass;
        if (passes)
        {
            context.Problems.Add(RuleProblems.SafetyPasses(block.First<IfNotKnownLine>()!.Span));
        }

        var isLeft = head.IsSafety && stated.OnTheDay;
        if (isLeft)
        {
            context.Problems.Add(SafetyProblems.OnTheDay(block.First<OnTheDayLine>()!.Span));
        }

        TellMissing(context, block, stated, "rule", () => RuleProblems.NoNeeds(block.Span));
        return new RuleEntry(head.Name.Value, file, block.Span)
        {
            Rule = new Rule
            {
                Name = head.Name.Value,
                List = list,
                IsSafety = head.IsSafety,
                OnTheDay = stated.OnTheDay && !isLeft,
                Audience = stated.AppliesTo?.Audience ?? Audience.Everyone,
                AppliesTo = stated.AppliesTo?.Define,
                Needs = stated.Condition ?? new BrokenCondition { Span = block.Span },
                IfNotKnown = passes ? IfNotKnown.Ask : stated.IfNotKnown ?? IfNotKnown.Ask,
                Because = stated.Because,
                Source = stated.Source,
                Agreement = stated.Agreement,
                Basis = file.IsRoot ? Basis.Local : Basis.Base,
                IsBroken = stated.IsBroken || stated.Condition is null || passes || isLeft,
                Span = block.Span,
            },
        };
    }

    private static RuleEntry Prefer(Context context, RuleFile file, Block block, PreferLine head, Stated stated, string list)
    {
        TellMissing(context, block, stated, "preference", () => RuleProblems.NoCondition(block.Span, "prefer"));
        return new RuleEntry(head.Name.Value, file, block.Span)
        {
            Prefer = new Prefer
            {
                Name = head.Name.Value,
                List = list,
                Condition = stated.Condition ?? new BrokenCondition { Span = block.Span },
                Counts = stated.Counts ?? 1,
                Because = stated.Because,
                Source = stated.Source,
                Agreement = stated.Agreement,
                Basis = file.IsRoot ? Basis.Local : Basis.Base,
                IsBroken = stated.IsBroken || stated.Condition is null,
                Span = block.Span,
            },
        };
    }

    private static void TellMissing(Context context, Block block, Stated stated, string what, Func<Diagnostic> noCondition)
    {
        // A line that could not be read may have been the one that is missing.
        if (block.IsBroken)
        {
            return;
        }

        if (stated.Condition is null)
        {
            context.Problems.Add(noCondition());
        }

        if (stated.Because is null)
        {
            context.Problems.Add(RuleProblems.NoBecause(block.Span, what));
        }
    }
}
