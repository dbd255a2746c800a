using Byrelaw.Language.Syntax.Lines;

namespace Byrelaw.Language.Layers;

/// <summary>Tells of agreements, and of tasks said to be done, dated later than today: they are not in force yet.</summary>
internal static class AgreementsToCome
{
    public static void Check(IEnumerable<RuleFile> files, LocalDate today)
    {
        foreach (var file in files)
        {
            foreach (var line in file.Blocks.SelectMany(block => block.Lines).OfType<AgreedByLine>().Where(line => line.On.Value > today))
            {
                file.Problems.Add(LayerProblems.AgreedLater(line.On.Span, line.On.Value, today));
            }

            foreach (var line in file.Blocks.Select(block => block.Head).OfType<DoneLine>().Where(line => line.On.Value > today))
            {
                file.Problems.Add(TaskProblems.DoneLater(line.On.Span, NumberText.Of(line.On.Value), NumberText.Of(today)));
            }
        }
    }
}
