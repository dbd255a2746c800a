namespace Byrelaw.Judging.Explaining;

/// <summary>
/// Where criteria write down what they found while they decide about one animal. There is no second
/// way to explain an answer: these are the notes of the code that gave it.
/// </summary>
internal sealed partial class Notes(HerdDays days, int animal)
{
    private readonly List<Evidence> _evidence = [];
    private readonly List<Missing> _missing = [];
    private Found _found = new FoundNothing();
    private double? _margin;
    private Remedy? _remedy;

    /// <summary>Starts the notes of one condition.</summary>
    public void Begin()
    {
        _evidence.Clear();
        _missing.Clear();
        _found = new FoundNothing();
        _margin = null;
        _remedy = null;
    }

    /// <summary>Ends the notes of one condition with its answer.</summary>
    public void Close(Condition condition, Truth truth)
    {
        var isUnwanted = truth == (_isInverted ? Truth.True : Truth.False);
        _findings.Add(new Finding
        {
            Condition = condition,
            Through = [.. _through],
            Truth = truth,
            Inverted = _isInverted,
            Decides = true,
            Found = _found,
            Margin = _margin,
            Evidence = [.. _evidence.OrderBy(evidence => evidence.Date ?? LocalDate.MinIsoValue).ThenBy(evidence => evidence.Line)],
            Missing = truth == Truth.Unknown ? [.. _missing] : [],
            Remedy = isUnwanted ? _remedy : null,
        });
        _nodes.Add(new TreeNode(truth, isUnwanted && _remedy?.Kind == RemedyKind.ForGood, _findings.Count - 1,
            truth == Truth.Unknown ? Enough<Missing>.All(_missing.Select(OneThing)) : Enough<Missing>.None, isUnwanted && _remedy is not null ? Enough<Remedy>.All([_remedy]) : Enough<Remedy>.None));
    }

    /// <summary>The record that is to be got: one result of a test may be what several conditions ask for, each on its days and by its method.</summary>
    public static Missing OneThing(Missing missing) => missing.Reason == MissingReason.NoResult ? missing with { From = null, To = null, Filter = "" } : missing;

    /// <summary>The records noted since <see cref="Begin"/>.</summary>
    public ImmutableArray<Evidence> Evidence => [.. _evidence];

    /// <summary>What is missing, noted since <see cref="Begin"/>.</summary>
    public ImmutableArray<Missing> MissingSoFar => [.. _missing];

    /// <summary>What was found, noted since <see cref="Begin"/>.</summary>
    public Found FoundSoFar => _found;

    public void Nothing() => _found = new FoundNothing();

    public void Never() => _found = new FoundNever();

    public void Text(string text) => _found = new FoundText(text);

    public void Remedy(Remedy remedy) => _remedy = remedy;

    public void Count(int least, int? most, Limits limits)
    {
        _found = new FoundCount(least, most);
        _margin = least == most ? limits.Margin(least) : null;
    }

    public void Chain(int least, int? most) => _found = new FoundCount(least, most);

    public void Number(double low, double high, string? unit, int? day, int from, Limits limits)
    {
        _found = new FoundNumber(low, high, unit, day is { } d ? Day.Date(d) : null, from);
        _margin = low == high && limits.Margin(low) is var margin && double.IsFinite(margin) ? margin : null;
    }

    public void Since(int last, int day, TimeTest test)
    {
        var elapsed = Elapsed(last, day, test.Low.Unit);
        _found = new FoundSince(Day.Date(last), elapsed);
        _margin = Limits.Of(test.Comparison, test.Low.Count, test.High.Count).Margin(elapsed.Count);
    }

    public void Age(int animalPlace, int earliest, int latest, int day, TimeTest test)
    {
        var youngest = Elapsed(latest, day, test.Low.Unit);
        var oldest = Elapsed(earliest, day, test.Low.Unit);
        var born = earliest == latest ? ValueText.WriteDay(earliest) : $"{ValueText.WriteDay(earliest)} to {ValueText.WriteDay(latest)}";
        Fact(animalPlace, "born", born);
        _found = new FoundAge(youngest, oldest);
        _margin = youngest == oldest
            ? Limits.Of(test.Comparison, test.Low.Count, test.High.Count).Margin(oldest.Count)
            : null;
    }

