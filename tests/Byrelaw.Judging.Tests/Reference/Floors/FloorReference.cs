using static Byrelaw.Judging.Tests.Reference.FloorClauses;

namespace Byrelaw.Judging.Tests.Reference;

/// <summary>A clause of the floor: what it says of one animal on one day.</summary>
public delegate Truth Clause(Moment at);

/// <summary>
/// The floor, straight from a herd's records: "under every list that leads to a hormone or an embryo (all but *nothing given* and *for looking
/// only*) lie four safety rules of the program's own". Written from the design, clause by clause; it has never seen a rule file, knows of
/// no layer, and asks nothing of the program's own text of the floor.
/// </summary>
public sealed class FloorReference
{
    private readonly FloorClauses _clauses;
    private readonly FloorNouns _words;
    private readonly Clause _boughtEmpty;

    private FloorReference(Knowledge knowledge, FloorNouns words)
    {
        _words = words;
        _clauses = new FloorClauses(knowledge, words);
        _boughtEmpty = BoughtEmpty();
    }

    /// <summary>The floor's rules in order; none where the files have no words for them.</summary>
    public static IReadOnlyList<(string Name, Func<Moment, RuleOnADay> On)> Rules(Knowledge knowledge)
    {
        if (FloorNouns.Of(knowledge.Rulebook.Vocabulary) is not { } words)
        {
            return [];
        }

        var floor = new FloorReference(knowledge, words);
        var (inCalf, dry, service, bull) = (floor.NotInCalf(), floor.DryingOffCleared(), floor.DaysSinceService(), floor.AwayFromTheBull());
        return
        [
            ("Floor: not in calf", Remembered(at => new(inCalf(at), Truth.True))),
            ("Floor: not dry in calf", Remembered(at => OfCows(SortReference.Cow(knowledge, at), dry(at)))),
            ("Floor: days since service", Remembered(at => new(service(at), Truth.True))),
            ("Floor: away from the bull", Remembered(at => new(bull(at), Truth.True))),
        ];
    }

    /// <summary>It is the same on every list.</summary>
    private static Func<Moment, RuleOnADay> Remembered(Func<Moment, RuleOnADay> on)
    {
        var known = new Dictionary<Moment, RuleOnADay>();
        return at => known.TryGetValue(at, out var said) ? said : known[at] = on(at);
    }

    private static RuleOnADay OfCows(Truth cow, Truth needs) => new(Kleene.Or(Kleene.Not(cow), needs), cow);

    /// <summary>"*Floor: not in calf*: `all of`: `scans found no calf`, `service cleared`, `bull cleared`"; "service cleared: all of mating
    /// cleared, transfer cleared".</summary>
    private Clause NotInCalf() => All([ScansFoundNoCalf(), MatingCleared(), TransferCleared(_words.Transfer), .. _words.OwnTransfers.Select(TransferCleared), BullCleared(), .. _words.Others.Select(other => OwnTestAgrees(other.Test, other.Answers))]);

    /// <summary>"A test of a farm's own that found a calf is asked by the floor where the program can tell": none since she calved, slipped it or came, or a test that is not
    /// by hand found none on a later day.</summary>
    private Clause OwnTestAgrees(TestKind test, IReadOnlyList<int> answers)
    {
        Kind[] ends = _words.Abortion is { } slipped ? [_words.Calving, slipped, _words.Purchase] : [_words.Calving, _words.Purchase];
        return Any(_clauses.NoAnswer(SinceLast(ends), test, answers), _clauses.Empty(_words.NotByHand, FromAfterLast(1, test)));
    }

    /// <summary>"*Floor: not dry in calf*: `any of`: `less than 150 days since last calving`; `no drying off since last calving`;
    /// `latest pregnancy test from 1 day after last drying off is empty`; `bought empty`".</summary>
    private Clause DryingOffCleared() => Any(
        _clauses.LessThanDaysSince(150, _words.Calving),
        _clauses.No(SinceLast(_words.Calving), _words.DryingOff),
        _clauses.Empty(_words.Test, FromAfterLast(1, _words.DryingOff)),
        _boughtEmpty);

