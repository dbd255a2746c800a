using Byrelaw.Language.Binding.Conditions;
using Byrelaw.Language.Blocks;
using Byrelaw.Language.Diagnostics;
using Byrelaw.Language.Reading;
using Byrelaw.Language.Rulebooks;
using Byrelaw.Language.Rulebooks.Words;
using Byrelaw.Language.Sources;
using Byrelaw.Language.Syntax;
using Byrelaw.Language.Syntax.Lines;
using NodaTime;

namespace Byrelaw.Language.Binding.Farm;

/// <summary>
/// The dates of the programme. Three names are always there, with or without a day, so that a
/// rule file reads without a programme too.
/// </summary>
internal sealed class ProgrammeDates
{
    public const string Collection = "collection";
    public const string FirstTransfer = "first transfer";
    public const string FinalTransfer = "final transfer";

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

    /// <summary>Declares the dates that a programme sets.</summary>
    /// <param name="file">The farm's file.</param>
    /// <param name="block">Its programme; null for a rule file on its own.</param>
    /// <param name="names">Receives the names.</param>
    public static ProgrammeDates Declare(RuleFile file, Block? block, Namespace names)
    {
        var dates = new ProgrammeDates(names, file.Problems);
        foreach (var line in block?.Lines ?? [])
        {
            switch (line)
            {
                case CollectionLine collection:
                    dates.Give(Collection, collection.Day.Value, collection.Span);
                    break;
                case DateLine date:
                    dates.Name(date);
                    break;
                default:
                    break;
            }
        }

        foreach (var transfer in block?.Lines.OfType<TransferLine>() ?? [])
        {
            dates.Transfer(transfer, block!);
        }

        return dates;
    }

    private void Name(DateLine line)
    {
        var name = line.Name.Text;
        if (NameFolding.Fold(name).StartsWith("last ", StringComparison.Ordinal))
        {
            _context.Problems.Add(NameProblems.DateNameStartsWithLast(line.Name.Span));
        }
        else if (_names.Find(name) is DateSymbol { Declared: null })
        {
            Give(name, line.Day.Value, line.Span);
        }
        else if (_names.Declare(name, line.Name.Span, new DateSymbol(name, line.Name.Span, line.Day.Value)) is { } problem)
        {
            _context.Problems.Add(problem);
        }
        else
        {
            _set.Add(new ProgrammeDate(name, line.Day.Value, line.Span));
        }
    }

    private void Transfer(TransferLine line, Block block)
    {
        if (First(line, block) is not { } first)
        {
            return;
        }

        var days = line.Over is null ? 1 : Days(line.Over);
        if (days > 0)
        {
            Give(FirstTransfer, first, line.Span);
            Give(FinalTransfer, first.PlusDays(days - 1), line.Span);
        }
    }

    private LocalDate? First(TransferLine line, Block block)
    {
        if (line.Day is not null)
        {
            return line.Day.Value;
        }

        var length = _context.Length(line.Wait!);
        if (_names.Find(line.After!.Text) is not DateSymbol after)
        {
            return _context.None<LocalDate>(_context.NotFound(line.After, symbol => symbol is DateSymbol, "a date of the programme"));
        }

        if (after.Value is null && !block.IsBroken)
        {
            return _context.None<LocalDate>(FarmProblems.DateNotSet(line.After.Span, after.Name));
        }

        return length is { } wait && after.Value is { } day ? wait.After(day) : null;
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

    /// <summary>Gives one of the three names its day.</summary>
    private void Give(string name, LocalDate day, SourceSpan at)
    {
        var symbol = (DateSymbol)_names.Find(name)!;
        if (symbol.Value is not null)
        {
            _context.Problems.Add(FarmProblems.DateTwice(at, symbol.Name));
            return;
        }

        _names.Replace(name, symbol with { Value = day });
        _set.Add(new ProgrammeDate(symbol.Name, day, at));
    }
}