    public void Answers(ImmutableArray<string?> answers, int day) => _found = new FoundAnswers(answers, Day.Date(day));

    public void Spell(int? day) => _found = new FoundSpell(day is { } d ? Day.Date(d) : null);

    public void Standing(int greater, int noValue, int of, double value) => _found = new FoundStanding(greater, noValue, of, value);

    /// <summary>Notes the records of an anchor: every entry of its kinds on that day.</summary>
    public void Event(int animalPlace, int[] kinds, int day)
    {
        foreach (var kind in kinds)
        {
            var run = days.Herd.Runs[kind];
            for (var i = Runs.LastAtMost(run, animalPlace, day); i >= run.Starts[animalPlace] && run.Days[i] == day; i--)
            {
                Entry(kind, i);
            }
        }
    }

    /// <summary>Notes one entry of a kind's run.</summary>
    public void Entry(int kind, int place)
    {
        var run = days.Herd.Runs[kind];
        var declared = days.Herd.Vocabulary.ById[kind].Declaration;
        var value = declared switch
        {
            MeasureKind measure => ValueText.WriteResult(run.Low[place], run.High[place], measure.Unit?.Symbol) ?? Unsettled,
            TestKind test => run.Answers[place] == KindRun.NotKnown ? Unsettled : test.Answers[run.Answers[place]],
            _ => null,
        };
        var at = days.Herd.EventPlace(run.Lines[place]);
        Add(new Evidence(declared, null, Day.Date(run.Days[place]), value, at.File, at.Line)
        {
            Cell = at.Cell,
            Details = DetailText.Of(days.Herd, declared, run.Lines[place]),
        });
    }

    /// <summary>Notes a row about joining or leaving, or of a mob.</summary>
    public void Row(int kind, int day, int line, string? value = null)
    {
        var at = days.Herd.EventPlace(line);
        var declared = kind < 0 ? null : days.Herd.Vocabulary.ById[kind].Declaration;
        Add(new Evidence(declared, null, Day.Date(day), value, at.File, at.Line) { Details = declared is null ? null : DetailText.Of(days.Herd, declared, line), Cell = at.Cell });
    }

    /// <summary>Notes which mob she is in, and what says so: her latest move, or the column.</summary>
    public void Stay(int animalPlace, int stay)
    {
        var mobs = days.Herd.Mobs;
        var (name, move) = (mobs.Names[mobs.Mob[stay]], days.Herd.Vocabulary.MobMove);
        if (mobs.Lines[stay] > 0)
        {
            Row(move.Id, mobs.From[stay], mobs.Lines[stay], name);
        }
        else
        {
            Fact(animalPlace, move.Name, name);
        }

        Text(name);
    }

    /// <summary>Notes the row about a mob or the herd that stands on a line.</summary>
    public void MobRow(int line)
    {
        foreach (var row in days.Herd.MobRows.Spells)
        {
            if (row.Line == line)
            {
                Row(row.Kind, row.Day, line, row.Mob == MobStays.NotKnown ? null : days.Herd.Mobs.Names[row.Mob]);
                return;
            }
        }
    }

    /// <summary>Notes a cell of the animals' file.</summary>
    public void Fact(int animalPlace, string fact, string value)
    {
        var at = days.Herd.AnimalPlace(days.Herd.AnimalLines[animalPlace]);
        Add(new Evidence(null, fact, null, value, at.File, at.Line));
    }

    /// <summary>In place of a result that is not known.</summary>
    public const string Unsettled = "result not known";

    private static TimeLength Elapsed(int from, int to, TimeUnit unit)
    {
        var (a, b) = (Day.Date(Math.Min(from, to)), Day.Date(Math.Max(from, to)));
        var count = unit switch
        {
            TimeUnit.Days => to - from,
            TimeUnit.Weeks => (to - from) / 7,
            TimeUnit.Months => Period.Between(a, b, PeriodUnits.Months).Months,
            _ => Period.Between(a, b, PeriodUnits.Years).Years,
        };
        return new TimeLength(Math.Max(count, 0), unit);
    }

    private void Add(Evidence evidence)
    {
        if (!_evidence.Contains(evidence))
        {
            _evidence.Add(evidence);
        }
    }
}
