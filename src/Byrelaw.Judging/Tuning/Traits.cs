using System.Globalization;

namespace Byrelaw.Judging.Tuning;

/// <summary>What is so of one animal on the first judging day. What the tuned number is about is left out: that those let in by a
/// number of days since calving calved at one time is no news.</summary>
internal sealed class Traits(HerdDays days, RuleNumber number, Choice choice)
{
    private const int Band = 4;
    private readonly Herd _herd = days.Herd;
    private readonly int _day = Day.Number(choice.JudgedFrom);
    private readonly EventKind? _calving = days.Herd.Vocabulary.Calving;
    private readonly Parities _parities = new(days, days.Herd.Vocabulary.Calving?.Id);
    private readonly bool _isAboutCalving = number.Condition is TimeSinceCondition since && since.Kinds.Any(kind => kind.Id == days.Herd.Vocabulary.Calving?.Id);
    private readonly bool _isAboutSort = number.Rule.Audience is Audience.Cows or Audience.Heifers;
    private readonly bool _isAboutParity = number.Condition is ParityCondition;

    public HashSet<Trait> Of(AnimalJudgement judged)
    {
        var (traits, animal) = (new HashSet<Trait>(), judged.Animal);
        if (!_isAboutSort && judged.Sort is AnimalSort.Cow or AnimalSort.Heifer)
        {
            traits.Add(new Trait(TraitKind.Sort, "", judged.Sort == AnimalSort.Cow ? "cow" : "heifer"));
        }

        if (_herd.Mobs.At(animal, _day) is var mob and >= 0)
        {
            traits.Add(new Trait(TraitKind.Mob, "", _herd.Mobs.Names[mob]));
        }

        foreach (var fact in _herd.Vocabulary.Facts.Where(fact => fact.Type == FactType.OneOf && _herd.Facts[fact.Id].States[animal] == FactState.Known))
        {
            traits.Add(new Trait(TraitKind.Fact, fact.Name, _herd.Facts[fact.Id].Texts[animal]!));
        }

        if (judged.Sort == AnimalSort.Cow)
        {
            Calvings(traits, animal);
        }

        traits.UnionWith(judged.Rules.Where(rule => rule is { IsShaky: true, Rule: not null } && rule.Name != number.Rule.Name).Select(rule => new Trait(TraitKind.CloseRule, "", rule.Name)));
        return traits;
    }

    private void Calvings(HashSet<Trait> traits, int animal)
    {
        if (_calving is null)
        {
            return;
        }

        var run = _herd.Runs[_calving.Id];
        var last = Runs.LastAtMost(run, animal, _day);
        var until = int.MaxValue;
        var parity = _parities.On(animal, _day, ref until);
        if (!_isAboutParity && parity.Least == parity.Most)
        {
            traits.Add(new Trait(TraitKind.Parity, "", parity.Least.ToString(CultureInfo.InvariantCulture)));
        }

        if (!_isAboutCalving && last >= run.Starts[animal])
        {
            var from = (_day - run.Days[last]) / 7 / Band * Band;
            traits.Add(new Trait(TraitKind.WeeksCalved, "", $"{from} to {from + Band - 1}"));
        }
    }
}
