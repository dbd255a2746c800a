using System.Collections.Concurrent;
using Byrelaw.Judging.Promises;
using Byrelaw.Judging.Tests.Reference;
using Kleene = Byrelaw.Judging.Tests.Reference.Kleene;

namespace Byrelaw.Judging.Tests.SideBySide;

/// <summary>The table of answers parts all cases, and deals anew only what rests on "false": nobody who was kept out comes in by it.</summary>
public sealed class TableOfAnswersTests
{
    [Fact]
    public void Each_animal_stands_in_one_row_and_may_be_used_by_the_old_table_if_and_only_if_by_the_new()
    {
        var met = new ConcurrentDictionary<int, int>();
        Each.Hold(JudgingCase.Any, Cases.Count / 3, one => Wrong(one, met), one => one.ToString());

        // Drawn at random, all rows but the three rarest have been met.
        met.Count.ShouldBeGreaterThanOrEqualTo(5, string.Join(' ', met.OrderBy(row => row.Key)));
    }

    private static string? Wrong(JudgingCase one, ConcurrentDictionary<int, int> met)
    {
        var herd = ParityDoubts.Laid(HerdReader.Read(FarmCsv.Animals(one.Farm), FarmCsv.Events(one.Farm), one.Rulebook.Vocabulary, one.Rulebook.Records, one.KnownOn));
        var judge = new Judge(one.Rulebook, herd, one.KnownOn);
        var reference = new ReferenceJudge(one.Rulebook, one.Farm, one.KnownOn);
        foreach (var choice in one.Rulebook.Programme!.Choices)
        {
            foreach (var animal in reference.Judge(choice))
            {
                var (from, to) = animal.Judged;
                var old = OldTable.Of(animal.Rules, animal.All, animal.AllStrict, from, to);
                var rows = RowsOf(animal).ToList();
                if (rows.Count != 1 || rows[0] != animal.Answer.Row)
                {
                    return $"{choice.List}, {animal.Number}: in rows {string.Join(' ', rows)}, answered by row {animal.Answer.Row}";
                }

                var judged = judge.JudgeOne(choice, herd.Find(animal.Number)).Answer;
                if (old.Answer.MayBeUsed() ? judged != old.Answer : judged.MayBeUsed())
                {
                    return $"{choice.List}, {animal.Number}: {judged}, by the old table {old.Answer}";
                }

                // Only rows that begin with "false" were dealt anew.
                if (animal.Answer.Row <= 3 && (old.Answer != animal.Answer.Answer || old.NotBefore is not null))
                {
                    return $"{choice.List}, {animal.Number}: row {animal.Answer.Row}, by the old table {old}";
                }

                met.AddOrUpdate(animal.Answer.Row, 1, (_, count) => count + 1);
            }
        }

        return null;
    }

    /// <summary>Every row whose columns say what is so of her, each column worked out by itself.</summary>
    private static IEnumerable<int> RowsOf(JudgedAnimal animal)
    {
        var (from, to) = animal.Judged;
        var counted = animal.Rules.Where(rule => rule.Counts).ToList();
        var later = Stretches.Later(from, to, animal.All.Last).ToList();
        var a = Kleene.All(counted.Select(rule => Over(rule, from, to)));
        var expected = a != Kleene.All(counted.Select(rule => Kleene.All(rule.StrictDays.Between(from, to).Select(day => day.Truth))));
        var stuck = counted.Exists(rule => Over(rule, from, to) == Truth.False && later.TrueForAll(stretch => Over(rule, stretch.From, stretch.To) != Truth.True));
        var t = later.FindIndex(stretch => counted.TrueForAll(rule => Over(rule, stretch.From, stretch.To) == Truth.True));
        var u = later.FindIndex(stretch => counted.TrueForAll(rule => Over(rule, stretch.From, stretch.To) != Truth.False));
        bool[] rows =
        [
            a == Truth.True && !expected,
            a == Truth.True && expected,
            a == Truth.Unknown,
            a == Truth.False && stuck,
            a == Truth.False && !stuck && t >= 0 && u == t,
            a == Truth.False && !stuck && t >= 0 && u >= 0 && u < t,
            a == Truth.False && !stuck && t < 0 && u >= 0,
            a == Truth.False && !stuck && t < 0 && u < 0,
        ];
        return Enumerable.Range(1, rows.Length).Where(row => rows[row - 1]);
    }

    private static Truth Over(JudgedRule rule, int from, int to) => Kleene.All(rule.Days.Between(from, to).Select(day => day.Truth));
}
