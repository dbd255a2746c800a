using Byrelaw.Planning.Naming;
using CsCheck;

namespace Byrelaw.Planning.Tests.Naming;

public sealed class AssignmentTests
{
    private static readonly Gen<long?[][][]> Gains =
        Gen.Int[1, 3].SelectMany(sessions => Gen.Int[1, 2].SelectMany(more =>
            Gen.Select(Gen.Bool, Gen.Int[-1, 1].Array[more]).Select((may, parts) => may ? parts.Select(part => (long?)part).ToArray() : []).Array[sessions].Array[1, 7]));

    [Fact]
    public void It_is_what_trying_all_of_them_finds() => Gen.Select(Gains, Gen.Int[0, 4].Array[3]).Hold((animals, free) =>
    {
        var sessions = animals[0].Length;
        var gains = animals.Select(animal => animal.Select((parts, session) => parts.Length == 0 ? null : (long[]?)[.. Enumerable.Range(0, sessions).Select(one => one == session ? 1L : 0), .. parts.Select(part => part!.Value)]).ToArray()).ToArray();
        var length = gains.SelectMany(animal => animal).FirstOrDefault(gain => gain is not null)?.Length ?? sessions;
        var found = Assignment.Best(
            [.. gains.Select(animal => animal.Select(gain => gain is null ? (Gain?)null : new Gain([.. gain])).ToArray())], free[..sessions], Gain.Nothing(length));
        found.ShouldBe(AllOfThem.Best(gains, free[..sessions], length));
    }, count: 300);

    [Fact]
    public void A_place_of_the_first_session_is_filled_before_two_points_are_had_in_the_second()
    {
        // One animal that could be in both: the first session's place counts before any points.
        Assignment.Best([[new Gain([1, 0, 0]), new Gain([0, 1, 9])]], [1, 1], Gain.Nothing(3)).ShouldBe([0]);
    }

    [Fact]
    public void Who_can_go_nowhere_else_has_the_place_though_another_is_better_for_it()
    {
        // The first could be in both sessions, the second only in the first: both have a place.
        Assignment.Best([[new Gain([1, 0, 5]), new Gain([0, 1, 5])], [new Gain([1, 0, 1]), null]], [1, 1], Gain.Nothing(3)).ShouldBe([1, 0]);
    }
}
