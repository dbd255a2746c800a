namespace Byrelaw.Records.Tests.Support;

/// <summary>Writes parts of a herd as text, to be read in tests.</summary>
internal static class Shown
{
    /// <summary>Every problem in full, then every gap.</summary>
    public static string ProblemsAndGaps(Herd herd)
    {
        var text = new StringBuilder();
        foreach (var problem in herd.Problems)
        {
            text.Append(Problem(problem)).Append('\n');
        }

        return text.Append(Gaps(herd)).ToString();
    }

    public static string Problem(Diagnostic problem) =>
        $"{problem.File}:{problem.Line}:{problem.Column}: {(problem.Severity == Severity.Error ? "error" : "warning")} {problem.Code}: {problem.Message}\n"
        + $"    {problem.LineText.Replace('\0', '\u2400')}\n"
        + $"    {new string(' ', problem.Column - 1)}{new string('^', problem.Length)}\n"
        + (problem.Help is null ? "" : $"    help: {problem.Help}\n");

    /// <summary>One line for each gap: whose, of what, when.</summary>
    public static string Gaps(Herd herd) => string.Concat(herd.Coverage.Gaps.OrderBy(gap => gap.Line).ThenBy(gap => gap.Animal).Select(gap =>
        $"not known: {(gap.Animal < 0 ? "any animal" : herd.Numbers[gap.Animal])}, "
        + $"{(gap.Kind < 0 ? "any kind" : herd.Vocabulary.Kinds[gap.Kind].Name)}, "
        + $"{(gap.From == Day.Start ? "any day" : gap.From == gap.To ? Date(gap.From) : $"{Date(gap.From)} to {Date(gap.To)}")} (line {gap.Line})\n"));

    public static string Date(int day) => day switch
    {
        Day.Start => "start",
        Day.End => "end",
        _ => NodaTime.Text.LocalDatePattern.Iso.Format(Day.Date(day)),
    };

    /// <summary>The days and lines of one animal's entries: <c>2026-01-01 (2), 2026-02-01 (3)</c>.</summary>
    public static string Entries(Herd herd, string animal, Language.Rulebooks.Words.Kind kind)
    {
        var run = herd.Runs[kind.Id];
        var place = herd.Find(animal);
        return string.Join(", ", Enumerable.Range(run.Starts[place], run.Starts[place + 1] - run.Starts[place])
            .Select(i => $"{Date(run.Days[i])} ({run.Lines[i]})"));
    }

    /// <summary>The stays of one animal: <c>North from 2026-01-01 (2); ? from 2026-02-01 (3)</c>.</summary>
    public static string Stays(Herd herd, string animal)
    {
        var place = herd.Find(animal);
        return string.Join("; ", Enumerable.Range(herd.Mobs.Starts[place], herd.Mobs.Starts[place + 1] - herd.Mobs.Starts[place])
            .Select(i => $"{(herd.Mobs.Mob[i] < 0 ? "?" : herd.Mobs.Names[herd.Mobs.Mob[i]])} from {Date(herd.Mobs.From[i])} ({herd.Mobs.Lines[i]})"));
    }

    /// <summary>The stretches of one animal's membership: <c>Out from start (0); In from 2026-01-01 (2)</c>.</summary>
    public static string Membership(Herd herd, string animal)
    {
        var place = herd.Find(animal);
        var membership = herd.Membership;
        return string.Join("; ", Enumerable.Range(membership.Starts[place], membership.Starts[place + 1] - membership.Starts[place])
            .Select(i => $"{membership.States[i]} from {Date(membership.From[i])} ({membership.Lines[i]})"));
    }
}
