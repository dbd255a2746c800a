namespace Byrelaw.Language.Binding.Farm;

/// <summary>
/// The dates of the programme. Five names are always there, with or without a day, so that a
/// rule file reads without a programme too.
/// </summary>
internal sealed class ProgrammeDates
{
    public const string Collection = "collection";
    public const string FirstTreatment = "first treatment";
    public const string FirstTransfer = "first transfer";
    public const string FinalTransfer = "final transfer";
    public const string StartOfMating = "planned start of mating";

    private readonly Namespace _names;
    private readonly Context _context;
    private readonly List<ProgrammeDate> _set = [];

    private ProgrammeDates(Namespace names, List<Diagnostic> problems)
    {
        _names = names;
        _context = new Context(names, problems);
    }

    /// <summary>The dates that are set, earliest first.</summary>
    public IEnumerable<ProgrammeDate> Set => _set.OrderBy(date => date.Date).ThenBy(date => date.Name, StringComparer.Ordinal);

    /// <summary>The days of its collections.</summary>
    public CollectionDays Collections { get; private set; } = CollectionDays.None;

    /// <summary>Declares the dates that a programme sets.</summary>
    /// <param name="file">The farm's file.</param>
    /// <param name="block">Its programme; null for a rule file on its own.</param>
    /// <param name="names">Receives the names.</param>
    /// <param name="visits">When teams come.</param>
    /// <param name="holidays">Public holidays.</param>
    public static ProgrammeDates Declare(RuleFile file, Block? block, Namespace names, ImmutableArray<Visits> visits, ImmutableArray<Holiday> holidays)
    {
        var dates = new ProgrammeDates(names, file.Problems);
        if (block is null)
        {
            return dates;
        }

        if (block.First<CollectionLine>() is { } line)
        {
            dates.Collections = CollectionDays.Bind(dates._context, line, visits, block.First<RegionLine>()?.Region.Value, holidays);
            if (dates.Collections.First is { } first)
            {
                dates.Give(Collection, first, line.Span, null);
            }
        }

        var lines = block.Lines.OfType<DateLine>().Where(dates.Name).Select(date => (date.Name.Text, date.Day, date.Span, (TransferLine?)null))
            .Concat(block.Lines.OfType<TransferLine>().Select(transfer => (FirstTransfer, transfer.First, transfer.Span, (TransferLine?)transfer)));
        dates.Reckon([.. lines], block);
        if (block.First<CollectionLine>() is null && names.Find(Collection) is DateSymbol { Value: { } day })
        {
            dates.Collections = new CollectionDays(day, [day], null, null);
        }

        return dates;
    }

    /// <summary>Reckons the first treatment where the programme does not set it: it is the earliest day 0 of the methods that may be used, and moves with the transfers.</summary>
    /// <param name="aims">Of the programme.</param>
    /// <param name="plans">The methods.</param>
    public void ReckonFirstTreatment(Aims aims, PlanStatements plans)
    {
        if (_names.Find(FirstTreatment) is not DateSymbol { Value: null } || Value(FirstTransfer) is not { } first || Value(FinalTransfer) is not { } final)
        {
            return;
        }

        var window = HeatWindow.Of(aims, Value(Collection), first, final);
        var starts = aims.MethodsOf(plans).Where(method => !method.IsNatural).Select(method => (LocalDate?)window.StartOf(method));
        if (window.First is not null && starts.Min() is { } start)
        {
            var at = _set.Find(date => NameFolding.Fold(date.Name) == FirstTransfer)!.Span;
            Give(FirstTreatment, start, at, new DayReference(null, FirstTransfer, new TimeLength(Period.DaysBetween(start, first), TimeUnit.Days), true, at));
        }
    }

    private LocalDate? Value(string name) => (_names.Find(name) as DateSymbol)?.Value;

    /// <summary>Declares a date's name; false, and a problem, where it may not have that one.</summary>
    private bool Name(DateLine line)
    {
        var name = line.Name.Text;
        if (NameFolding.Fold(name).StartsWith("last ", StringComparison.Ordinal))
        {
            _context.Problems.Add(NameProblems.DateNameStartsWithLast(line.Name.Span));
            return false;
        }

        if (_names.Find(name) is DateSymbol { Declared: null })
        {
            return true;
        }

        if (_names.Declare(name, line.Name.Span, new DateSymbol(name, line.Name.Span, null)) is not { } problem)
        {
            return true;
        }

        _context.Problems.Add(problem);
        return false;
    }

    /// <summary>Gives every date its day, those first that the others are reckoned from.</summary>
    private void Reckon(List<(string Name, DayReferenceSyntax Day, SourceSpan Span, TransferLine? Transfer)> lines, Block block)
    {
        while (lines.FindIndex(line => IsKnown(line.Day)) is >= 0 and var next)
        {
            var (name, syntax, span, transfer) = lines[next];
            lines.RemoveAt(next);
            if (_context.Day(syntax) is { } day && On(day) is { } on)
            {
                var from = day.Name is null ? null : day;
                if (transfer is not null)
                {
                    Transfer(on, transfer.Over, span, from);
                }
                else
                {
                    Give(name, on, span, from);
                }
            }
        }

        foreach (var line in lines.Where(_ => !block.IsBroken))
        {
            var name = line.Day.Name!;
            _context.Problems.Add(_names.Find(name.Text) is DateSymbol symbol
                ? FarmProblems.DateNotSet(name.Span, symbol.Name)
                : _context.NotFound(name, symbol => symbol is DateSymbol, "a date of the programme"));
        }
    }

    private bool IsKnown(DayReferenceSyntax day) => day.Date is not null || _names.Find(day.Name!.Text) is DateSymbol { Value: not null };

    private LocalDate? On(DayReference day) => day.Date ?? (_names.Find(day.Name!) is DateSymbol { Value: { } from } ? day.From(from) : null);

    private void Transfer(LocalDate first, DurationSyntax? over, SourceSpan at, DayReference? from)
    {
        var days = over is null ? 1 : Days(over);
        if (days > 0)
        {
            Give(FirstTransfer, first, at, from);
            Give(FinalTransfer, first.PlusDays(days - 1), at, new DayReference(null, FirstTransfer, new TimeLength(days - 1, TimeUnit.Days), false, at));
        }
    }

    private int Days(DurationSyntax over)
    {
        if (over.Unit == TimeUnit.Days && over.Count.Value is >= 1 and <= 60 && over.Count.Value == Math.Floor(over.Count.Value))
        {
            return (int)over.Count.Value;
        }

        _context.Problems.Add(FarmProblems.NotDays(over.Span));
        return 0;
    }

    /// <summary>Gives a declared name its day.</summary>
    private void Give(string name, LocalDate day, SourceSpan at, DayReference? from)
    {
        if (_names.Find(name) is not DateSymbol symbol)
        {
            return;
        }

        if (symbol.Value is not null)
        {
            _context.Problems.Add(FarmProblems.DateTwice(at, symbol.Name));
            return;
        }

        _names.Replace(name, symbol with { Value = day });
        _set.Add(new ProgrammeDate(symbol.Name, day, at) { From = from });
    }
}
