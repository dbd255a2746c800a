namespace Byrelaw.Language.Binding.Words;

/// <summary>Binds all declarations of all files into one vocabulary.</summary>
internal sealed class VocabularyBinder
{
    private const string Mob = "mob";

    // `her mob` and `the herd` are no words by themselves.
    private static readonly FrozenSet<string> BuiltIn = FrozenSet.Create(StringComparer.Ordinal, Mob, "age", "parity", "birth", "cows", "heifers", "females");

    private readonly Namespace _names;
    private readonly List<Declared> _declared = [];
    private readonly Dictionary<string, Declared> _byName = new(StringComparer.Ordinal);
    private readonly List<(Syntax.NameSyntax Name, RuleFile File)> _unknown = [];
    private readonly Dictionary<SourceFile, RuleFile> _files;
    private readonly ImmutableArray<Kind>.Builder _kinds = ImmutableArray.CreateBuilder<Kind>();
    private readonly ImmutableArray<Fact>.Builder _facts = ImmutableArray.CreateBuilder<Fact>();
    private readonly List<(CallLine Line, RuleFile File)> _builtIn = [];
    private readonly List<(string Name, string BuiltIn, SourceSpan From)> _called = [];
    private readonly ImmutableArray<Spell>.Builder _spells = ImmutableArray.CreateBuilder<Spell>();

    private VocabularyBinder(Namespace names, IReadOnlyList<RuleFile> files)
    {
        _names = names;
        _files = files.ToDictionary(file => file.Source);
    }

    /// <summary>Declares every word in the namespace and builds the vocabulary.</summary>
    /// <param name="files">Each after those it uses.</param>
    /// <param name="names">Receives the names.</param>
    public static Vocabulary Bind(IReadOnlyList<RuleFile> files, Namespace names)
    {
        var binder = new VocabularyBinder(names, files);
        var mob = new EventKind(Mob, [.. Heads<CallLine>(files).Where(call => NameFolding.Fold(call.Line.Name.Text) == Mob).SelectMany(call => call.Line.Also.Names).Select(name => name.Text)], default) { Id = 0, IsMobMove = true };
        binder._kinds.Add(mob);
        names.Declare(mob.Name, default, new KindSymbol(mob, null));
        foreach (var (file, line) in Heads<DeclarationLine>(files))
        {
            binder.Collect(line, file);
        }

        foreach (var (file, line) in Heads<CallLine>(files))
        {
            binder.Call(line, file);
        }

        foreach (var (file, line) in Heads<AddDetailsLine>(files))
        {
            binder.Add(line, file);
        }

        foreach (var (file, line) in Heads<AddValuesLine>(files))
        {
            binder.Add(line, file);
        }

        foreach (var declared in binder._declared)
        {
            binder.Build(declared);
        }

        binder.CallBuiltIn();
        foreach (var (name, file) in binder._unknown)
        {
            var context = new Conditions.Context(names, file.Problems);
            file.Problems.Add(Conditions.NameBinding.NotFound(context, name, symbol => symbol is KindSymbol or FactSymbol, "an event, measure, test or fact, an answer, or a built-in name"));
        }

        foreach (var (file, line) in Heads<SpellLine>(files))
        {
            binder.Spell(line, file);
        }

        return new Vocabulary(binder._kinds.ToImmutable(), binder._facts.ToImmutable(), binder._spells.ToImmutable())
        {
            Called = [.. binder._called],
            Names = [.. binder._declared.SelectMany(binder.NamesOf)],
            Hints = [.. Heads<HintLine>(files).SelectMany(hint => binder.Hints(hint.Line, hint.File))],
        };
    }

    private static IEnumerable<(RuleFile File, T Line)> Heads<T>(IReadOnlyList<RuleFile> files) where T : HeadLine =>
        from file in files
        from line in file.Blocks.Select(block => block.Head).OfType<T>()
        select (file, line);

    private void Collect(DeclarationLine line, RuleFile file)
    {
        var declared = new Declared(line, file);
        declared.Also.AddRange(line.Clauses.OfType<AlsoClause>().SelectMany(clause => clause.Names));
        declared.DetailClauses.AddRange(line.Clauses.Where(clause => clause is DetailClause or BlankIsClause).Select(clause => (clause, file)));
        _declared.Add(declared);
        foreach (var name in declared.Also.Prepend(line.Name))
        {
            _byName.TryAdd(NameFolding.Fold(name.Text), declared);
        }
    }

    /// <summary>Names that another file gives to a declared word: what people say there.</summary>
    private void Call(CallLine line, RuleFile file)
    {
        if (_byName.TryGetValue(NameFolding.Fold(line.Name.Text), out var declared))
        {
            declared.Also.AddRange(line.Also.Names);
            return;
        }

        var name = NameFolding.Fold(line.Name.Text);
        if (BuiltIn.Contains(name))
        {
            _builtIn.Add((line, file));
            return;
        }

        // An answer is called so in every test that has it.
        var tests = _declared.Where(test => test.Clause<AnswersClause>() is { } answers && answers.Answers.Any(answer => NameFolding.Fold(answer.Text) == name)).ToList();
        tests.ForEach(test => test.AnswersAlso.AddRange(line.Also.Names.Select(also => (line.Name, also, file))));
        if (tests.Count == 0)
        {
            _unknown.Add((line.Name, file));
        }
    }

