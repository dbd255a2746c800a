using Byrelaw.Judging;
using Byrelaw.Planning.Naming;
using CsCheck;

namespace Byrelaw.Planning.Tests.Naming;

/// <summary>Names and places, held to a literal reading of the order in which they are given: every assignment is tried.</summary>
public sealed class BoardTests
{
    private const int Cows = 7;

    // Three sessions, a method that treats and natural heat after it; how the animals stand is drawn.
    private static readonly WrittenPlan Farm = new()
    {
        Cows = Cows,
        Programme = """
            collection on 2026-10-12, 3 times every 14 days
            transfer 8 days after collection, over 2 days
            date first treatment 8 days before collection
            prepare recipients by "Progesterone insert", "Natural heat"
            """,
        Lists = """

            choose treatment from females, judged on first treatment
            choose recipients from females, judged from first transfer to final transfer

          """,
    };

    private static readonly ImmutableArray<JudgedSession> Sessions = Judged();
    private static readonly ImmutableArray<MethodChecked> Checked = [.. Sessions.Select(session => MethodChecked.Of(session, session.Rulebook.Plans.Method("Progesterone insert")!, new(2026, 8, 1)))];
    private static readonly Method Insert = Sessions[0].Rulebook.Plans.Method("Progesterone insert")!;

    [Fact]
    public void Sure_animals_are_named_as_trying_every_assignment_finds_and_those_to_ask_fill_what_is_left() => Cases.Hold(one =>
    {
        var named = Name(one);
        var sure = AllOfThem.Best(Gains(one, Standing.Sure, _ => true, (animal, session) =>
            [.. First(session), Enumerable.Range(0, 3).Where(other => one.Standings[animal][other] == Standing.Sure).Max(other => (long)one.Points[animal][other]), .. OfSession(session, one.Points[animal][session])]), one.Wanted, 7);
        In(named, session => session.Named).ShouldBe(sure);

        int[] left = [.. one.Wanted.Select((wanted, session) => wanted - sure.Count(at => at == session))];
        var asked = AllOfThem.Best(Gains(one, Standing.ToAsk, animal => sure[animal] < 0, (animal, session) =>
            [.. First(session), .. OfSession(session, -one.Missing[animal][session]), .. OfSession(session, one.Points[animal][session])]), left, 9);
        In(named, session => session.ToAsk).ShouldBe(asked);

        for (var session = 0; session < 3; session++)
        {
            named[session].Short.ShouldBe(one.Wanted[session] - sure.Count(at => at == session));
            named[session].Spares.Select(animal => animal.Animal).Order().ShouldBe(
                Enumerable.Range(0, Cows).Where(animal => sure[animal] < 0 && Array.IndexOf(one.Standings[animal], Standing.Sure) == session));
        }
    }, count: 60);

    [Fact]
    public void One_more_sure_animal_never_leaves_the_first_session_with_fewer() => Cases.Hold(one =>
    {
        var more = one with { Standings = [.. one.Standings.Select((standings, animal) => animal == 0 ? [Standing.Sure, .. standings[1..]] : standings)] };
        Name(more)[0].Named.Length.ShouldBeGreaterThanOrEqualTo(Name(one)[0].Named.Length);
    }, count: 60);

    [Fact]
    public void Who_is_begun_never_moves_and_nobody_has_two_places() => Gen.Select(Cases, Gen.Int[-1, 3].Array[Cows]).Hold((one, begunFor) =>
    {
        // Whatever may stand against her by then, and however many places there are: her own days and her session stay.
        ImmutableArray<BegunAnimal> begun =
        [
            .. from animal in Enumerable.Range(0, Cows) where begunFor[animal] is > 0 select new BegunAnimal(animal, Insert, new(2026, 7, 20 + animal), [begunFor[animal]]),
        ];
        var named = Name(one, begun);
        foreach (var animal in begun)
        {
            var hers = named.Single(session => session.Named.Any(other => other.Animal == animal.Animal));
            hers.Number.ShouldBe(animal.Session!.Value);
            hers.Named.Single(other => other.Animal == animal.Animal).ShouldSatisfyAllConditions(other => other.IsBegun.ShouldBeTrue(), other => other.Start.ShouldBe(animal.Start));
        }

        named.SelectMany(session => session.Named.Concat(session.ToAsk)).Select(animal => animal.Animal).ShouldBeUnique();
    }, count: 60);

    private static Gen<Case> Cases => Gen.Select(
        Gen.Int[0, 2].Select(standing => (Standing)standing).Array[3].Array[Cows], Gen.Int[0, 2].Array[3].Array[Cows], Gen.Int[1, 3].Array[3].Array[Cows], Gen.Int[0, 4].Array[3])
        .Select((standings, points, missing, wanted) => new Case(standings, points, missing, wanted));

    private sealed record Case(Standing[][] Standings, int[][] Points, int[][] Missing, int[] Wanted);

    private static ImmutableArray<NamedSession> Name(Case one, params ImmutableArray<BegunAnimal> begun)
    {
        ImmutableArray<MethodChecked>[] methods = [.. Sessions.Select((session, i) => ImmutableArray.Create(
            Checked[i] with
            {
                Animals = [.. one.Standings.Select((standings, animal) => new StandingOf(standings[i], FailedCheck.None, one.Missing[animal][i]))],
            }))];
        Dictionary<int, double>[] points = [.. Sessions.Select((_, i) => Enumerable.Range(0, Cows).ToDictionary(animal => animal, animal => (double)one.Points[animal][i]))];
        var board = new Board(new SessionCandidates(Sessions, methods, points, [], begun.IsDefault ? [] : begun), [.. one.Wanted.Select(wanted => (int?)wanted)]);
        board.Book();
        board.NameTheSure();
        board.FillWithThoseToAsk();
        return new BoardRead(board).Sessions();
    }

    private static ImmutableArray<JudgedSession> Judged()
    {
        var rulebook = Farm.Rulebook;
        return JudgedSession.Of(new Judge(rulebook, Farm.Herd(rulebook)).JudgeAll(), new(2026, 8, 1));
    }

    private static long[]?[][] Gains(Case one, Standing standing, Func<int, bool> may, Func<int, int, long[]> gain) =>
        [.. Enumerable.Range(0, Cows).Select(animal => Enumerable.Range(0, 3).Select(session => may(animal) && one.Standings[animal][session] == standing ? gain(animal, session) : null).ToArray())];

    private static IEnumerable<long> First(int session) => OfSession(session, 1);

    private static IEnumerable<long> OfSession(int session, long value) => Enumerable.Range(0, 3).Select(one => one == session ? value : 0);

    private static int[] In(ImmutableArray<NamedSession> named, Func<NamedSession, ImmutableArray<NamedAnimal>> animals) =>
        [.. Enumerable.Range(0, Cows).Select(animal => named.ToList().FindIndex(session => animals(session).Any(one => one.Animal == animal)))];
}
