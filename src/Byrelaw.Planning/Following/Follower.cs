namespace Byrelaw.Planning.Following;

/// <summary>Goes by the transfers on record: each recipient's own dates, and what is known of her since. A row that cannot be read is none here; what it may have said, the lists hold against her.</summary>
public sealed class Follower
{
    /// <summary>A transfer is followed for so long: longer than any pregnancy.</summary>
    private const int DaysFollowed = 330;

    private readonly Rulebook _rulebook;
    private readonly Herd _herd;
    private readonly LocalDate _today;
    private readonly EventKind _transfer;
    private readonly TestKind? _test;
    private readonly Dictionary<int, AnimalSort> _sorts;

    private Follower(Rulebook rulebook, Herd herd, LocalDate today, EventKind transfer)
    {
        (_rulebook, _herd, _today, _transfer) = (rulebook, herd, today, transfer);
        _test = rulebook.Vocabulary.FindKind("pregnancy test") as TestKind;
        _sorts = ProgrammeLists.Recipients(rulebook.Programme!) is { } list
            ? new Judge(rulebook, herd).JudgeList(list, today, today).Animals.ToDictionary(animal => animal.Animal, animal => animal.Sort) : [];
    }

    /// <summary>Everyone who had a transfer, by state and then by the day on which something is due.</summary>
    /// <param name="rulebook">With a programme.</param>
    /// <param name="herd">Its records.</param>
    /// <param name="today">The day of looking.</param>
    public static ImmutableArray<Followed> Of(Rulebook rulebook, Herd herd, LocalDate today)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        ArgumentNullException.ThrowIfNull(herd);
        if (rulebook.Vocabulary.Kinds.OfType<EventKind>().FirstOrDefault(kind => kind.Marks == Marks.Transfer) is not { } transfer)
        {
            return [];
        }

        var follower = new Follower(rulebook, herd, today, transfer);
        return [.. Enumerable.Range(0, herd.Count).Select(follower.Of).OfType<Followed>().OrderBy(one => one.State).ThenBy(one => one.Dates.DayZero)];
    }

    private Followed? Of(int animal)
    {
        var run = _herd.Runs[_transfer.Id];
        var at = Enumerable.Range(run.Starts[animal], run.Starts[animal + 1] - run.Starts[animal]).LastOrDefault(place => Day.Date(run.Days[place]) <= _today, -1);
        if (at < 0 || Day.Date(run.Days[at]) is var day && day < _today.PlusDays(-DaysFollowed))
        {
            return null;
        }

        var label = Detail(_transfer, run.Lines[at], "embryo");
        var embryo = label is null ? null : _herd.Embryos.Find(label);
        var dates = new FollowDates(day, embryo is null ? null : _herd.Embryos.AgeOn(embryo, day)) { Gestation = GestationOf(animal, embryo?.Breed) };
        return Known(new Followed(animal, _herd.Numbers[animal], label, dates, FollowState.Waiting));
    }

    /// <summary>What is on record since: the latest counts, and a test that is pending, or too early for its method, proves nothing.</summary>
    private Followed Known(Followed one)
    {
        var since = one.Dates.Transfer;
        LocalDate? pregnant = null, ended = null, tested = null;
        var (isEmpty, tooEarly) = (false, false);
        foreach (var (date, isCalf, isByHand) in Tests(one.Animal, since))
        {
            tested = date;
            isEmpty = !isCalf && date >= (isByHand ? one.Dates.ClearedByHandFrom : one.Dates.ClearedFrom);
            tooEarly = !isCalf && !isEmpty;
            ended = isEmpty && pregnant is not null ? date : null;
            pregnant = isCalf ? date : pregnant;
        }

        if (First("abortion", one.Animal, since.PlusDays(1)) is { } aborted && !(pregnant > aborted))
        {
            (ended, isEmpty) = (ended is { } before && before < aborted ? before : aborted, true);
        }

        var calved = First("calving", one.Animal, since.PlusDays(1));
        return one with
        {
            State = calved is not null ? FollowState.Calved
                : ended is not null ? FollowState.Lost
                : isEmpty ? FollowState.Empty
                : pregnant is not null && pregnant == tested ? FollowState.Pregnant
                : _today > one.Dates.FirstCheck.End ? FollowState.Overdue
                : _today >= one.Dates.FirstCheck.Start ? FollowState.ToCheck : FollowState.Waiting,
            Returned = First("heat", one.Animal, one.Dates.ReturnWatch.Start) is { } heat && heat <= one.Dates.ReturnWatch.End ? heat : null,
            Tested = tested,
            IsEmptyTooEarly = tooEarly,
            LostAfter = ended is null ? null : pregnant,
            LostBy = ended,
            Calved = calved,
            IsSecondOverdue = calved is null && ended is null && pregnant is not null && pregnant < one.Dates.SecondCheck.Start && _today > one.Dates.SecondCheck.End,
        };
    }

    private IEnumerable<(LocalDate Date, bool IsCalf, bool IsByHand)> Tests(int animal, LocalDate since)
    {
        if (_test is null)
        {
            yield break;
        }

        var (run, calf, none) = (_herd.Runs[_test.Id], _test.PlaceOf("pregnant"), _test.PlaceOf("empty"));
        for (var at = run.Starts[animal]; at < run.Starts[animal + 1]; at++)
        {
            var (date, answer) = (Day.Date(run.Days[at]), run.Answers[at]);
            if (date > since && date <= _today && (answer == calf || answer == none))
            {
                yield return (date, answer == calf, IsByHand(run.Lines[at]));
            }
        }
    }

    /// <summary>By hand, as one is where nobody can read how it was done.</summary>
    private bool IsByHand(int line)
    {
        var place = _test!.Details.ToList().FindIndex(detail => NameFolding.Fold(detail.Name) == "method");
        return place < 0 || _herd.Details.Of(line, place) switch
        {
            { State: FactState.Known, Text: { } said } => NameFolding.Fold(said) == "hand",
            { State: FactState.Missing } => NameFolding.Fold(_herd.Details.BlankOf(_test, place) ?? "hand") == "hand",
            _ => true,
        };
    }

    private LocalDate? First(string kind, int animal, LocalDate from)
    {
        if (_rulebook.Vocabulary.FindKind(kind) is not EventKind found)
        {
            return null;
        }

        foreach (var day in _herd.Runs[found.Id].DaysOf(animal))
        {
            if (Day.Date(day) is var date && date >= from && date <= _today)
            {
                return date;
            }
        }

        return null;
    }

    private string? Detail(Kind kind, int line, string name) => kind.Details.ToList().FindIndex(detail => NameFolding.Fold(detail.Name) == name) is var place and >= 0
        && _herd.Details.Of(line, place) is { State: FactState.Known, Text: { Length: > 0 } text } ? text : null;

    /// <summary>By the calf's breed, else by those of the programme's calves; a cross stands between them.</summary>
    private (double Mean, double Spread)? GestationOf(int animal, string? breed)
    {
        var carrier = _sorts.GetValueOrDefault(animal) == AnimalSort.Heifer ? Carrier.Heifers : Carrier.Cows;
        ImmutableArray<string> breeds = breed is null ? _rulebook.Programme!.Aims.CalfBreeds : [breed];
        Assumption?[] found = breeds.IsEmpty ? [_rulebook.Plans.Assume(AssumedQuantity.Gestation, animals: carrier)] : [.. breeds.Select(one => _rulebook.Plans.Assume(AssumedQuantity.Gestation, animals: carrier, breed: one))];
        return found.Contains(null) ? null : (found.Average(one => one!.Mean!.Value), found.Max(one => one!.Spread ?? 0));
    }
}