    /// <summary>Names for built-in words, once every declared name is there.</summary>
    private void CallBuiltIn()
    {
        foreach (var (line, file) in _builtIn)
        {
            var name = NameFolding.Fold(line.Name.Text);
            _called.AddRange(line.Also.Names.Where(also => Declare(also.Text, also.Span, _names.Find(name)!, file.Problems)).Select(also => (also.Text, name, also.Span)));
        }
    }

    /// <summary>Details that another file gives to a declared word: what is written down there.</summary>
    private void Add(AddDetailsLine line, RuleFile file)
    {
        if (!_byName.TryGetValue(NameFolding.Fold(line.Name.Text), out var declared))
        {
            _unknown.Add((line.Name, file));
        }
        else if (declared.Line.Kind == DeclarationKind.Fact)
        {
            file.Problems.Add(WordProblems.DetailOfFact(line.Name.Span, line.Name.Text));
        }
        else
        {
            declared.DetailClauses.AddRange(line.Clauses.Select(clause => (clause, file)));
        }
    }

    /// <summary>Values that another file gives to a fact. A test's answers stand with the test: what its rules count is one of them.</summary>
    private void Add(AddValuesLine line, RuleFile file)
    {
        if (!_byName.TryGetValue(NameFolding.Fold(line.Fact.Text), out var declared))
        {
            _unknown.Add((line.Fact, file));
        }
        else if (declared.Clause<OneOfClause>() is null)
        {
            file.Problems.Add(WordProblems.NoValuesToAddTo(line.Fact.Span, line.Fact.Text, declared.Line.Kind == DeclarationKind.Test));
        }
        else
        {
            declared.ValuesAdded.AddRange(line.Values.Select(value => (value, file)));
        }
    }

    private void Build(Declared declared)
    {
        var problems = declared.File.Problems;
        ClauseChecks.Check(declared, problems);
        if (Symbol(declared) is not { } symbol || !Declare(declared.Line.Name.Text, declared.Line.Name.Span, symbol, problems))
        {
            return;
        }

        if (symbol is FactSymbol { Fact: var newFact })
        {
            _facts.Add(newFact);
        }
        else if (symbol is KindSymbol { Kind: var newKind })
        {
            _kinds.Add(newKind);
        }

        foreach (var also in declared.Also)
        {
            Declare(also.Text, also.Span, symbol, _files[also.Span.File].Problems);
        }
    }

    private Symbol? Symbol(Declared declared)
    {
        var context = new Conditions.Context(_names, declared.File.Problems);
        if (declared.Line.Kind == DeclarationKind.Fact)
        {
            return FactBuilder.Build(declared, _facts.Count, context) is { } fact ? new FactSymbol(fact) : null;
        }

        return KindBuilder.Build(declared, _kinds.Count, context) is { } kind ? new KindSymbol(kind, kind.Declared) : null;
    }

    private bool Declare(string name, SourceSpan at, Symbol symbol, List<Diagnostic> problems)
    {
        var problem = _names.Declare(name, at, symbol);
        if (problem is not null)
        {
            problems.Add(problem);
        }

        return problem is null;
    }

    private void Spell(SpellLine line, RuleFile file)
    {
        var (from, until) = (Event(line.From, file), Event(line.Until, file));
        var male = line.WithMaleFrom is { } age ? new Conditions.Context(_names, file.Problems).Length(age) : null;
        var spell = from is null || until is null ? null : new Spell(line.Name.Text, from, until, line.Name.Span) { WithMaleFrom = male };
        if (spell is not null && spell.From == spell.Until)
        {
            file.Problems.Add(WordProblems.SameEventTwice(line.Until.Span, spell.From.Name));
            spell = null;
        }

        if (Declare(line.Name.Text, line.Name.Span, new SpellSymbol(line.Name.Text, line.Name.Span, spell), file.Problems) && spell is not null)
        {
            _spells.Add(spell);
        }
    }

    private IEnumerable<GivenName> NamesOf(Declared declared) =>
        _names.Find(declared.Line.Name.Text) is KindSymbol { Kind: var kind }
            ? declared.Also.Prepend(declared.Line.Name).Select(name => new GivenName(name.Text, kind, name.Span))
            : [];

    private IEnumerable<Hint> Hints(HintLine line, RuleFile file)
    {
        if (new Context(_names, file.Problems).Kinds([line.Kind]) is not [var kind])
        {
            return [];
        }

        return line.Words.Select(word => new Hint(word.Text, kind, word.Span));
    }

    private EventKind? Event(Syntax.NameSyntax name, RuleFile file)
    {
        if (_names.Find(name.Text) is KindSymbol { Kind: EventKind found })
        {
            return found;
        }

        var context = new Conditions.Context(_names, file.Problems);
        file.Problems.Add(Conditions.NameBinding.NotFound(context, name, symbol => symbol is KindSymbol { Kind: EventKind }, "an event"));
        return null;
    }
}
