using Byrelaw.Judging.Tests.Reference;

namespace Byrelaw.Judging.Tests.Outside;

/// <summary>
/// The same conditions written as SQL over the same random herd: counts in windows, days since, latest values and answers,
/// age, standing, and lists of them under SQL's NULL logic. Records without gaps, so that absence means absence for both.
/// </summary>
public sealed class SqlConditionsTests
{
    /// <summary>Each condition with what it is in SQL; <c>@0</c> is the animal, <c>@1</c> the day of judging.</summary>
    private static readonly ImmutableArray<(Condition Condition, string Sql)> Conditions =
    [
        (Count(new CountTest(Comparison.Exactly, 0, 0), 30, Words.Mastitis), "(SELECT COUNT(DISTINCT date) = 0 FROM events WHERE animal = @0 AND kind = 'mastitis' AND date <= @1 AND julianday(@1) - julianday(date) <= 30)"),
        (Count(new CountTest(Comparison.AtLeast, 2, 2), 90, Words.Heat, Words.Mating), "(SELECT COUNT(*) >= 2 FROM (SELECT DISTINCT date, kind FROM events WHERE animal = @0 AND kind IN ('heat', 'mating') AND date <= @1 AND julianday(@1) - julianday(date) <= 90))"),
        (Count(new CountTest(Comparison.Between, 1, 2), 365, Words.BullIn), "(SELECT COUNT(DISTINCT date) BETWEEN 1 AND 2 FROM events WHERE animal = @0 AND kind = 'bull in' AND date <= @1 AND julianday(@1) - julianday(date) <= 365)"),
        (new TimeSinceCondition(new TimeTest(Comparison.AtLeast, Length(56), Length(56)), [Words.Calving]) { Span = Words.Nowhere },
            "(SELECT COALESCE(julianday(@1) - julianday(MAX(date)) >= 56, 1) FROM events WHERE animal = @0 AND kind = 'calving' AND date <= @1)"),
        (new TimeSinceCondition(new TimeTest(Comparison.Between, Length(6), Length(60)), [Words.Heat, Words.Mating]) { Span = Words.Nowhere },
            "(SELECT COALESCE(julianday(@1) - julianday(MAX(date)) BETWEEN 6 AND 60, 0) FROM events WHERE animal = @0 AND kind IN ('heat', 'mating') AND date <= @1)"),
        (new MeasuredCondition(Aggregate.Latest, Words.BodyCondition, [InTheLast(90)], new NumberTest(Comparison.Between, new Limit(4), new Limit(5.5))) { Span = Words.Nowhere },
            "(SELECT CASE WHEN MIN(number BETWEEN 4 AND 5.5) = MAX(number BETWEEN 4 AND 5.5) THEN MIN(number BETWEEN 4 AND 5.5) END FROM events WHERE animal = @0 AND kind = 'body condition' AND date = (SELECT MAX(date) FROM events WHERE animal = @0 AND kind = 'body condition' AND date <= @1 AND julianday(@1) - julianday(date) <= 90))"),
        (new MeasuredCondition(Aggregate.Lowest, Words.Copper, [InTheLast(365)], new NumberTest(Comparison.AtLeast, new Limit(7), new Limit(7))) { Span = Words.Nowhere },
            "(SELECT MIN(number) >= 7 FROM events WHERE animal = @0 AND kind = 'serum copper' AND date <= @1 AND julianday(@1) - julianday(date) <= 365)"),
        (new MeasuredCondition(Aggregate.Average, Words.Weight, [], new NumberTest(Comparison.MoreThan, new Limit(400), new Limit(400))) { Span = Words.Nowhere },
            "(SELECT round(AVG(number), 9) > 400 FROM events WHERE animal = @0 AND kind = 'weight' AND date <= @1)"),
        (new MeasuredCondition(Aggregate.Latest, Words.Weight, [], new NumberTest(Comparison.AtLeast, new Limit(60, Words.MatureWeight), new Limit(60, Words.MatureWeight))) { Span = Words.Nowhere },
            "(SELECT CASE WHEN MIN(ok) = MAX(ok) AND COUNT(ok) = COUNT(*) THEN MIN(ok) END FROM (SELECT e.number >= round(0.6 * a.mature, 9) AS ok FROM events e JOIN animals a ON a.number = e.animal WHERE e.animal = @0 AND e.kind = 'weight' AND e.date = (SELECT MAX(date) FROM events WHERE animal = @0 AND kind = 'weight' AND date <= @1)))"),
        (new TestCondition(Words.Virus, [InTheLast(365)], [1], false) { Span = Words.Nowhere },
            "(SELECT CASE WHEN MIN(value = 'negative') = MAX(value = 'negative') THEN MIN(value = 'negative') END FROM events WHERE animal = @0 AND kind = 'BVD virus' AND date = (SELECT MAX(date) FROM events WHERE animal = @0 AND kind = 'BVD virus' AND date <= @1 AND julianday(@1) - julianday(date) <= 365))"),
        (new AgeCondition(new TimeTest(Comparison.AtLeast, Length(700), Length(700))) { Span = Words.Nowhere },
            "(SELECT julianday(@1) - julianday(born) >= 700 FROM animals WHERE number = @0)"),
        (new FactTextCondition(Words.Breed, ["Friesian", "Jersey"], false) { Span = Words.Nowhere },
            "(SELECT breed COLLATE NOCASE IN ('Friesian', 'Jersey') FROM animals WHERE number = @0)"),
        (new FactNumberCondition(Words.Index, new NumberTest(Comparison.AtLeast, new Limit(110.5), new Limit(110.5))) { Span = Words.Nowhere },
            "(SELECT standing >= 110.5 FROM animals WHERE number = @0)"),
        // k = ceil(T x P / 100), in whole numbers: (T x 25 + 99) / 100.
        (new StandingCondition(Words.Index, false, 25, HerdGroup.Herd) { Span = Words.Nowhere },
            "(SELECT CASE WHEN hers IS NULL THEN NULL WHEN r + u < k THEN 1 WHEN r >= k THEN 0 END FROM (SELECT (SELECT standing FROM animals WHERE number = @0) AS hers, COUNT(standing > (SELECT standing FROM animals WHERE number = @0) OR NULL) AS r, COUNT(*) - COUNT(standing) AS u, (COUNT(*) * 25 + 99) / 100 AS k FROM animals WHERE sex = 'F' AND born <= @1))"),
        (new StandingCondition(Words.Index, false, 25, HerdGroup.Herd) { WithValue = true, Span = Words.Nowhere },
            "(SELECT CASE WHEN hers IS NOT NULL THEN r < k END FROM (SELECT (SELECT standing FROM animals WHERE number = @0) AS hers, COUNT(standing > (SELECT standing FROM animals WHERE number = @0) OR NULL) AS r, (COUNT(standing) * 25 + 99) / 100 AS k FROM animals WHERE sex = 'F' AND born <= @1))"),
    ];

