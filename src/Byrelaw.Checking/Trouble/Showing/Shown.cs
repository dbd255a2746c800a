using Byrelaw.Judging.Criteria;

namespace Byrelaw.Checking.Trouble.Showing;

/// <summary>Writes a made-up animal down, as the lines of a worked example.</summary>
internal static class Shown
{
    /// <summary>Her records, a line each, and what the judge said of her.</summary>
    public static string Text(MadeUpHerd made, LocalDate day, Vocabulary vocabulary, string judged)
    {
        var animal = made.Animals[0];
        var text = new StringBuilder();
        text.Append(Sort(made, day, vocabulary)).Append(" born ").Append(animal.Born).Append('\n');
        foreach (var (fact, value) in animal.Facts.OrderBy(fact => fact.Key, StringComparer.Ordinal))
        {
            text.Append(fact).Append(' ').Append(value).Append('\n');
        }

        foreach (var row in made.Rows.OrderBy(row => row.Date))
        {
            text.Append(string.Join(' ', new[] { row.Kind, LocalDatePattern.Iso.Format(row.Date), row.Value, row.Unit }.Where(part => part.Length > 0))).Append('\n');
        }

        if (made.NotKept.Length > 0)
        {
            text.Append("nothing else on record, and nothing kept\n");
        }

        return text.Append("judged on ").Append(LocalDatePattern.Iso.Format(day)).Append(": ").Append(judged).ToString();
    }

    /// <summary>As a worked example begins: what the judge takes her for.</summary>
    private static string Sort(MadeUpHerd made, LocalDate day, Vocabulary vocabulary) => new Sorts(made.Read(vocabulary)).On(0, day) switch
    {
        AnimalSort.Cow => "cow",
        AnimalSort.Heifer => "heifer",
        AnimalSort.Male => "male",
        AnimalSort.NotKnown => "female",
        _ => "animal",
    };
}
