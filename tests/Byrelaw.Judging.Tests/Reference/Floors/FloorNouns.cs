namespace Byrelaw.Judging.Tests.Reference;

/// <summary>What the floor speaks of, found in a rulebook's words by the names that the design gives.</summary>
public sealed record FloorNouns(
    EventKind Calving, EventKind? Abortion, EventKind Purchase, EventKind Mating, EventKind Transfer, EventKind DryingOff,
    TestKind Test, TestKind ByHand, TestKind NotByHand, Fact Origin, Spell WithBull)
{
    // Tests of a farm's own as they are drawn: "an answer of a test that is about pregnancy and that does not clearly say that no calf was found counts as one that was".
    private static readonly ImmutableArray<string> ClearlyNone = ["not in calf", "open", "empty", "-"];
    private static readonly ImmutableArray<string> AboutSomethingElse = ["mastitis test", "ovary check"];

    /// <summary>Tests of the farm's own that are about pregnancy, and those of their answers that are a calf or a doubt.</summary>
    public IReadOnlyList<(TestKind Test, IReadOnlyList<int> Answers)> Others { get; init; } = [];

    /// <summary>"The floor asks of an own event that `marks transfer` what it asks of a transfer, 28 days from the day itself."</summary>
    public IReadOnlyList<EventKind> OwnTransfers { get; init; } = [];

    /// <summary>Null where the files have no words for the floor.</summary>
    public static FloorNouns? Of(Vocabulary words)
    {
        if (words.FindKind("pregnancy test") is not TestKind test)
        {
            return null;
        }

        return new FloorNouns(
            Event("calving"), words.FindKind("abortion") as EventKind, Event("purchase"), Event("mating"), Event("transfer"), Event("drying off"),
            test, ByMethod(isNot: false), ByMethod(isNot: true), words.FindFact("origin")!, words.Spells.Single(spell => spell.Name == "running with bull"))
        {
            OwnTransfers = [.. words.Kinds.OfType<EventKind>().Where(kind => kind.Marks == Marks.Transfer && kind.Name != "transfer")],
            Others = [.. words.Kinds.OfType<TestKind>().Where(kind => kind != test && !AboutSomethingElse.Contains(kind.Name))
                .Select(kind => (kind, (IReadOnlyList<int>)[.. Enumerable.Range(0, kind.Answers.Length).Where(i => !ClearlyNone.Contains(kind.Answers[i]))]))],
        };

        EventKind Event(string name) => (EventKind)words.FindKind(name)!;

        // "The methods are `ultrasound`, `blood`, `milk`, `hand`."
        TestKind ByMethod(bool isNot) => words.Filtered.OfType<TestKind>().Single(kind => kind.Declaration == test
            && kind.Filter!.Tests is [DetailIs { Detail.Name: "method", Values: ["hand"] } one] && one.IsNot == isNot);
    }
}
