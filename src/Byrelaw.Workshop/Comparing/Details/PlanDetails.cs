namespace Byrelaw.Workshop.Comparing.Details;

/// <summary>What differs in the blocks that a plan is made from, as the canonical text has them.</summary>
internal static class PlanDetails
{
    /// <summary>Blocks that are compared by what they mean; all others are compared as they print.</summary>
    private static readonly FrozenSet<string> Others =
        FrozenSet.ToFrozenSet(["event", "measure", "test", "fact", "spell", "define", "rules", "rule", "safety", "prefer", "change", "drop", "waive", "records", "programme"]);

    public static IEnumerable<Difference> Between(Rulebook old, Rulebook @new)
    {
        var (was, now) = (Blocks(old), Blocks(@new));
        foreach (var head in was.Keys.Union(now.Keys).Order(StringComparer.Ordinal))
        {
            var (before, after) = (was.GetValueOrDefault(head), now.GetValueOrDefault(head));
            if (before != after)
            {
                yield return new PlanDifference
                {
                    OldName = before is null ? null : head,
                    NewName = after is null ? null : head,
                    Details = before is null || after is null ? [] : [.. Lines(before, after)],
                };
            }
        }
    }

    private static IEnumerable<Detail> Lines(string old, string @new)
    {
        var (was, now) = (old.Split('\n'), @new.Split('\n'));
        return was.Except(now).Select(line => new Detail(Aspect.Line, line.Trim(), null))
            .Concat(now.Except(was).Select(line => new Detail(Aspect.Line, null, line.Trim())));
    }

    /// <summary>Blocks by their first line; a line without lines below it is a block of its own.</summary>
    private static Dictionary<string, string> Blocks(Rulebook rulebook)
    {
        var blocks = new Dictionary<string, string>();
        foreach (var block in CanonicalText.Of(rulebook).TrimEnd('\n').Split("\n\n").Where(block => !Others.Contains(block.Split(' ', '\n')[0])))
        {
            var lines = block.Split('\n');
            foreach (var own in lines.Length > 1 && lines[1].StartsWith(' ') ? [block] : lines)
            {
                var head = own.Split('\n')[0];
                blocks[head] = blocks.TryGetValue(head, out var first) ? first + "\n" + own : own;
            }
        }

        blocks.Remove("");
        return blocks;
    }
}
