using System.Text;
using Byrelaw.Judging;
using Byrelaw.Judging.Verdicts;
using Byrelaw.Language.Diagnostics;
using Byrelaw.Language.Rulebooks;
using Byrelaw.Reporting.Words;
using NodaTime;

namespace Byrelaw.Cli.Tests.Loosening;

/// <summary>
/// Ways in which a text might loosen a safety rule, each tried on real files, read and judged as the program does: one table, approved. A
/// cow that is in calf, or may be, is let through by none of them but those that the page names as open.
/// </summary>
public sealed class LooseningTests : IDisposable
{
    private const string Page = "tests/Byrelaw.Cli.Tests/Loosening/loosenings.md";
    private const string Fit = "9";
    private const int Shown = 3;
    /// <summary>As many as the page has: none is to be lost unseen.</summary>
    private const int Cases = 149;

    private static readonly LocalDate Today = new(2026, 10, 4);
    private readonly string _folder = Directory.CreateTempSubdirectory("byrelaw-loosening-").FullName;
    private readonly (string Name, string Text)[] _rulesets =
        [.. Directory.GetFiles(Repository.At("rulesets"), "*.byre").Select(file => (Path.Combine("rulesets", Path.GetFileName(file)), File.ReadAllText(file)))];

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void Nobody_in_calf_is_let_through_whatever_the_texts_say()
    {
        var (standard, cases) = LooseningCase.Read(File.ReadAllText(Repository.At(Page)));
        cases.Count.ShouldBe(Cases);
        cases.Select(one => one.Title.Split(' ')[0]).ShouldBeUnique();
        var table = new StringBuilder("| what was tried | what the program says | let through |\n| --- | --- | --- |\n");
        var wrong = new List<string>();
        foreach (var one in cases)
        {
            var (said, through) = Try(one, standard);
            var used = through.Where(who => who.Number != Fit).ToList();
            var isStandard = one.Title.StartsWith("0.", StringComparison.Ordinal);
            if (used.Count > 0 != one.Open is not null || (isStandard && through.Count != 2))
            {
                wrong.Add($"{one.Title}: {string.Join(", ", through)}{(isStandard ? $" ({said})" : "")}");
            }

            table.Append(CultureInfo.InvariantCulture, $"| {one.Title} | {Cell(said)} | {(used.Count == 0 ? "nobody" : string.Join(", ", used))}{(one.Open is { } why ? $". Open: {why}" : "")} |\n");
        }

        Snapshot.Verify(table.ToString(), extension: "md");
        wrong.ShouldBeEmpty(string.Join('\n', wrong));
    }

    private (string Said, List<Through> Used) Try(LooseningCase one, IReadOnlyList<Fence> standard)
    {
        // What one case writes says nothing in the next.
        Directory.Delete(_folder, recursive: true);
        foreach (var (path, text) in _rulesets.Concat(one.Files(standard).Select(file => (file.Key, file.Value))))
        {
            Write(path, text);
        }

        var told = new List<Diagnostic>();
        var loaded = LoadedProgramme.Read(one.Programme, null, new WorkFolder(_folder), told.AddRange, Today);
        return (Said(told, loaded), loaded is null ? [] : [.. Used(loaded)]);
    }

    /// <summary>Problems of the files, and what is doubted of the records.</summary>
    private static string Said(List<Diagnostic> told, LoadedProgramme? loaded)
    {
        List<string> said =
        [
            .. told.Select(problem => $"{problem.File}:{problem.Line} {problem.Code}: {problem.Message}").Distinct(),
            .. loaded is null ? [] : DoubtWords.Of(loaded.Herd).Select(doubt => doubt.Lead),
        ];
        return said.Count == 0 ? "nothing" : string.Join("; ", said.Take(Shown)) + (said.Count > Shown ? $"; and {said.Count - Shown} more" : "");
    }

    /// <summary>On every list from which somebody may be given a hormone or an embryo.</summary>
    private static IEnumerable<Through> Used(LoadedProgramme loaded) =>
        from list in new Judge(loaded.Reading.Rulebook, loaded.Herd).JudgeAll().Lists
        where list.Choice.Use != ListUse.ForLookingOnly
        from animal in list.Animals
        where animal.Answer.MayBeUsed()
        select new Through(animal.Number, list.Choice.List, animal.Answer);

    private void Write(string path, string text)
    {
        var full = Path.Combine(_folder, path);
        Directory.CreateDirectory(Path.GetDirectoryName(full)!);
        File.WriteAllText(full, text);
    }

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);

    private sealed record Through(string Number, string List, Answer Answer)
    {
        public override string ToString() => $"{Number} on {List} ({Answer})";
    }
}
