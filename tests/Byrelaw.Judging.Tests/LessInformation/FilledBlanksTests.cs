using Byrelaw.Judging.Tests.Reference;

namespace Byrelaw.Judging.Tests.LessInformation;

/// <summary>"A filter agrees with every way of filling the blanks": what is known while details are blank, or cannot be read, stays so whatever they turn out to be.</summary>
public sealed class FilledBlanksTests
{
    private static readonly ImmutableArray<ImmutableArray<string>> Values = [["natural", "inseminated"], ["Bull A", "Bull B", "north"], ["own", "treatment"], ["0", "1", "2", "3"]];

    [Fact]
    public void What_is_known_of_entries_with_blank_details_stays_so_however_they_are_filled() => Each.Hold(
        JudgingCase.Filtered.Where(one => one.Farm.DetailNames.SequenceEqual(FilteredWords.Columns)).Select(AsksAlways)
            .SelectMany(one => Gen.Int[0, 1 << 20].Select(seed => (One: one, Filled: one with { Farm = Filled(one.Farm, new Random(seed)) }))),
        Cases.Count,
        pair => Differs(pair.One, pair.Filled),
        pair => $"{pair.One}\n--- filled\n{pair.Filled}");

    /// <summary>Without what stands in for a not known, and without asking whether something was written down: blank says that it was not. What blank counts as is no blank.</summary>
    private static JudgingCase AsksAlways(JudgingCase one) => one with
    {
        Rulebook = one.Rulebook with
        {
            Rules = [.. one.Rulebook.Rules.Where(rule => !Kinds(rule.Needs).Any(kind => kind.Filter is { } filter && filter.Tests.Any(test => test is DetailRecorded)))
                .Select(rule => rule with { IfNotKnown = IfNotKnown.Ask })],
            Waivers = [],
            Records = one.Rulebook.Records! with { Blanks = [] },
        },
    };

    private static IEnumerable<Kind> Kinds(Condition condition) => (condition switch
    {
        CountCondition count => count.Counted.Select(one => one.Kind),
        TimeSinceCondition since => since.Kinds,
        _ => Enumerable.Empty<Kind>(),
    }).Concat(condition.Windows.SelectMany(window => window switch
    {
        SinceLast since => since.Kinds,
        FromAfterLast after => after.Kinds,
        _ => ImmutableArray<Kind>.Empty,
    }));

    /// <summary>Every blank or unreadable cell of a detail that the kind has is something; a blank that counts as a value stays blank.</summary>
    private static PlainFarm Filled(PlainFarm farm, Random random) => farm with
    {
        Events = [.. farm.Events.Select(row => row with
        {
            Details = [.. row.Details.Select((cell, place) => FilteredWords.Vocabulary.FindKind(row.Kind)?.Details.FirstOrDefault(detail => detail.Name == FilteredWords.Columns[place]) is { } detail
                && (cell.Length == 0 ? detail.BlankIs < 0 : !IsReadable(detail, cell)) ? Any(detail, place, random) : cell)],
        })],
    };

    private static string Any(EntryDetail detail, int place, Random random)
    {
        var values = detail.Values.IsEmpty ? Values[place] : detail.Values;
        return values[random.Next(values.Length)];
    }

    private static bool IsReadable(EntryDetail detail, string cell) => detail.Type switch
    {
        FactType.OneOf => detail.Values.Contains(cell),
        FactType.Number => CellReading.Number(cell) is not null,
        _ => true,
    };

    private static string? Differs(JudgingCase one, JudgingCase filled)
    {
        var (before, after) = (Judged(one), Judged(filled));
        foreach (var (list, other) in before.Lists.Zip(after.Lists))
        {
            foreach (var (animal, same) in list.Animals.Zip(other.Animals))
            {
                foreach (var (rule, then) in animal.Rules.Zip(same.Rules))
                {
                    for (var day = rule.Timeline.First; day <= rule.Timeline.Last; day = day.PlusDays(1))
                    {
                        var truth = rule.Timeline.At(day).Truth;
                        if (truth != Truth.Unknown && then.Timeline.At(day).Truth != truth)
                        {
                            return $"{animal.Number}, {rule.Name} on {day}: {truth}, and {then.Timeline.At(day).Truth} once filled";
                        }
                    }
                }
            }
        }

        return null;
    }

    private static Draft Judged(JudgingCase one)
    {
        var herd = HerdReader.Read(FarmCsv.Animals(one.Farm), FarmCsv.Events(one.Farm), one.Rulebook.Vocabulary, one.Rulebook.Records, one.KnownOn);
        return new Judge(one.Rulebook, herd, one.KnownOn).JudgeAll(one.On);
    }
}
