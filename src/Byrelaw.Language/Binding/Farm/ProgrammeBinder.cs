namespace Byrelaw.Language.Binding.Farm;

/// <summary>Binds a programme's choices.</summary>
internal sealed class ProgrammeBinder(Conditions.Context context, RuleBinder rules, Block block, bool isFloorLaid)
{
    private readonly List<Choice> _choices = [];

    /// <summary>The programme; null where its first line could not be read.</summary>
    public Programme? Bind(ProgrammeDates dates, Aims aims)
    {
        foreach (var line in block.Lines.OfType<ChooseLine>())
        {
            Choose(line);
        }

        LayFloor();
        Prepared();
        if (aims.Sessions > 1 && dates.Set.FirstOrDefault(date => NameFolding.Fold(date.Name) == "first treatment") is { From: null } still && _choices.Exists(choice => choice.FromDate == still.Name))
        {
            context.Problems.Add(AimProblems.TreatmentStandsStill(still.Span, aims.Sessions));
        }

        if (!block.IsBroken && !block.Lines.Exists(line => line is ChooseLine))
        {
            context.Problems.Add(FarmProblems.ChoosesNothing(block.Span));
        }

        return block.Head is ProgrammeLine head ? new Programme(head.Name.Value, [.. dates.Set], [.. _choices], block.Span) { Aims = aims } : null;
    }

    private void Choose(ChooseLine line)
    {
        var list = List(line.List);
        if (_choices.Exists(choice => NameFolding.Fold(choice.List) == NameFolding.Fold(list)))
        {
            context.Problems.Add(FarmProblems.ChosenTwice(line.List.Span, list));
            return;
        }

        var use = Use(line, list);
        var from = From(line, use);
        var (first, last) = (Day(line.First), line.Last is null ? null : Day(line.Last));
        if (from is not { } source || first is not { } start || (line.Last is not null && last is null))
        {
            return;
        }

        if (last < start)
        {
            context.Problems.Add(FarmProblems.JudgedBackwards(line.First.Span.To(line.Last!.Span)));
            return;
        }

        _choices.Add(new Choice(list, source.From, Animals(line.Animals), source.Other, start, last ?? start, line.Span)
        {
            FromDate = NameOf(line.First),
            ToDate = line.Last is null ? null : NameOf(line.Last),
            Use = use,
        });
    }

    /// <summary>Where the files have no words for the floor, nobody on a list with a floor is let through.</summary>
    private void LayFloor()
    {
        if (isFloorLaid)
        {
            return;
        }

        var isTold = false;
        foreach (var line in block.Lines.OfType<ChooseLine>())
        {
            if (_choices.Find(choice => choice.Span == line.Span) is { HasFloor: true } choice)
            {
                rules.Broken.Add(new BrokenPart(choice.List, line.Span));
                if (!isTold)
                {
                    TellLacking(line, choice.List);
                    isTold = true;
                }
            }
        }
    }

    private void TellLacking(ChooseLine line, string list)
    {
        var lacking = FloorWords.Lacking(context.Names).ToList();
        var missing = lacking.Where(word => word.Wanting is null).ToList();
        if (missing.Count > 0)
        {
            context.Problems.Add(FloorProblems.NoWords(line.List.Span, list, [.. missing.Select(word => word.Name)], [.. missing.Select(word => word.Line)]));
        }

        // The word may stand in another file; the list that it leaves without a floor stands here.
        foreach (var word in lacking.Where(word => word.Wanting is not null))
        {
            context.Problems.Add(FloorProblems.CarelessWord(ReferenceEquals(word.Wanting!.Value.File, line.Span.File) ? word.Wanting.Value : line.List.Span, word.Name, word.Line));
        }
    }

