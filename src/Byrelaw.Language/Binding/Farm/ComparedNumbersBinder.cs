using Byrelaw.Language.Blocks;
using Byrelaw.Language.Syntax.Lines;

namespace Byrelaw.Language.Binding.Farm;

/// <summary>Binds what a person says of numbers that may be one animal's. It undoes a doubt, so it has a reason and an agreement; without them it does not count.</summary>
internal static class ComparedNumbersBinder
{
    public static ImmutableArray<ComparedNumbers> Bind(Context context, Block block)
    {
        var all = new List<ComparedNumbers>();
        for (var i = 0; i < block.Lines.Count; i++)
        {
            if (block.Lines[i] is SameAnimalLine line && Bind(context, line, RecordsBinder.Below(block, i)) is { } compared)
            {
                if (all.Find(other => other.AreOne != compared.AreOne && other.Numbers.Intersect(compared.Numbers).Count() > 1) is { } other)
                {
                    context.Problems.Add(FarmProblems.SameAndNot(line.Span, other.Span));
                }
                else
                {
                    all.Add(compared);
                }
            }
        }

        return [.. all];
    }

    private static ComparedNumbers? Bind(Context context, SameAnimalLine line, List<BodyLine> below)
    {
        var count = context.Problems.Count;
        foreach (var again in line.Animals.GroupBy(animal => animal.Value).Where(animals => animals.Count() > 1))
        {
            context.Problems.Add(FarmProblems.AnimalTwice(again.Last().Span));
        }

        if (line.Animals.Length == 1)
        {
            context.Problems.Add(FarmProblems.OneNumber(line.Span));
        }

        var because = below.OfType<BecauseLine>().FirstOrDefault();
        var agreed = below.OfType<AgreedByLine>().FirstOrDefault();
        if (because is null || agreed is null)
        {
            context.Problems.Add(FarmProblems.ComparedWithoutReason(line.Span, because is null, agreed is null));
        }

        return context.Problems.Count > count ? null : new ComparedNumbers(
            [.. line.Animals.Select(animal => animal.Value)], line.AreOne, because!.Reason.Value,
            new Agreement([.. agreed!.By.Select(by => by.Value)], agreed.On.Value), line.Span);
    }
}
