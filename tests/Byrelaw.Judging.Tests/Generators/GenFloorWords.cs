namespace Byrelaw.Judging.Tests.Generators;

/// <summary>A farm's own words: all that the floor speaks of, declared as carefully as it must be, or more so.</summary>
/// <param name="Text">The file of words.</param>
/// <param name="HasAbortion">Whether a slipped calf has a word.</param>
/// <param name="Mating">What the farm calls a service in its records.</param>
/// <param name="Test">What it calls a pregnancy test.</param>
/// <param name="Own">A test of the farm's own; empty where there is none.</param>
/// <param name="OwnAnswers">What it answers.</param>
public sealed record FloorWordsDrawn(string Text, bool HasAbortion, string Mating, string Test, string Own, ImmutableArray<string> OwnAnswers)
{
    /// <summary>An event of the farm's own that marks a transfer; empty where there is none.</summary>
    public string OwnTransfer { get; init; } = "";

    /// <summary>Kinds that may be on record.</summary>
    public IEnumerable<string> Kinds =>
        ["calving", .. HasAbortion ? new[] { "abortion" } : [], "mating", "transfer", "drying off", "bull in", "bull out", "purchase", "sale", "death", "heat", "pregnancy test", "mob", .. Own.Length > 0 ? new[] { Own } : [], .. OwnTransfer.Length > 0 ? new[] { OwnTransfer } : []];
}

/// <summary>Draws them.</summary>
public static class GenFloorWords
{
    public static readonly Gen<FloorWordsDrawn> Any =
        from abortion in Gen.Frequency((2, Gen.Const(true)), (1, Gen.Const(false)))
        from calving in Gen.OneOf(", not before 15 months of age", ", not before 14 months of age", "")
        from mating in Gen.OneOf(", not before 6 months of age", "")
        from served in Gen.OneOf("mating", "served")
        from purpose in Gen.OneOf("", ", with purpose is one of calf, flushing")
        from scan in Gen.OneOf("pregnancy test", "scan")
        from methods in Gen.OneOf("ultrasound, blood, milk, hand", "ultrasound, hand")
        from blank in Gen.Frequency((3, Gen.Const(", blank is hand")), (1, Gen.Const("")))
        from male in Gen.OneOf(", or in a mob with a male from 6 months of age", ", or in a mob with a male from 4 months of age")
        from own in Gen.Frequency(
            (6, Gen.Const(("", (ImmutableArray<string>)[]))),
            (1, Gen.Const(("milk sample", (ImmutableArray<string>)["in calf", "not in calf", "open"]))),
            (1, Gen.Const(("milk sample", (ImmutableArray<string>)["in calf, not sure", "not empty", "empty"]))),
            (1, Gen.Const(("PD", (ImmutableArray<string>)["+", "-", "not seen"]))),
            (1, Gen.Const(("mastitis test", (ImmutableArray<string>)["positive", "negative"]))))
        from putIn in Gen.Frequency((3, Gen.Const("")), (1, Gen.Const("put in")))
        select new FloorWordsDrawn(
            $"""
            event calving{calving}
            {(abortion ? "event abortion, not before 9 months of age" : "event heat stress")}
            event heat
            event mating also served{mating}{purpose}
            event transfer
            {(putIn.Length > 0 ? $"event {putIn} marks transfer" : "event claw trim")}
            event drying off{calving}
            event purchase joins the herd
            event sale leaves the herd
            event death leaves the herd for good
            event bull in{mating}
            event bull out
            spell running with bull from bull in until bull out{male}
            test pregnancy test answers pregnant, empty in the yards, also scan, with method is one of {methods}{blank}
            {(own.Item1.Length > 0 ? $"test {own.Item1} answers {string.Join(", ", own.Item2.Select(answer => $"\"{answer}\""))}" : "event foot trim")}
            measure body condition on scale 1 to 10
            fact origin is one of home-bred, bought

            """,
            abortion, served, scan, own.Item1, own.Item2)
        { OwnTransfer = putIn };
}
