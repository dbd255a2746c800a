namespace Byrelaw.Language.Binding.Farm;

/// <summary>
/// Rules for a list that nobody chooses hold for nobody, and they may have been meant for one that is chosen: that one is
/// broken. In a used file they may be for another farm, so there only a slip of a chosen name is told.
/// </summary>
internal static class UnchosenRules
{
    // Rules for pairs are judged beside the lists.
    private const string Pairs = "pairs";

    /// <summary>Tells each, and breaks the list that it may have been meant for.</summary>
    public static void Check(Programme programme, Block block, IEnumerable<RuleFile> files, RuleBinder rules)
    {
        if (block.IsBroken || programme.Choices.IsEmpty)
        {
            // A line that could not be read may choose it.
            return;
        }

        var chosen = block.Lines.OfType<ChooseLine>().Select(line => line.List.Text).ToList();
        foreach (var file in files)
        {
            foreach (var head in file.Blocks.Select(one => one.Head).OfType<RulesForLine>())
            {
                var name = NameFolding.Fold(head.List.Text);
                if (name is Rule.EveryList or Pairs || chosen.Exists(list => NameFolding.Fold(list) == name))
                {
                    continue;
                }

                // Where the chosen name has no rules, the slip is told there, and the list is broken already.
                var near = NearestName.To(head.List.Text, chosen);
                if (near is not null && rules.FindList(near) is null)
                {
                    continue;
                }

                if (file.IsRoot || near is not null)
                {
                    var choice = block.Lines.OfType<ChooseLine>().FirstOrDefault(line => line.List.Text == near);
                    file.Problems.Add(FloorProblems.RulesNobodyChooses(head.List.Span, head.List.Text, near, choice?.List.Span));
                    rules.Broken.Add(new BrokenPart(near is null ? null : programme.Choices.FirstOrDefault(one => NameFolding.Fold(one.List) == NameFolding.Fold(near))?.List, head.Span));
                }
            }
        }
    }
}
