using Byrelaw.Judging.Supposing;
using Byrelaw.Reporting.Causes;

namespace Byrelaw.Cli.Files;

/// <summary>What is wrong with the rows of the records, by its cause, each tried: whom does it alone keep in Ask?</summary>
internal static class CausesTried
{
    /// <summary>Every cause that is tried reads and judges the whole herd again; in larger herds, and of more causes or rows, nobody waits for that.</summary>
    private const int MostAnimals = 5_000;
    private const int MostTried = 20;
    private const int MostRows = 100_000;

    /// <summary>The causes, those that keep most animals first.</summary>
    /// <param name="herd">As read.</param>
    /// <param name="rulebook">With the lists that are judged; without any nothing is tried.</param>
    /// <param name="folder">The records, on disk.</param>
    /// <param name="of">Which herd, where they hold several.</param>
    /// <param name="doors">Where they are.</param>
    public static IReadOnlyList<ProblemCause> Of(Herd herd, Rulebook rulebook, string folder, string? of, Doors doors)
    {
        var causes = ProblemCauses.Sorted(ProblemCauses.Of(herd));
        if (causes.Count == 0 || herd.Count > MostAnimals || herd.RowProblems.Length > MostRows || rulebook.Programme is not { Choices.IsEmpty: false } programme)
        {
            return causes;
        }

        var farm = new SupposedFarm(rulebook, FarmRecords.In(folder, doors.Show(folder), rulebook.Vocabulary, rulebook.Records, of));
        var kept = new KeptInAsk(farm, programme.Choices);
        return ProblemCauses.Sorted(causes.Take(MostTried).Select(cause => Tried(cause, kept)).Concat(causes.Skip(MostTried)));
    }

    /// <summary>A row of an animal cannot be supposed away: it is tried of rows of what happened.</summary>
    private static ProblemCause Tried(ProblemCause cause, KeptInAsk kept)
    {
        var lines = cause.Rows.Where(row => !row.IsOfAnimals).Select(row => row.Line).ToHashSet();
        return lines.Count < cause.Rows.Length ? cause : cause with { AloneInAsk = (kept.Without(lines), kept.Judged) };
    }
}