    private static readonly ImmutableArray<(ListKind Kind, string Sql)> Lists = [(ListKind.AllOf, "{0} AND {1}"), (ListKind.AnyOf, "{0} OR {1}"), (ListKind.NoneOf, "NOT ({0} OR {1})")];

    private static readonly Gen<(PlainFarm Farm, Season Season, LocalDate On, int First, int Second, int List)> Cases =
        from season in Season.Any
        from farm in GenFarms.For(season, tidy: true).Where(GenFarms.HasOnlyLikelyCalvings)
        from days in Gen.Int[-60, 60]
        from first in Gen.Int[0, Conditions.Length - 1]
        from second in Gen.Int[0, Conditions.Length - 1]
        from list in Gen.Int[0, Lists.Length - 1]
        select (Kept(farm), season, season.Known.PlusDays(days), first, second, list);

    [Fact]
    public void Every_condition_and_list_agrees_with_SQL() => Each.Hold(
        Cases, SideBySide.Cases.Count / 2, one => Disagreement(one.Farm, one.Season, one.On, one.First, one.Second, one.List),
        one => $"on {one.On}\n{System.Text.Encoding.UTF8.GetString(FarmCsv.Animals(one.Farm))}{System.Text.Encoding.UTF8.GetString(FarmCsv.Events(one.Farm))}");

