using Byrelaw.Judging.Comparing;
using Byrelaw.Judging.Tests.Reference;
using Byrelaw.Workshop.Comparing;

namespace Byrelaw.Judging.Tests.Comparing;

public sealed class HerdComparerTests
{
    private static readonly Gen<Pair> Pairs =
        from season in Season.Any
        from farm in GenFarms.For(season)
        let numbers = farm.Animals.Select(animal => animal.Number).ToImmutableArray()
        from old in GenRulebooks.For(season, numbers)
        from other in GenRulebooks.For(season, numbers)
        from taken in Gen.Int[0, 255]
        select new Pair(old, Mutant(old, other, taken), farm);

    [Fact]
    public void What_is_said_to_differ_is_what_differs_when_both_are_judged() => Hold(pair =>
    {
        var compared = HerdComparer.Compare(pair.Between, pair.Read);
        var told = compared.Groups.SelectMany(group => group.Animals).Select(animal => $"{animal.List} {animal.Number}").Order(StringComparer.Ordinal);
        var (old, @new) = (pair.Judged(pair.Old), pair.Judged(pair.New));
        var differ = old.Keys.Union(@new.Keys).Where(who => old.GetValueOrDefault(who) != @new.GetValueOrDefault(who)).Order(StringComparer.Ordinal);
        return told.SequenceEqual(differ) ? null : $"told: {string.Join(", ", told)}\ndiffer: {string.Join(", ", differ)}";
    });

    [Fact]
    public void The_changes_named_bring_about_the_new_answer_and_none_of_them_can_be_spared() => Hold(pair =>
    {
        var @new = pair.Judged(pair.New);
        foreach (var group in HerdComparer.Compare(pair.Between, pair.Read).Groups)
        {
            var with = group.Cause.Changes.SelectMany(change => change.Parts).ToList();
            var mixed = pair.Judged(pair.Between.Mix(with));
            foreach (var who in group.Animals.Select(animal => $"{animal.List} {animal.Number}"))
            {
                if (mixed.GetValueOrDefault(who) != @new.GetValueOrDefault(who))
                {
                    return $"{who} by the changes named: {mixed.GetValueOrDefault(who)}\nby the new rulebook: {@new.GetValueOrDefault(who)}";
                }

                foreach (var spared in with)
                {
                    if (pair.Judged(pair.Between.Mix([.. with.Where(one => one != spared)])).GetValueOrDefault(who) == @new.GetValueOrDefault(who))
                    {
                        return $"{who} needs no {spared.Name}";
                    }
                }
            }
        }

        return null;
    });

    [Fact]
    public void With_none_of_the_differences_it_is_the_old_rulebook_and_with_all_the_new_one() => Hold(pair =>
        !Same(pair.Judged(pair.Between.Mix([])), pair.Judged(pair.Old)) ? "with none it is not the old one"
        : !Same(pair.Judged(pair.Between.Mix(pair.Between.Differences)), pair.Judged(pair.New)) ? "with all it is not the new one" : null);

    [Fact]
    public void A_change_that_matters_by_itself_is_found_by_trying_each_alone_and_all_but_each()
    {
        // Eight rules ask for another window each; cow 1 had mastitis 20 days ago, and only the fourth rule's new window holds it.
        var (old, @new) = (Rules(place => 5 + place), Rules(place => place == 3 ? 30 : 10 + place));
        Herd Read(Rulebook rulebook) => HerdReader.Read(
            "animal,born,sex\n1,2020-05-01,F\n"u8.ToArray(), "date,animal,kind\n2026-09-10,1,mastitis\n"u8.ToArray(), rulebook.Vocabulary, rulebook.Records);
        var judged = 0;
        var compared = HerdComparer.Compare(RulebookComparison.Of(old, @new), Read, () => judged++);

        compared.Groups.ShouldHaveSingleItem().Cause.Changes.ShouldHaveSingleItem().Parts.ShouldHaveSingleItem().Name.ShouldBe("3");
        judged.ShouldBe(2 * 8);
    }

