namespace Byrelaw.Language.Binding.Examples;

/// <summary>Binds what is on record of an example's animal. Whether a number and its unit fit is left to the reader of records.</summary>
internal sealed class ExampleRecordBinder(Context context)
{
    private const int MostOfHerMob = 1000;
    private const string Parity = "parity";
    private const string Expected = "an event, measure, test, fact or date of the programme";

    private readonly Dictionary<string, SourceSpan> _said = new(StringComparer.Ordinal);

    /// <summary>In the order of writing.</summary>
    public List<ExampleRecord> Records { get; } = [];

    /// <summary>In the order of writing.</summary>
    public List<ExampleFact> Facts { get; } = [];

    /// <summary>In the order of writing.</summary>
    public List<ProgrammeDate> Dates { get; } = [];

    /// <summary>Binds every line that says such a thing.</summary>
    public void Bind(Block block)
    {
        foreach (var line in block.Lines)
        {
            switch (line)
            {
                case RecordedLine recorded:
                    Recorded(recorded);
                    break;
                case OfHerMobLine ofHerMob:
                    OfHerMob(ofHerMob);
                    break;
                case InMobLine inMob when context.Names.Find("mob") is KindSymbol { Kind: var move }:
                    Records.Add(new ExampleRecord(move, inMob.Since.Value, inMob.Mob.Text, "", 0, line.Span));
                    break;
                default:
                    break;
            }
        }
    }

    private void Recorded(RecordedLine line)
    {
        var (symbol, count) = Longest(line);
        var name = Joined(line, 0, count);
        var words = count < line.Words.Length ? Joined(line, count, line.Words.Length) : null;
        switch (symbol)
        {
            case DateSymbol date when line.IsOn && !line.Details.IsEmpty:
                context.Problems.Add(ExampleProblems.ValueNotTaken(line.Details[0].Span, date.Name, "a date of the programme, which has no details"));
                break;
            case DateSymbol date when line.IsOn && words is null:
                if (Once(date.Name, line.Span))
                {
                    Dates.Add(new ProgrammeDate(date.Name, line.Day!.Value, line.Span));
                }

                break;
            case KindSymbol { Kind: var kind } when !line.IsOn && words is null && line.Day is not null:
                Happened(kind, line, name);
                break;
            case KindSymbol { Kind: var kind } when line.Day is null:
                context.Problems.Add(ExampleProblems.RecordHasNoDay(name.Span, kind.Name));
                break;
            case FactSymbol { Fact: var fact } when !line.IsOn:
                Fact(fact.Name, fact, line, name, words);
                break;
            case BuiltInSymbol { Name: Parity } when !line.IsOn:
                Fact(Parity, null, line, name, words);
                break;
            default:
                context.Problems.Add(context.NotFound(
                    line.IsOn || symbol is not null ? Joined(line, 0, line.Words.Length) : name,
                    line.IsOn ? other => other is DateSymbol : other => other is KindSymbol or FactSymbol,
                    line.IsOn ? "a date of the programme" : Expected));
                break;
        }
    }

    private void Happened(Kind kind, RecordedLine line, NameSyntax name)
    {
        var value = line.Value;
        switch (kind)
        {
            case EventKind { IsMobMove: false } when value is not null:
                context.Problems.Add(ExampleProblems.ValueNotTaken(value.Span, kind.Name, "an event"));
                break;
            case TestKind test when value is not null && !IsPending(value) && test.PlaceOf(value.Text) < 0:
                context.Problems.Add(NameProblems.NoSuchAnswer(value.Span, value.Text, test.Name, test.Answers));
                break;
            case TestKind or MeasureKind when value is null:
                context.Problems.Add(ExampleProblems.NoValue(name.Span, kind.Name));
                break;
            default:
                Records.Add(new ExampleRecord(kind, line.Day!.Value, ValueOf(value), UnitOf(value), 0, line.Span) { Details = DetailsOf(kind, line) });
                break;
        }
    }

