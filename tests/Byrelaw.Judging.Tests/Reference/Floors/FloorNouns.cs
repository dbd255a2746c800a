namespace Byrelaw.Judging.Tests.Reference;

/// <summary>What the floor speaks of, found in a rulebook's words by the names that the design gives.</summary>
public sealed record FloorNouns(
    EventKind Calving, EventKind? Abortion, EventKind Purchase, EventKind Mating, EventKind Transfer, EventKind DryingOff,
    TestKind Test, TestKind ByHand, TestKind NotByHand, Fact Origin, Spell WithBull)
{
    /// <summary>Tests of the farm's own, and those of their answers that say "in calf": what the program can tell from the words.</summary>
    public IReadOnlyList<(TestKind Test, IReadOnlyList<int> Answers)> Others { get; init; } = [];

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
            Others = [.. words.Kinds.OfType<TestKind>().Where(kind => kind != test)
                .Select(kind => (kind, (IReadOnlyList<int>)[.. Enumerable.Range(0, kind.Answers.Length).Where(i => kind.Answers[i] is "in calf" or "pregnant")])).Where(kind => kind.Item2.Count > 0)],
        };

        EventKind Event(string name) => (EventKind)words.FindKind(name)!;

        // "The methods are `ultrasound`, `blood`, `milk`, `hand`."
        TestKind ByMethod(bool isNot) => words.Filtered.OfType<TestKind>().Single(kind => kind.Declaration == test
            && kind.Filter!.Tests is [DetailIs { Detail.Name: "method", Values: ["hand"] } one] && one.IsNot == isNot);
    }
}
