namespace Byrelaw.Language.Binding.Conditions;

/// <summary>Looks names up where something that happens is wanted.</summary>
internal static class NameBinding
{
    /// <summary>Kinds after <c>last</c>; null where one of them is none.</summary>
    public static ImmutableArray<Kind>? Kinds(this Context context, ImmutableArray<NameSyntax> names)
    {
        var kinds = ImmutableArray.CreateBuilder<Kind>(names.Length);
        var isWhole = true;
        foreach (var name in names)
        {
            if (context.Names.Find(name.Text) is not KindSymbol found)
            {
                context.Problems.Add(context.NotFound(name.Named, symbol => symbol is KindSymbol, "an event, measure or test"));
                isWhole = false;
            }
            else if (context.Filtered(found.Kind, name) is not { } kind)
            {
                isWhole = false;
            }
            else if (!kinds.Contains(kind))
            {
                kinds.Add(kind);
            }
        }

        return isWhole ? kinds.ToImmutable() : null;
    }

    /// <summary>What a count counts: events, and answers of tests; null where one of them is neither.</summary>
    public static ImmutableArray<Counted>? Counted(this Context context, ImmutableArray<NameSyntax> names)
    {
        var counted = ImmutableArray.CreateBuilder<Counted>(names.Length);
        var isWhole = true;
        foreach (var name in names)
        {
            if (context.Counted(name) is not { } one)
            {
                isWhole = false;
            }
            else if (!counted.Contains(one))
            {
                counted.Add(one);
            }
        }

        return isWhole ? counted.ToImmutable() : null;
    }

    /// <summary>The problem with a name that means nothing, or nothing of the wanted sort.</summary>
    public static Diagnostic NotFound(this Context context, NameSyntax name, Func<Symbol, bool> wanted, string wantedWords) =>
        context.Names.Find(name.Text) is { } other
            ? NameProblems.WrongSort(name.Span, other, wantedWords)
            : NameProblems.Unknown(name.Span, name.Text, wantedWords, context.Names.Nearest(name.Text, wanted));

    private static Counted? Counted(this Context context, NameSyntax name)
    {
        switch (context.Names.Find(name.Text))
        {
            case KindSymbol { Kind: EventKind happened }:
                return context.Filtered(happened, name) is { } meant ? new Counted(meant) : null;
            case KindSymbol { Kind: TestKind test }:
                return context.Fail<Counted>(ConditionProblems.CountNeedsAnswer(name.Named.Span, test.Name, test.Answers));
            case null when context.AnswerOf(name) is var (test, answer):
                var place = test.PlaceOf(answer);
                return place >= 0
                    ? context.Filtered(test, name) is { } asked ? new Counted(asked, place) : null
                    : context.Fail<Counted>(NameProblems.NoSuchAnswer(name.Named.Span, answer, test.Name, test.Answers));
            default:
                return context.Fail<Counted>(context.NotFound(name.Named, symbol => symbol is KindSymbol { Kind: EventKind }, "an event, or an answer and its test"));
        }
    }

    /// <summary>Splits words into an answer and the test right after it. Where no test has the answer, the longest test's name is meant.</summary>
    private static (TestKind Test, string Answer)? AnswerOf(this Context context, NameSyntax name)
    {
        (TestKind, string)? meant = null;
        for (var space = name.Text.IndexOf(' ', StringComparison.Ordinal); space > 0; space = name.Text.IndexOf(' ', space + 1))
        {
            if (context.Names.Find(name.Text[(space + 1)..]) is KindSymbol { Kind: TestKind test })
            {
                var answer = name.Text[..space];
                if (test.PlaceOf(answer) >= 0)
                {
                    return (test, answer);
                }

                meant ??= (test, answer);
            }
        }

        return meant;
    }
}