    /// <summary>A method that makes animals ready needs a list with a floor; until it has one, nobody on it is let through.</summary>
    private void Prepared()
    {
        foreach (var line in block.Lines.Where(line => line is PrepareLine or BookingLine))
        {
            var name = line is PrepareLine { IsForDonors: true } ? "donors" : "recipients";
            if (_choices.Find(choice => NameFolding.Fold(choice.List) == name) is { HasFloor: false } choice)
            {
                context.Problems.Add(FloorProblems.PreparedFromIt(line.Span, choice.List, choice.Use));
                rules.Broken.Add(new BrokenPart(choice.List, line.Span));
            }
        }

        if (block.First<EmbryosLine>() is { Origin: EmbryoOrigin.Flushed } flushed && _choices.Find(choice => choice.Use == ListUse.NothingGiven) is { } collected)
        {
            context.Problems.Add(FloorProblems.PreparedFromIt(flushed.Span, collected.List, collected.Use));
            rules.Broken.Add(new BrokenPart(collected.List, flushed.Span));
        }
    }

    private ListUse Use(ChooseLine line, string list)
    {
        if (line.Use is { Use: ListUse.NothingGiven } use && NameFolding.Fold(list) != "donors")
        {
            context.Problems.Add(FloorProblems.NothingGivenElsewhere(use.Span, list));
            return ListUse.HormoneOrEmbryo;
        }

        return line.Use?.Use ?? ListUse.HormoneOrEmbryo;
    }

    private string? NameOf(DateReferenceSyntax day) => day.Name is { } name ? (context.Names.Find(name.Text) as DateSymbol)?.Name : null;

    /// <summary>The list's declared spelling. A list without rules would let everyone through: it is broken.</summary>
    private string List(NameSyntax name)
    {
        if (rules.FindList(name.Text) is { } list)
        {
            return list;
        }

        if (rules.HasRulesForEveryList && NameFolding.Fold(name.Text) != Rule.EveryList)
        {
            return name.Text;
        }

        var near = NearestName.To(name.Text, rules.Lists.Select(other => other.Name));
        context.Problems.Add(FarmProblems.NoRulesFor(name.Span, name.Text, near is null ? null : rules.Lists.First(other => other.Name == near)));
        rules.Broken.Add(new BrokenPart(name.Text, name.Span));
        return name.Text;
    }

    private (ChoiceFrom From, string? Other)? From(ChooseLine line, ListUse use)
    {
        if (line.From is not { } name)
        {
            return (ChoiceFrom.Named, null);
        }

        var folded = NameFolding.Fold(name.Text);
        var other = _choices.Find(choice => NameFolding.Fold(choice.List) == folded);
        if (other is { HasFloor: false } && (other.Use == ListUse.NothingGiven || use != ListUse.ForLookingOnly))
        {
            context.Problems.Add(FloorProblems.DrawnFromIt(name.Span, other.List, other.Use));
        }

        return folded switch
        {
            "females" => (ChoiceFrom.Females, null),
            "cows" => (ChoiceFrom.Cows, null),
            "heifers" => (ChoiceFrom.Heifers, null),
            _ when other is not null => (ChoiceFrom.AnotherList, other.List),
            _ => context.None<(ChoiceFrom, string?)>(FarmProblems.NotAList(name.Span, name.Text)),
        };
    }

    private ImmutableArray<string> Animals(ImmutableArray<TextSyntax> written)
    {
        var animals = new List<string>();
        foreach (var animal in written)
        {
            if (animals.Contains(animal.Value))
            {
                context.Problems.Add(FarmProblems.AnimalTwice(animal.Span));
            }
            else
            {
                animals.Add(animal.Value);
            }
        }

        return [.. animals];
    }

    private LocalDate? Day(DateReferenceSyntax date)
    {
        if (date.Date is { } day)
        {
            return day.Value;
        }

        var name = date.Name!;
        if (context.Names.Find(name.Text) is not DateSymbol found)
        {
            return context.None<LocalDate>(Conditions.NameBinding.NotFound(context, name, symbol => symbol is DateSymbol, "a date of the programme"));
        }

        return found.Value is null && !block.IsBroken ? context.None<LocalDate>(FarmProblems.DateNotSet(name.Span, found.Name)) : found.Value;
    }
}
