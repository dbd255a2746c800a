using System.Runtime.InteropServices;

namespace Byrelaw.Language.Reasoning;

/// <summary>Finds, for each of some rules, those that have to do with it, without looking at the others.</summary>
internal sealed class Neighbours
{
    private readonly IReadOnlyList<RuleFormulas> _rules;
    private readonly Dictionary<(Touched.Sort, int), List<int>> _byKey = [];

    /// <summary>Takes the rules.</summary>
    public Neighbours(IReadOnlyList<RuleFormulas> rules)
    {
        _rules = rules;
        for (var place = 0; place < rules.Count; place++)
        {
            foreach (var key in rules[place].Touches.Keys)
            {
                (CollectionsMarshal.GetValueRefOrAddDefault(_byKey, key, out _) ??= []).Add(place);
            }
        }
    }

    /// <summary>The places of those after one that have to do with it, in order.</summary>
    public SortedSet<int> After(int place)
    {
        var found = new SortedSet<int>();
        foreach (var key in _rules[place].Touches.Asked)
        {
            if (_byKey.TryGetValue(key, out var places))
            {
                var next = places.BinarySearch(place + 1);
                for (var i = next < 0 ? ~next : next; i < places.Count; i++)
                {
                    found.Add(places[i]);
                }
            }
        }

        return found;
    }
}
