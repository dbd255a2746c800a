namespace Byrelaw.Language.Layers;

/// <summary>Waivers that are in force on none of the days on which their rule's lists are judged.</summary>
internal static class WaiversInTime
{
    /// <summary>Warns of each, with the place of the list.</summary>
    public static void Check(Programme programme, IEnumerable<Waiver> waivers, RuleBinder rules, List<Diagnostic> problems)
    {
        foreach (var waiver in waivers)
        {
            var choices = programme.Choices.Where(choice => rules.Find(waiver.Rule) is { } entry && (entry.List == choice.List || entry.List == Rule.EveryList)).ToList();
            if (choices.Count > 0 && choices.All(choice => waiver.Until < choice.JudgedFrom))
            {
                problems.Add(LayerProblems.Lapsed(waiver.Span, NumberText.Of(waiver.Until), choices[0].List, choices[0].Span));
            }
            else if (choices.Count > 0 && choices.All(choice => waiver.Agreement.On > choice.JudgedTo))
            {
                problems.Add(LayerProblems.NotYet(waiver.Span, NumberText.Of(waiver.Agreement.On), choices[0].List, choices[0].Span));
            }
        }
    }
}
