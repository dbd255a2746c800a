namespace Byrelaw.Planning.Calendar;

/// <summary>A programme with one of its dates on another day, and every date that is reckoned from it.</summary>
public static class MovedProgramme
{
    /// <summary>The date that the others hang on: <c>collection</c>, or <c>first transfer</c> where nothing is collected; null without either.</summary>
    public static string? Anchor(Programme programme)
    {
        ArgumentNullException.ThrowIfNull(programme);
        return programme.Date("collection") is not null ? "collection" : programme.Date("first transfer") is not null ? "first transfer" : null;
    }

    /// <summary>The rulebook with its programme moved; rules that name dates of the programme are judged by the new ones.</summary>
    /// <param name="rulebook">It must have a programme with the date.</param>
    /// <param name="name">The date that is moved.</param>
    /// <param name="day">Its new day.</param>
    public static Rulebook To(Rulebook rulebook, string name, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        return rulebook with { Programme = To(rulebook.Programme!, name, day) };
    }

    /// <summary>The programme moved.</summary>
    public static Programme To(Programme programme, string name, LocalDate day)
    {
        ArgumentNullException.ThrowIfNull(programme);
        var days = programme.Dates.ToDictionary(date => NameFolding.Fold(date.Name), date => date.Date);
        days[NameFolding.Fold(name)] = day;

        // A chain is no longer than there are dates; each round settles at least one more link of it.
        for (var round = 0; round < programme.Dates.Length; round++)
        {
            foreach (var date in programme.Dates)
            {
                if (date.From is { Name: { } from } && NameFolding.Fold(date.Name) != NameFolding.Fold(name))
                {
                    days[NameFolding.Fold(date.Name)] = date.From.From(days[NameFolding.Fold(from)]);
                }
            }
        }

        ImmutableArray<ProgrammeDate> dates =
        [
            .. programme.Dates.Select(date => date with { Date = days[NameFolding.Fold(date.Name)] })
                .OrderBy(date => date.Date).ThenBy(date => date.Name, StringComparer.Ordinal),
        ];
        return programme with { Dates = dates, Choices = [.. programme.Choices.Select(choice => Moved(choice, days))] };
    }

    private static Choice Moved(Choice choice, Dictionary<string, LocalDate> days)
    {
        var from = choice.FromDate is { } first ? days[NameFolding.Fold(first)] : choice.JudgedFrom;
        var to = choice.ToDate is { } last ? days[NameFolding.Fold(last)] : choice.FromDate is not null && choice.JudgedFrom == choice.JudgedTo ? from : choice.JudgedTo;
        return choice with { JudgedFrom = from, JudgedTo = to < from ? from : to };
    }
}
