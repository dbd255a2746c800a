using System.Globalization;
using Byrelaw.Language.Rulebooks.Words;

namespace Byrelaw.Checking.Tests.Trouble;

/// <summary>Random animals as there may be any, with records on the days about which the rules ask, and now and then a gap in them.</summary>
internal sealed class RandomAnimals(Random random, LocalDate day)
{
    private static readonly int[] Days = [0, 1, 5, 19, 20, 21, 28, 29, 30, 31, 32, 39, 40, 41, 48, 55, 56, 57, 59, 60, 61, 62, 63, 64, 90, 120, 200, 400, 800];
    private readonly ImmutableArray<MadeUpRow>.Builder _rows = ImmutableArray.CreateBuilder<MadeUpRow>();

    public MadeUpHerd Herd(int count, Vocabulary vocabulary) => new([.. Enumerable.Range(1, count).Select(Animal)], _rows.ToImmutable(), day)
    {
        NotKept = [.. vocabulary.Kinds.Where(_ => random.Next(6) == 0)],
    };

    private MadeUpAnimal Animal(int number)
    {
        var name = number.ToString(CultureInfo.InvariantCulture);
        var age = random.Next(3) == 0 ? random.Next(200, 900) : random.Next(400, 3000);
        var calvings = Happen(name, "calving", age - 460, random.Next(3)).Distinct().Count();
        Happen(name, "heat", age, random.Next(4));
        Happen(name, "mating", age - 190, random.Next(3));
        Happen(name, "bull in", age, random.Next(2));
        Happen(name, "bull out", age, random.Next(2));
        Happen(name, "body condition", age, random.Next(4), () => Pick("3.5", "4", "4.5", "5", "5.5"));
        Happen(name, "neospora", age, random.Next(3), () => Pick("positive", "negative", "pending"));
        Happen(name, "weight", age, random.Next(2), () => Pick("290", "300", "360", "420"), "kg");
        var facts = ImmutableDictionary<string, string>.Empty
            .Add("breed", Pick("", "Jersey", "Friesian", "crossbred"))
            .Add("breeding index", Pick("", "80", "90", "95", "100", "110"))
            .Add("mature weight", Pick("", "500", "600"))
            .Add("parity", random.Next(2) == 0 ? "" : calvings.ToString(CultureInfo.InvariantCulture));
        return new MadeUpAnimal(name) { Born = Date(age), Facts = facts };
    }

    private List<int> Happen(string animal, string kind, int longestAgo, int times, Func<string>? value = null, string unit = "")
    {
        var days = new List<int>();
        for (var i = 0; i < times; i++)
        {
            var ago = Days[random.Next(Days.Length)];
            if (ago <= longestAgo)
            {
                days.Add(ago);
                _rows.Add(new MadeUpRow(day.PlusDays(-ago), animal, kind, value?.Invoke() ?? "", unit));
            }
        }

        return days;
    }

    private string Date(int ago) => NodaTime.Text.LocalDatePattern.Iso.Format(day.PlusDays(-ago));

    private string Pick(params string[] choices) => choices[random.Next(choices.Length)];
}
