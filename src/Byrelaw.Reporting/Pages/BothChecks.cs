namespace Byrelaw.Reporting.Pages;

/// <summary>
/// The other check of a session beside a list: on the list of those to treat whether she may carry, on the recipients' list whether she may be treated. Whoever passes one of
/// them only is given nothing.
/// </summary>
public sealed class BothChecks
{
    private readonly ListReport _list;
    private readonly Dictionary<int, AnimalJudgement> _animals;

    private BothChecks(ListReport list, ListReport other, bool isOfTreatment)
    {
        (_list, Other, IsOfTreatment) = (list, other, isOfTreatment);
        _animals = other.List.Animals.ToDictionary(animal => animal.Animal);
    }

    /// <summary>The other list, on the days of the same session.</summary>
    public ListReport Other { get; }

    /// <summary>Whether the list itself is that of those to treat; else it is the recipients'.</summary>
    public bool IsOfTreatment { get; }

    /// <summary>The other check beside a list; null where the programme draws up no such list, or where the list is neither of the two.</summary>
    public static BothChecks? Of(ListReport list)
    {
        ArgumentNullException.ThrowIfNull(list);
        if (list.Rulebook.Programme is not { } programme || ProgrammeLists.Treatment(programme) is not { } treatment || ProgrammeLists.Recipients(programme) is not { } recipients || treatment.List == recipients.List)
        {
            return null;
        }

        var isOfTreatment = list.Name == treatment.List;
        var wanted = isOfTreatment ? recipients.List : list.Name == recipients.List ? treatment.List : null;
        return list.Draft.Lists.FirstOrDefault(other => other.Choice.List == wanted && other.Session == list.List.Session) is { } found ? new(list, new ListReport(list.Draft, found), isOfTreatment) : null;
    }

    /// <summary>How many pass both, in a sentence.</summary>
    public string InAll()
    {
        var both = _list.List.Animals.Count(animal => animal.Answer.MayBeUsed() && _animals.TryGetValue(animal.Animal, out var other) && other.Answer.MayBeUsed());
        var (treatment, carrying) = IsOfTreatment ? (_list, Other) : (Other, _list);
        return $"Both checks: {(both == 0 ? "nobody" : $"{both}")} may be treated on {treatment.Long(treatment.List.Choice.JudgedFrom)} and carry on {carrying.Days}.";
    }

    /// <summary>What the other list says of her: <c>○ Later from 30 Oct</c>.</summary>
    public string Said(AnimalJudgement animal) => !_animals.TryGetValue(animal.Animal, out var other) ? "not on that list"
        : AnswerWords.Both(other.Answer, Other.Use) + (other is { Answer: Answer.Later, ReadyFrom: { } ready } ? $" from {Other.Short(ready)}" : other is { Answer: Answer.Later, NotBefore: { } day } ? $", not before {Other.Short(day)}" : "");

    /// <summary>What the other check says, where it says otherwise of one whom this one lets through or asks about; else nothing.</summary>
    public string Beware(AnimalJudgement animal) => !(animal.Answer.MayBeUsed() || animal.Answer == Answer.Ask) || (_animals.TryGetValue(animal.Animal, out var other) && other.Answer.MayBeUsed()) ? ""
        : $"{(IsOfTreatment ? "embryo" : "hormone")}: {Said(animal)}";
}