    private static string? Disagreement(PlainFarm farm, Season season, LocalDate on, int first, int second, int list)
    {
        var (listKind, listSql) = Lists[list];
        var conditions = Conditions.Add((
            new ListCondition(listKind, 0, [Conditions[first].Condition, Conditions[second].Condition]) { Span = Words.Nowhere },
            string.Format(System.Globalization.CultureInfo.InvariantCulture, listSql, Conditions[first].Sql, Conditions[second].Sql)));
        var rulebook = RulebookOf(conditions.Select(condition => condition.Condition), season, on);
        var herd = HerdReader.Read(FarmCsv.Animals(farm), FarmCsv.Events(farm), rulebook.Vocabulary, rulebook.Records);
        var judge = new Judge(rulebook, herd);
        using var sql = Load(farm);
        foreach (var animal in farm.Animals)
        {
            var judged = judge.JudgeOne(rulebook.Programme!.Choices[0], herd.Find(animal.Number));
            for (var i = 0; i < conditions.Length; i++)
            {
                var said = judged.Rules.Single(rule => rule.Name == $"rule {i}").Timeline.At(on).Truth;
                var query = $"SELECT {conditions[i].Sql}";
                var expected = sql.Truth(query, animal.Number, LocalDatePattern.Iso.Format(on));
                if (said != expected)
                {
                    return $"{animal.Number}: the judge says {said}, SQL {expected}: {query}";
                }
            }
        }

        return null;
    }

    private static Sql Load(PlainFarm farm)
    {
        var sql = new Sql();
        sql.Run("CREATE TABLE animals (number TEXT, born TEXT, sex TEXT, breed TEXT, standing REAL, mature REAL)");
        sql.Run("CREATE TABLE events (date TEXT, animal TEXT, kind TEXT, value TEXT, number REAL)");
        foreach (var row in farm.Animals)
        {
            sql.Run("INSERT INTO animals VALUES (@0, @1, @2, @3, @4, @5)", row.Number, row.Born, row.Sex, Fact(Words.Breed.Id), Number(Fact(Words.Index.Id)), Number(Fact(Words.MatureWeight.Id)));

            string? Fact(int id) => row.Facts[id].Length == 0 ? null : row.Facts[id];
        }

        foreach (var row in farm.Events)
        {
            var amount = Number(row.Value) is { } number ? row.Unit == "g" ? number / 1000 : number : (double?)null;
            sql.Run("INSERT INTO events VALUES (@0, @1, @2, @3, @4)", row.Date, row.Animal, row.Kind, row.Value, amount);
        }

        return sql;
    }

    private static double? Number(string? text) =>
        double.TryParse(text, System.Globalization.CultureInfo.InvariantCulture, out var number) ? number : null;

    /// <summary>Only rows that SQL can take as they stand: of single animals, not before birth, nobody joining or leaving.</summary>
    private static PlainFarm Kept(PlainFarm farm)
    {
        // A bull's mating, as it were, is somebody else's, and who is let out was let in: SQL knows nothing of that.
        var males = farm.Animals.Where(animal => animal.Sex is "M" or "steer").Select(animal => animal.Number).ToHashSet();
        var born = farm.Animals.ToDictionary(animal => animal.Number, animal => animal.Born);
        return farm with
        {
            Events = [.. farm.Events.Where(row => born.TryGetValue(row.Animal, out var day)
                && string.CompareOrdinal(row.Date, day) >= 0
                && row.Kind is not ("purchase" or "sale" or "death" or "bull out")
                && !(row.Kind is "calving" or "heat" or "mating" && males.Contains(row.Animal)))],
        };
    }

    private static Rulebook RulebookOf(IEnumerable<Condition> conditions, Season season, LocalDate on) => new()
    {
        Vocabulary = Words.Vocabulary,
        Rules = [.. conditions.Select((condition, i) => new Rule { Name = $"rule {i}", List = "recipients", Needs = condition, Span = Words.Nowhere })],
        Programme = new Programme("P", [new ProgrammeDate("collection", on, Words.Nowhere)], [new Choice("recipients", ChoiceFrom.Females, [], null, on, on, Words.Nowhere)], Words.Nowhere),
        Records = new RecordKeeping("records", season.Known, [new Completeness([.. Words.Vocabulary.Kinds], season.Known.PlusDays(-6000), Words.Nowhere)], [], Words.Nowhere),
    };

    private static CountCondition Count(CountTest test, int days, params Byrelaw.Language.Rulebooks.Words.EventKind[] kinds) =>
        new(test, [.. kinds.Select(kind => new Counted(kind))], [InTheLast(days)]) { Span = Words.Nowhere };

    private static InTheLast InTheLast(int days) => new(Length(days)) { Span = Words.Nowhere };

    private static TimeLength Length(int days) => new(days, TimeUnit.Days);
}
