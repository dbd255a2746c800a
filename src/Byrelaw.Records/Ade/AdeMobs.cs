using System.Text.Json;

namespace Byrelaw.Records.Ade;

/// <summary>In which mob an animal is by the members of the sets: what a farm's own file says in a column, for an animal of which no message tells that she moved.</summary>
/// <remarks>A set is a mob where it is for an Enclosure; of one that nobody says the purpose of, her mob is not known. It is in doubt where two of them hold her.</remarks>
internal sealed class AdeMobs
{
    private readonly Dictionary<string, string> _mobs = new(StringComparer.Ordinal);

    /// <summary>Takes the sets.</summary>
    /// <param name="sets">Those that stand.</param>
    /// <param name="disputed">Those of which another message says something else.</param>
    public AdeMobs(IEnumerable<AdeResource> sets, IReadOnlySet<AdeResource> disputed)
    {
        foreach (var set in sets.Where(set => set.Text("purpose") is "Enclosure" or ""))
        {
            var mob = set.Text("purpose").Length == 0 ? "" : disputed.Contains(set) ? Unreadable.Of(Name(set)) : Name(set);
            foreach (var animal in Members(set))
            {
                _mobs[animal] = _mobs.TryGetValue(animal, out var other) && other != mob ? Unreadable.Of(Name(set)) : mob;
            }
        }
    }

    /// <summary>What people call a set.</summary>
    public static string Name(AdeResource set) => set.Text("name") is { Length: > 0 } name ? name : set.Text("id");

    /// <summary>All that matters of a set, to tell two of them apart.</summary>
    public static string Said(AdeResource set) => string.Join('|', [Name(set), set.Text("purpose"), .. Members(set)]);

    /// <summary>The mob of an animal; empty where no set holds her.</summary>
    public string Of(string animal) => _mobs.GetValueOrDefault(animal, "");

    private static IEnumerable<string> Members(AdeResource set)
    {
        if (!set.Body.TryGetProperty("member", out var members) || members.ValueKind != JsonValueKind.Array)
        {
            return [];
        }

        return members.EnumerateArray().Select(member => new AdeResource(0, "", member))
            .Select(member => member.Text("id") is { Length: > 0 } id ? id : member.Text("animal", "id"))
            .Where(id => id.Length > 0);
    }
}
