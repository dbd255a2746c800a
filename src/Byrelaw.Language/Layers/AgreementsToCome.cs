using Byrelaw.Language.Syntax.Lines;

namespace Byrelaw.Language.Layers;

/// <summary>Tells of agreements dated later than today: what they agree to is not in force yet.</summary>
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
        }
    }
}
