namespace Byrelaw.Language.Binding.Rules;

/// <summary>Orders defines so that each stands after those it uses. Without recursion, so that no chain is too long for it.</summary>
internal static class DefineOrder
{
    /// <summary>The order. Defines of a circle, and their users, are broken and stand last; each circle is told once.</summary>
    public static List<DefineEntry> Of(IReadOnlyList<DefineEntry> entries)
    {
        var waitsFor = entries.ToDictionary(entry => entry, entry => entry.Uses.Count);
        var users = entries.SelectMany(entry => entry.Uses, (entry, used) => (entry, used)).ToLookup(pair => pair.used, pair => pair.entry);
        var ordered = entries.Where(entry => entry.Uses.Count == 0).ToList();
        for (var i = 0; i < ordered.Count; i++)
        {
            foreach (var user in users[ordered[i]])
            {
                user.Depth = Math.Max(user.Depth, ordered[i].Depth + 1);
                waitsFor[user]--;
                if (waitsFor[user] == 0)
                {
                    ordered.Add(user);
                }
            }
        }

        var left = entries.Where(entry => waitsFor[entry] > 0).ToList();
        TellCircles(left, waitsFor);
        ordered.AddRange(left);
        for (var i = 0; i < ordered.Count; i++)
        {
            ordered[i].Index = i;
        }

        return ordered;
    }

    private static void TellCircles(List<DefineEntry> left, Dictionary<DefineEntry, int> waitsFor)
    {
        var walked = new HashSet<DefineEntry>();
        foreach (var start in left)
        {
            start.IsBroken = true;
            var path = new List<DefineEntry>();
            var onPath = new HashSet<DefineEntry>();
            var at = start;
            while (walked.Add(at))
            {
                path.Add(at);
                onPath.Add(at);
                at = at.Uses.First(used => waitsFor[used] > 0);
            }

            if (onPath.Contains(at))
            {
                var circle = path.Skip(path.IndexOf(at)).Append(at).Select(entry => entry.Name).ToList();
                at.File.Problems.Add(NameProblems.CircleOfDefines(at.Span, circle));
            }
        }
    }
}