    /// <summary>"*Floor: days since service*: `no mating in the last 27 days`; `at least day 28 of last transfer`"; and "an embryo's age: nothing is
    /// taken off as long as none can be read", so that `no transfer in the last 27 days` has that day behind it.</summary>
    private Clause DaysSinceService() => All(
        _clauses.No(InTheLastDays(27), [_words.Mating, .. _words.OwnTransfers]),
        Any(_clauses.No(InTheLastDays(27), _words.Transfer), _clauses.AtLeastDaysSince(28, _words.Transfer)));

    /// <summary>"*Floor: away from the bull*: `not running with bull in the last 35 days`".</summary>
    private Clause AwayFromTheBull() => _clauses.NotWithBull(InTheLastDays(35));

    /// <summary>No test found a calf since she calved or came; or the latest found none, and no hand has outvoted an earlier test that found one.</summary>
    private Clause ScansFoundNoCalf() => Any(
        _clauses.NoPregnant(SinceLast(_words.Calving, _words.Purchase)),
        All(_clauses.Empty(_words.Test, SinceLast(_words.Calving, _words.Purchase)), BetterTestsAgree()));

    /// <summary>"A test by hand never outvotes an earlier `pregnant`: then she is not known until a test that is not by hand (or a calving, an abortion)."</summary>
    private Clause BetterTestsAgree()
    {
        Kind[] ends = _words.Abortion is { } slipped ? [_words.Calving, slipped, _words.Purchase] : [_words.Calving, _words.Purchase];
        var since = SinceLast(ends);
        return Any(_clauses.NoPregnant(since), _clauses.Empty(_words.NotByHand, since), _clauses.Empty(_words.NotByHand, FromAfterLast(1, _words.ByHand)));
    }

    private Clause MatingCleared() => Any(
        _clauses.No(SinceLast(_words.Calving), _words.Mating),
        _clauses.Empty(_words.NotByHand, FromAfterLast(28, _words.Mating)),
        _clauses.Empty(_words.ByHand, FromAfterLast(42, _words.Mating)),
        _boughtEmpty);

    /// <summary>"`transfer cleared`: the same of `transfer`, by `from day 28 of last transfer` and, by hand, `from 42 days after last transfer`".</summary>
    private Clause TransferCleared(EventKind transfer) => Any(
        _clauses.No(SinceLast(_words.Calving), transfer),
        _clauses.Empty(_words.NotByHand, FromAfterLast(28, transfer)),
        _clauses.Empty(_words.ByHand, FromAfterLast(42, transfer)),
        _boughtEmpty);

    /// <summary>"`bull cleared`: of `running with bull`, by `from 35 days after last running with bull` and, by hand, 42, and without `bought empty`".</summary>
    private Clause BullCleared() => Any(
        _clauses.NotWithBull(SinceLast(_words.Calving)),
        _clauses.Empty(_words.NotByHand, _clauses.AfterTheBull(35)),
        _clauses.Empty(_words.ByHand, _clauses.AfterTheBull(42)));

    /// <summary>"`bought empty`: `all of` `bought in`, `no mating or transfer or drying off since last purchase`, and such a test from 35 days
    /// after last purchase, by hand 42".</summary>
    private Clause BoughtEmpty()
    {
        var known = new Dictionary<Moment, Truth>();
        var clause = All(
            Any(_clauses.IsBought(), _clauses.BoughtInTheLastYears(2)),
            _clauses.No(SinceLast(_words.Purchase), [_words.Mating, _words.Transfer, .. _words.OwnTransfers, _words.DryingOff]),
            Any(
                _clauses.Empty(_words.NotByHand, FromAfterLast(35, _words.Purchase)),
                _clauses.Empty(_words.ByHand, FromAfterLast(42, _words.Purchase))));
        return at => known.TryGetValue(at, out var truth) ? truth : known[at] = clause(at);
    }

    /// <summary>One that is false decides, whatever the others say.</summary>
    private static Clause All(params Clause[] clauses) => at =>
    {
        var all = Truth.True;
        for (var i = 0; i < clauses.Length && all != Truth.False; i++)
        {
            all = Kleene.And(all, clauses[i](at));
        }

        return all;
    };

    /// <summary>One that is true decides.</summary>
    private static Clause Any(params Clause[] clauses) => at =>
    {
        var any = Truth.False;
        for (var i = 0; i < clauses.Length && any != Truth.True; i++)
        {
            any = Kleene.Or(any, clauses[i](at));
        }

        return any;
    };
}