    private static Rulebook Rules(Func<int, int> days) => RulebookReader.Read("rules.byre", new OneFile(
        "event mastitis\n\nrules for recipients\n"
        + string.Concat(Enumerable.Range(0, 8).Select(place => $"rule \"{place}\"\n  needs no mastitis in the last {days(place)} days\n  because \"so\"\n"))
        + "records \"r\"\n  up to 2026-09-30\n  complete for mastitis since 2015-01-01\n"
        + "programme \"P\"\n  transfer on 2026-09-30\n  choose recipients from females, judged on first transfer, for looking only\n"))!.Rulebook;

    private sealed class OneFile(string text) : IRuleFiles
    {
        public string Resolve(string from, string relative) => relative;

        public string Show(string path) => path;

        public byte[]? Read(string path) => Encoding.UTF8.GetBytes(text);
    }

    private static bool Same(Dictionary<string, string> one, Dictionary<string, string> other) =>
        one.Count == other.Count && one.All(entry => other.GetValueOrDefault(entry.Key) == entry.Value);

    private static void Hold(Func<Pair, string?> wrong) => Each.Hold(Pairs, Cases.Count / 12, wrong, pair => new JudgingCase(pair.Old, pair.Farm, null, null) + "\n=====\n"
        + Byrelaw.Language.Canonical.CanonicalText.Of(pair.New));

    /// <summary>The old rulebook with parts of another one.</summary>
    private static Rulebook Mutant(Rulebook old, Rulebook other, int taken)
    {
        if (taken < 32)
        {
            return other;
        }

        var both = old with
        {
            Programme = (taken & 1) == 0 ? old.Programme : other.Programme,
            Records = (taken & 2) == 0 ? old.Records : other.Records,
            Waivers = (taken & 4) == 0 ? old.Waivers : [.. other.Waivers.Where(waiver => old.Rules.Any(rule => rule.Name == waiver.Rule))],
        };
        return old.Defines.Length != other.Defines.Length ? both : GenRulebooks.AsBound(both with
        {
            Defines = (taken & 8) == 0 ? old.Defines : other.Defines,
            Prefers = (taken & 16) == 0 ? old.Prefers : other.Prefers,
            Rules = [.. old.Rules.Select((rule, place) => (taken >> (5 + (place % 3)) & 1) == 0 ? rule : other.Rules.FirstOrDefault(one => one.Name == rule.Name) ?? rule)],
        });
    }

    private sealed record Pair(Rulebook Old, Rulebook New, PlainFarm Farm)
    {
        public RulebookComparison Between { get; } = RulebookComparison.Of(Old, New);

        public Herd Read(Rulebook rulebook) => HerdReader.Read(FarmCsv.Animals(Farm), FarmCsv.Events(Farm), rulebook.Vocabulary, rulebook.Records);

        /// <summary>What a page would say of each animal, rules by their new names.</summary>
        public Dictionary<string, string> Judged(Rulebook rulebook)
        {
            var name = ReferenceEquals(rulebook, Old) ? Between.NameNow : new Func<string, string>(own => own);
            return new Judge(rulebook, Read(rulebook)).JudgeAll().Lists
                .SelectMany(list => list.Animals.Select(animal => (Who: $"{list.Choice.List} {animal.Number}", Said: Said(animal, name))))
                .ToDictionary(one => one.Who, one => one.Said);
        }

        private static string Said(AnimalJudgement animal, Func<string, string> name) =>
            $"{animal.Answer} {animal.ReadyFrom} {animal.ReadyUntil} {animal.TooLate} {animal.NotBefore} {animal.ForGood} {animal.NeverTogether.Length} {animal.Score} "
            + string.Join("; ", animal.Rules.Where(rule => rule.InTheWay).Select(rule => $"{(rule.Rule is not null ? name(rule.Name) : rule.Gate == Gate.None ? "unread" : rule.Name)} {rule.Answer}").Order(StringComparer.Ordinal));
    }
}
