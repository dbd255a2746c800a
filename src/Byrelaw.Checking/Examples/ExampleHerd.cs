namespace Byrelaw.Checking.Examples;

/// <summary>The herd of a worked example: her, her mob's samples, and herdmates where her standing is said.</summary>
/// <param name="Herd">Read as a farm's records are.</param>
/// <param name="Animal">Her place in it.</param>
/// <param name="Problems">What is wrong with her records, at their places in the rule file.</param>
internal sealed record ExampleHerd(Herd Herd, int Animal, ImmutableArray<Diagnostic> Problems)
{
    private const string Parity = "parity";

    /// <summary>Makes it.</summary>
    public static ExampleHerd Of(Example example, Rulebook rulebook)
    {
        var number = NumberOf(example.Sort);
        var rows = example.Records.SelectMany(record => Rows(record, example, number)).ToList();
        var herd = new MadeUpHerd(AnimalsOf(example, number), [.. rows.Select(row => row.Row)], example.RecordsTo)
        {
            NotKept = example.NotKept,
            ShownFile = example.Span.File.Path,
            Mobs = rulebook.Mobs().Select(mob => mob.Name),
        }.Read(rulebook.Vocabulary);
        return new ExampleHerd(herd, herd.Find(number), [.. herd.Problems.Select(problem => Placed(problem, example, rows)).Distinct()]);
    }

    /// <summary>What she is called in explanations.</summary>
    private static string NumberOf(ExampleSort sort) => sort switch
    {
        ExampleSort.Cow => "the cow",
        ExampleSort.Heifer => "the heifer",
        _ => "the animal",
    };

    private static ImmutableArray<MadeUpAnimal> AnimalsOf(Example example, string number)
    {
        var facts = example.Facts.ToImmutableDictionary(fact => fact.Name, fact => fact.Value);
        if (example.Sort == ExampleSort.Heifer)
        {
            facts = facts.SetItem(Parity, "0");
        }

        var animal = new MadeUpAnimal(number)
        {
            Born = example.Born,
            Sex = example.Sort switch { ExampleSort.Male => "M", ExampleSort.Animal => "", _ => "F" },
            Facts = facts,
            Line = example.AnimalSpan.Line,
        };
        return example.Rank is { } rank ? Herdmates(animal, rank, example.Sort == ExampleSort.Heifer ? "0" : "1") : [animal];
    }

    /// <summary>Her, and the others of her herd: as many with a greater value as her rank says.</summary>
    private static ImmutableArray<MadeUpAnimal> Herdmates(MadeUpAnimal animal, ExampleRank rank, string parity)
    {
        var name = rank.Fact.Name;
        var own = animal.Facts.TryGetValue(name, out var said) && double.TryParse(said.Split(' ')[0], CultureInfo.InvariantCulture, out var value) ? value : rank.Of;
        var herd = new List<MadeUpAnimal> { animal with { Facts = animal.Facts.SetItem(name, Text(own)) } };
        for (var place = 1; place <= rank.Of; place++)
        {
            if (place != rank.Rank)
            {
                herd.Add(new MadeUpAnimal($"herdmate {place}")
                {
                    Born = animal.Born,
                    Facts = ImmutableDictionary<string, string>.Empty.Add(Parity, parity).Add(name, Text(own + rank.Rank - place)),
                    Line = rank.Span.Line,
                });
            }
        }

        return [.. herd];

        string Text(double number) => string.Create(CultureInfo.InvariantCulture, $"{number}") + (rank.Fact.Unit is { } unit ? $" {unit.Symbol}" : "");
    }

    private static IEnumerable<(ExampleRecord Record, MadeUpRow Row)> Rows(ExampleRecord record, Example example, string number)
    {
        var subject = record.OfHerMob > 0 ? $"mob:{MobOn(example, record)}" : number;
        var row = new MadeUpRow(record.Date, subject, record.Kind.Name, record.Value, record.Unit, record.Span.Line) { Details = record.Details };
        return Enumerable.Repeat((record, row), Math.Max(1, record.OfHerMob));
    }

    /// <summary>The mob she is in on the day of a sample; her first one where she is in none yet.</summary>
    private static string MobOn(Example example, ExampleRecord sample)
    {
        ExampleRecord[] moves = [.. example.Records.Where(record => record.Kind is EventKind { IsMobMove: true }).OrderBy(record => record.Date)];
        return (moves.LastOrDefault(move => move.Date <= sample.Date) ?? moves[0]).Value;
    }

    /// <summary>A problem of the reader, at the line of the example. Rows of events start with their date, and no animal here is called by one.</summary>
    private static Diagnostic Placed(Diagnostic problem, Example example, List<(ExampleRecord Record, MadeUpRow Row)> rows)
    {
        var isEvent = problem.LineText.Length > 0 && char.IsAsciiDigit(problem.LineText[0]);
        var place = problem.Line - 2;
        var at = isEvent && place >= 0 && place < rows.Count ? rows[place].Record.Span
            : example.Facts.FirstOrDefault(fact => problem.Found.Contains($"`{fact.Value}`", StringComparison.Ordinal))?.Span ?? example.AnimalSpan;
        return Problem.Error("B1022", at, problem.Found, problem.Expected, problem.Help);
    }
}