    private ImmutableArray<(string Detail, string Value)> DetailsOf(Kind kind, RecordedLine line)
    {
        var details = ImmutableArray.CreateBuilder<(string Detail, string Value)>(line.Details.Length);
        foreach (var said in line.Details)
        {
            var folded = NameFolding.Fold(said.Detail.Text);
            if (kind.Details.FirstOrDefault(one => NameFolding.Fold(one.Name) == folded) is not { } detail)
            {
                context.Problems.Add(FilterProblems.NoSuchDetail(said.Detail.Span, kind));
            }
            else if (details.Any(one => one.Detail == detail.Name))
            {
                context.Problems.Add(LineProblems.Twice(said.Span, detail.Name, line.Details.First(one => NameFolding.Fold(one.Detail.Text) == folded).Span));
            }
            else if (detail.Type == FactType.OneOf && !detail.Values.Any(one => NameFolding.Fold(one) == NameFolding.Fold(said.Value.Text)))
            {
                context.Problems.Add(NameProblems.NoSuchValue(said.Value.Span, said.Value.Text, detail.Name, detail.Values));
            }
            else
            {
                var unit = UnitOf(said.Value);
                details.Add((detail.Name, unit.Length > 0 ? $"{ValueOf(said.Value)} {unit}" : ValueOf(said.Value)));
            }
        }

        return details.ToImmutable();
    }

    private void OfHerMob(OfHerMobLine line)
    {
        var animals = line.Animals.Value;
        if (context.Names.Find(line.Measure.Text) is not KindSymbol { Kind: MeasureKind measure })
        {
            context.Problems.Add(context.NotFound(line.Measure, symbol => symbol is KindSymbol { Kind: MeasureKind }, "a measure"));
        }
        else if (animals != Math.Floor(animals) || animals is < 1 or > MostOfHerMob)
        {
            context.Problems.Add(ExampleProblems.NotACount(line.Animals.Span, MostOfHerMob));
        }
        else
        {
            Records.Add(new ExampleRecord(measure, line.Day.Value, ValueOf(line.Value), UnitOf(line.Value), (int)animals, line.Span));
        }
    }

    private void Fact(string name, Fact? fact, RecordedLine line, NameSyntax at, NameSyntax? words)
    {
        if (!line.Details.IsEmpty)
        {
            context.Problems.Add(ExampleProblems.ValueNotTaken(line.Details[0].Span, name, "a fact, which has no details"));
            return;
        }

        var isDate = fact?.Type == FactType.Date;
        var value = words?.Text ?? (isDate ? line.Day?.Span.Text : line.Day is null ? ValueOf(line.Value) : null);
        if (string.IsNullOrEmpty(value) || (line.Day is not null && !isDate))
        {
            context.Problems.Add(line.Day is null ? ExampleProblems.NoValue(at.Span, name) : ExampleProblems.ValueNotTaken(line.Day.Span, name, "a fact, which has no day"));
        }
        else if (words is not null && fact is { Type: FactType.OneOf } && !fact.Values.Any(one => NameFolding.Fold(one) == NameFolding.Fold(value)))
        {
            context.Problems.Add(NameProblems.NoSuchValue(words.Span, value, fact.Name, fact.Values));
        }
        else if (Once(name, line.Span))
        {
            var unit = UnitOf(line.Value);
            Facts.Add(new ExampleFact(name, unit.Length > 0 ? string.Create(CultureInfo.InvariantCulture, $"{value} {unit}") : value, line.Span));
        }
    }

    private bool Once(string name, SourceSpan at)
    {
        if (_said.TryAdd(name, at))
        {
            return true;
        }

        context.Problems.Add(LineProblems.Twice(at, name, _said[name]));
        return false;
    }

    /// <summary>What the longest run of words at the line's start means, and how many words that are; all of them where it means nothing.</summary>
    private (Symbol? Symbol, int Count) Longest(RecordedLine line)
    {
        for (var count = line.Words.Length; count > 0; count--)
        {
            if (context.Names.Find(Joined(line, 0, count).Text) is (KindSymbol or FactSymbol or DateSymbol or BuiltInSymbol { Name: Parity }) and { } symbol)
            {
                return (symbol, count);
            }
        }

        return (null, line.Words.Length);
    }

    private static NameSyntax Joined(RecordedLine line, int from, int to) =>
        new(string.Join(' ', line.Words[from..to].Select(word => word.Text))) { Span = line.Words[from].Span.To(line.Words[to - 1].Span) };

    private static bool IsPending(RecordedValueSyntax value) => NameFolding.Fold(value.Text) == "pending";

    private static string ValueOf(RecordedValueSyntax? value) => value is null ? "" : value.Bound + value.Text;

    private static string UnitOf(RecordedValueSyntax? value) => value?.Unit?.Text ?? "";
}
