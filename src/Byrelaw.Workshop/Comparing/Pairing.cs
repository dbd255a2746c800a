using System.Text.RegularExpressions;

namespace Byrelaw.Workshop.Comparing;

/// <summary>A thing as one rulebook has it and as the other does; null where one has none.</summary>
internal sealed record Pair<T>(T? Old, T? New, Sameness Sameness) where T : class
{
    public bool IsBoth => Old is not null && New is not null;
}

/// <summary>Finds what is one and the same in two rulebooks: by name, else by what it says, else by what it says but for numbers.</summary>
internal static partial class Pairing
{
    /// <summary>Pairs things. Old ones in their order, then the new ones that are nothing old.</summary>
    public static List<Pair<T>> Of<T>(
        IReadOnlyList<T> old, IReadOnlyList<T> @new, Func<T, string> name, Func<T, string> oldMeaning, Func<T, string> newMeaning) where T : class
    {
        var found = new Dictionary<T, (T New, Sameness Sameness)>(ReferenceEqualityComparer.Instance);
        var left = new HashSet<T>(@new, ReferenceEqualityComparer.Instance);
        var byName = @new.GroupBy(one => NameFolding.Fold(name(one))).ToDictionary(group => group.Key, group => group.First());
        foreach (var one in old)
        {
            if (byName.TryGetValue(NameFolding.Fold(name(one)), out var same) && left.Remove(same))
            {
                found[one] = (same, Sameness.SameName);
            }
        }

        Renamed(Sameness.SameMeaning, meaning => meaning);
        Renamed(Sameness.LikeMeaning, meaning => Number().Replace(meaning, "#"));
        return
        [
            .. old.Select(one => found.TryGetValue(one, out var pair) ? new Pair<T>(one, pair.New, pair.Sameness) : new Pair<T>(one, null, Sameness.SameName)),
            .. @new.Where(left.Contains).Select(one => new Pair<T>(null, one, Sameness.SameName)),
        ];

        // Of several with one meaning, those whose names are nearest.
        void Renamed(Sameness sameness, Func<string, string> shape)
        {
            var candidates =
                from one in old.Where(one => !found.ContainsKey(one))
                join other in @new.Where(left.Contains) on shape(oldMeaning(one)) equals shape(newMeaning(other))
                let slips = EditDistance.Between(NameFolding.Fold(name(one)), NameFolding.Fold(name(other)), int.MaxValue - 1)
                orderby slips, name(one), name(other)
                select (one, other);
            foreach (var (one, other) in candidates.ToList())
            {
                if (!found.ContainsKey(one) && left.Remove(other))
                {
                    found[one] = (other, sameness);
                }
            }
        }
    }

    /// <summary>Pairs words: two are one if they have one name, or if the one's name is a further name of the other.</summary>
    public static List<Pair<T>> OfWords<T>(IReadOnlyList<T> old, IReadOnlyList<T> @new, Func<T, (string Name, ImmutableArray<string> Also)> names) where T : class
    {
        var pairs = Of(old, @new, word => names(word).Name, _ => "old", _ => "new");
        var alone = pairs.Where(pair => pair.New is null).Select(pair => pair.Old!).ToList();
        foreach (var now in pairs.Where(pair => pair.Old is null).Select(pair => pair.New!).ToList())
        {
            if (alone.Find(word => IsAlso(word, now) || IsAlso(now, word)) is { } before)
            {
                alone.Remove(before);
                pairs.RemoveAll(pair => ReferenceEquals(pair.New, now));
                var at = pairs.FindIndex(pair => ReferenceEquals(pair.Old, before));
                pairs[at] = new Pair<T>(before, now, Sameness.SameMeaning);
            }
        }

        return pairs;

        bool IsAlso(T word, T other) => names(word).Also.Any(also => NameFolding.Fold(also) == NameFolding.Fold(names(other).Name));
    }

    [GeneratedRegex(@"-?[0-9]+(\.[0-9]+)?")]
    private static partial Regex Number();
}
