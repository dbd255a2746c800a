namespace Byrelaw.Language.Layers;

/// <summary>
/// Two layers that touch one rule, neither lying over the other, conflict. A layer over both
/// settles it with a change or drop of its own, if that states every line that both state.
/// </summary>
internal static class Conflicts
{
    /// <summary>Whether a layer of this file would lie over layers that conflict.</summary>
    public static bool Settles(RuleEntry target, RuleFile file) =>
        target.Tips.Where(tip => file.Sees(tip.File)).DistinctBy(tip => tip.File).Count(tip => tip.File != file) > 1;

    /// <summary>Lays one more layer on a rule.</summary>
    public static void Lay(RuleEntry target, Layer layer)
    {
        var below = target.Tips.Where(tip => layer.File.Sees(tip.File)).ToList();
        var ownLines = below.Where(tip => tip.File == layer.File).SelectMany(tip => tip.Lines).Concat(layer.Lines).ToHashSet();
        var others = below.Where(tip => tip.File != layer.File).ToList();
        var open = others.Where(tip => others.Exists(other => other.File != tip.File && tip.Lines.Overlaps(other.Lines.Except(ownLines)))).ToList();
        target.Tips.RemoveAll(tip => below.Contains(tip) && (layer.Lines.Contains("drop") || !open.Contains(tip)));
        target.Tips.Add(new Layer(layer.File, layer.Span, ownLines));
    }

    /// <summary>Says which conflicts nobody settled; nobody passes such a rule.</summary>
    public static void Tell(IEnumerable<RuleEntry> entries)
    {
        foreach (var entry in entries)
        {
            var last = entry.Tips.LastOrDefault();
            var other = entry.Tips.FindLast(tip => tip.File != last?.File);
            if (last is not null && other is not null)
            {
                last.File.Problems.Add(LayerProblems.Conflict(last.Span, entry.Name, other.Span));
                entry.Drop = null;
                entry.Break();
            }
        }
    }
}
