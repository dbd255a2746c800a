using Byrelaw.Judging.Tests.Reference;

namespace Byrelaw.Judging.Tests.LessInformation;

/// <summary>"With the records completed at random, what was true stays true, what was false stays false": of days that the records reach, whatever else had happened.</summary>
/// <remarks>Looking up needs no promise, so no results and no moves are added; nor calvings, which a parity on record may speak against.</remarks>
public sealed class CompletedRecordsTests
{
    private const int LongAgo = 5000;
    private const int LongestAgo = 120;

    [Fact]
    public void What_is_known_stays_so_however_the_records_are_completed()
    {
        var (held, told) = (0L, 0);
        Each.Hold(
            JudgingCase.For(tidy: true).Select(AsksAlways).Where(one => !one.Farm.Events.Any(row => Words.Vocabulary.FindKind(row.Kind) is EventKind { Effect: not HerdEffect.None }))
                .SelectMany(one => Gen.Int[0, 1 << 20].Select(seed => (One: one, Whole: Completed(one, new Random(seed)))))
                .Where(pair => GenFarms.HasOnlyLikelyCalvings(pair.Whole.Farm) && GenFarms.HasOnlyPossibleParities(pair.Whole.Farm)),
            Cases.Count / 3,
            pair => Differs(pair.One, pair.Whole, ref held, ref told),
            pair => $"{pair.One}\n--- completed\n{pair.Whole}");

        // Where hardly a day was known before, nothing was held; where nothing turned known, nothing was completed.
        (Drawn.Only is not null || (held > 600 && told > 20)).ShouldBeTrue($"{held} held, {told} turned known");
    }

    /// <summary>Nothing stands in for a not known, and nothing asks whether something was written down.</summary>
    private static JudgingCase AsksAlways(JudgingCase one) => one with
    {
        KnownOn = null,
        Rulebook = one.Rulebook with
        {
            Rules = [.. one.Rulebook.Rules.Where(rule => !rule.Needs.Leaves(one.Rulebook).Any(leaf => leaf is RecordedCondition)).Select(rule => rule with { IfNotKnown = IfNotKnown.Ask })],
            Waivers = [],
        },
    };

    /// <summary>Every kind promised for ever; of kinds that nothing was promised of, something more may have happened.</summary>
    private static JudgingCase Completed(JudgingCase one, Random random)
    {
        var (records, words) = (one.Rulebook.Records!, one.Rulebook.Vocabulary);
        var known = records.UpTo ?? one.Farm.Events.Select(row => LocalDatePattern.Iso.Parse(row.Date)).Where(day => day.Success).Select(day => day.Value).Append(new LocalDate(2020, 1, 1)).Max();
        var open = words.Kinds.OfType<EventKind>().Where(kind => !kind.IsMobMove && kind != words.Calving && kind is { Effect: HerdEffect.None, NotBeforeAge: null }
            && !records.Complete.Any(complete => complete.Kinds.Contains(kind))).ToList();
        var more =
            from animal in one.Farm.Animals
            where LocalDatePattern.Iso.Parse(animal.Born) is { Success: true, Value: var born } && born < known.PlusDays(-LongestAgo)
            from kind in open
            from again in Enumerable.Range(0, random.Next(3))
            select new EventRow(LocalDatePattern.Iso.Format(known.PlusDays(-random.Next(LongestAgo))), animal.Number, kind.Name);
        return one with
        {
            Farm = one.Farm with { Events = [.. one.Farm.Events, .. more.ToList()] },
            Rulebook = one.Rulebook with { Records = records with { Complete = [new Completeness([.. words.Kinds], known.PlusDays(-LongAgo), Words.Nowhere)] } },
        };
    }

    private static string? Differs(JudgingCase one, JudgingCase whole, ref long held, ref int told)
    {
        var (before, after) = (Judged(one), Judged(whole));
        if (before.Herd.Coverage.Gaps.Length > 0 || after.Herd.Coverage.Gaps.Length > 0)
        {
            // A row that may be anybody's is no completed record.
            return null;
        }

        var last = before.Herd.KnownDay;
        foreach (var (list, other) in before.Lists.Zip(after.Lists))
        {
            foreach (var (animal, same) in list.Animals.Zip(other.Animals))
            {
                // Gates stand among the rules only where they tell something.
                foreach (var (rule, then) in animal.Rules.Select(rule => (rule, same.Rules.FirstOrDefault(other => other.Gate == rule.Gate && other.Name == rule.Name))).Where(pair => pair.Item2 is not null))
                {
                    for (var day = rule.Timeline.First; day <= rule.Timeline.Last && day <= last; day = day.PlusDays(1))
                    {
                        var (truth, now) = (rule.Timeline.At(day).Truth, then!.Timeline.At(day).Truth);
                        Interlocked.Add(ref held, truth == Truth.Unknown ? 0 : 1);
                        if (truth == Truth.Unknown)
                        {
                            Interlocked.Add(ref told, now == Truth.Unknown ? 0 : 1);
                        }
                        else if (now != truth)
                        {
                            return $"{animal.Number}, {rule.Name} on {day}: {truth}, and {now} once completed";
                        }
                    }
                }
            }
        }

        return null;
    }

    private static Draft Judged(JudgingCase one)
    {
        var herd = HerdReader.Read(FarmCsv.Animals(one.Farm), FarmCsv.Events(one.Farm), one.Rulebook.Vocabulary, one.Rulebook.Records);
        return new Judge(one.Rulebook, herd).JudgeAll(one.On);
    }
}
