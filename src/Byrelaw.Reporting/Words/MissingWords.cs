using Byrelaw.Reporting.Sheets;

namespace Byrelaw.Reporting.Words;

/// <summary>What is not on record: as a thing, as a task, and in a word or two.</summary>
public static class MissingWords
{
    /// <summary>The thing with the days it may be dated: <c>a pregnancy test result (dated 30 August or later)</c>.</summary>
    public static string Of(Missing missing, ListReport list) => What(missing, list) + When(missing, list);

    /// <summary>The task with the days it may be dated: <c>get a pregnancy test result (dated 30 August or later)</c>.</summary>
    public static string Task(Missing missing, ListReport list) => Verb(missing) + What(missing, list) + When(missing, list);

    /// <summary>The same of several ways: <c>a scan or blood or milk test (dated 22 September to 20 October), or a test by hand from 6 October</c>.</summary>
    public static string Of(Asked asked, ListReport list) => Ways(asked, list);

    /// <summary>All that is asked for, one after another.</summary>
    public static string AllOf(IEnumerable<Missing> missing, ListReport list, string between = "; ") => string.Join(between, Asked.Of(missing).Select(one => Of(one, list)));

    /// <summary>The task of several ways.</summary>
    public static string Task(Asked asked, ListReport list)
    {
        ArgumentNullException.ThrowIfNull(asked);
        return Verb(asked.First) + Ways(asked, list);
    }

    /// <summary>A word or two for several ways: none of them was gone.</summary>
    public static string Brief(Asked asked, ListReport list)
    {
        ArgumentNullException.ThrowIfNull(asked);
        return asked.Ways is [var only] ? Brief(only, list) : $"no {asked.First.Subject} that counts";
    }

    private static string Ways(Asked asked, ListReport list)
    {
        ArgumentNullException.ThrowIfNull(asked);
        var first = asked.First;
        var more = asked.Ways.Skip(1).Select(way => $", or {What(way, list)}{Later(way, first, list)}");
        return What(first, list) + When(first, list) + string.Concat(more);
    }

    /// <summary>When another way can be gone, where that is not when the first can.</summary>
    private static string Later(Missing way, Missing first, ListReport list) => (way.From, way.To) switch
    {
        var (from, to) when from == first.From && to == first.To => "",
        ({ } from, var to) when to == first.To => $" from {list.Long(from)}",
        _ => When(way, list),
    };

    /// <summary>
    /// The task for many animals, without days: <c>get a pregnancy test result</c>. How it is to be tested her own page says: a scan or, later, a hand is
    /// one task in the yards.
    /// </summary>
    public static string TaskForMany(Missing missing, ListReport list) =>
        Verb(missing) + What(missing.Reason == MissingReason.NoResult ? missing with { Filter = "" } : missing, list);

    /// <summary>A word or two for a narrow column: <c>no pregnancy test result</c>.</summary>
    public static string Brief(Missing missing, ListReport list) => missing.Reason switch
    {
        MissingReason.NoResult => $"no {ResultWords.Of(missing, list)}",
        MissingReason.ResultPending => $"{Whose(missing)}{missing.Subject} result not in",
        MissingReason.ResultTooVague => $"{Whose(missing)}{missing.Subject} result too vague",
        MissingReason.NotKept => $"{missing.What} records not complete",
        MissingReason.NeverRecorded => $"no {missing.What} on record, perhaps never",
        MissingReason.ToldBeside => $"{PlaceOf(missing, list)} may tell of {Article.With(missing.What)}",
        MissingReason.UnreadableRow => $"{PlaceOf(missing, list)} {(missing.Line < 0 ? "is open" : "cannot be read")}",
        MissingReason.StartNotOnRecord => $"no {missing.What} before {PlaceOf(missing, list)}",
        MissingReason.DetailNotKnown => $"{missing.Subject} ({PlaceOf(missing, list)}) does not say whether {missing.Filter}",
        MissingReason.FactMissing => $"{missing.What} is blank",
        MissingReason.FactUnreadable => $"{missing.What} cannot be read",
        MissingReason.TooFewOfTheMob => $"{missing.What} of {More(missing)} of her mob",
        MissingReason.MobNotKnown => "her mob is not known",
        MissingReason.BullsMobNotKnown => $"the mob of {missing.Subject} is not known",
        MissingReason.MayBeABull => $"{missing.Subject} may be a bull in her mob",
        MissingReason.ValueNotForeseen => $"the rule’s file does not know her {missing.What}",
        _ => $"others have no {missing.What}",
    };

    /// <summary>Who can find out: <c>in the yards</c>, <c>from the farm's book</c>, <c>through a laboratory</c>.</summary>
    public static string Where(Missing missing) => (missing.SettledBy, missing.Reason) switch
    {
        (SettledBy.LaboratoryOrTime, MissingReason.NoResult or MissingReason.ResultPending or MissingReason.ResultTooVague or MissingReason.TooFewOfTheMob) =>
            "through a laboratory",
        (SettledBy.LaboratoryOrTime, _) => "with time",
        (_, MissingReason.NoResult or MissingReason.ResultPending or MissingReason.ResultTooVague or MissingReason.TooFewOfTheMob) => "in the yards",
        (_, MissingReason.FactMissing or MissingReason.FactUnreadable) => "in the yards or from the farm's book",
        (_, MissingReason.ValueNotForeseen) => "in the rule files",
        _ => "from the farm's book",
    };

    private static string What(Missing missing, ListReport list) => missing.Reason switch
    {
        MissingReason.NoResult => Article.With(ResultWords.Of(missing, list)),
        MissingReason.ResultPending when missing.Whose.Length > 0 => $"{Whose(missing)}{missing.Subject} result of {list.Long(missing.From!.Value)}, which is awaited ({PlaceOf(missing, list)})",
        MissingReason.ResultPending => $"the {missing.Subject} result that is not in{(missing.Line > 0 ? $" ({PlaceOf(missing, list)})" : "")}",
        MissingReason.ResultTooVague when missing.Whose.Length > 0 => $"{Whose(missing)}{missing.Subject} result of {list.Long(missing.From!.Value)}, said more closely ({PlaceOf(missing, list)})",
        MissingReason.ResultTooVague => $"a closer {missing.Subject} result",
        MissingReason.NotKept => $"whether there was any {missing.What}",
        MissingReason.NeverRecorded => $"whether there ever was {Article.With(missing.What)}",
        MissingReason.ToldBeside => $"whether {PlaceOf(missing, list)} tells of {Article.With(missing.What)}",
        MissingReason.UnreadableRow => missing.Line < 0 ? $"whether {missing.What} was done, which {PlaceOf(missing, list)} leaves open" : $"{PlaceOf(missing, list)}, which cannot be read and may say {missing.What}",
        MissingReason.StartNotOnRecord => $"the {missing.What} that {PlaceOf(missing, list)} is the end of",
        MissingReason.DetailNotKnown => $"whether the {missing.Subject} in {PlaceOf(missing, list)} was {missing.Filter}",
        MissingReason.FactMissing => $"{missing.What}, which is blank in {FileWords.Short(list.Herd.AnimalsFile)}",
        MissingReason.FactUnreadable => $"{missing.What} in {PlaceOf(missing, list)}, which cannot be read",
        MissingReason.TooFewOfTheMob => $"{missing.What} of {More(missing)} in her mob",
        MissingReason.MobNotKnown => "which mob she is in",
        MissingReason.BullsMobNotKnown => $"in which mob {missing.Subject} runs, and since when",
        MissingReason.MayBeABull => $"sex and birth of {missing.Subject}, who may be a bull in her mob",
        MissingReason.ValueNotForeseen => $"what her {missing.What} means, which the file of the rule does not know",
        _ => $"{missing.What} of those in the herd that have none{Without(missing, list)}",
    };

    /// <summary>Of a result of another of her mob whose it is: <c>1036's </c>, <c>mob Hill's </c>; else nothing.</summary>
    private static string Whose(Missing missing) => missing.Whose.Length == 0 ? "" : $"{missing.Whose.Replace("mob:", "mob ", StringComparison.Ordinal)}'s ";

    /// <summary>Who has no value, by number, where they are few.</summary>
    private static string Without(Missing missing, ListReport list)
    {
        var herd = list.Herd;
        if (herd.Vocabulary.FindFact(missing.Subject) is not { } fact)
        {
            return "";
        }

        var numbers = Enumerable.Range(0, herd.Count)
            .Where(animal => herd.Sexes[animal] is not (Sex.Male or Sex.Steer) && herd.Facts[fact.Id].States[animal] != FactState.Known
                && herd.Membership.At(animal, herd.Coverage.KnownDay) != Presence.Out)
            .Select(animal => herd.Numbers[animal]).ToList();
        return numbers.Count == 0 ? "" : $" ({Phrases.FirstOf(numbers, 6)})";
    }

    private static string Verb(Missing missing) => missing.Reason switch
    {
        // Of a row of a sheet that is not back there is nothing to mend.
        MissingReason.UnreadableRow when missing.Line < 0 => "find out ",
        MissingReason.NoResult or MissingReason.ResultPending or MissingReason.ResultTooVague => "get ",
        MissingReason.NotKept or MissingReason.NeverRecorded => "find out ",
        MissingReason.UnreadableRow or MissingReason.FactUnreadable => "mend ",
        MissingReason.TooFewOfTheMob => "sample ",
        MissingReason.ValueNotForeseen => "say in a rule ",
        _ => "write down ",
    };

    private static string When(Missing missing, ListReport list) => (missing.From, missing.To) switch
    {
        (null, null) => "",
        _ when missing.Whose.Length > 0 => "",
        ({ } from, { } to) when from > to => $" (dated {list.Long(from)} or later)",
        ({ } from, null) => $" (dated {list.Long(from)} or later)",
        (null, { } to) => $" (dated {list.Long(to)} or earlier)",
        ({ } from, { } to) when from == to => $" (dated {list.Long(from)})",
        ({ } from, { } to) => $" (dated {list.Long(from)} to {list.Long(to)})",
    };

    private static string More(Missing missing) =>
        missing.Needed > 0 ? Numbers.Count(missing.Needed, "more animal", "more animals") : "more animals";

    /// <summary>Where the row stands.</summary>
    public static RecordPlace Place(Missing missing, ListReport list)
    {
        ArgumentNullException.ThrowIfNull(missing);
        ArgumentNullException.ThrowIfNull(list);
        return missing.Reason is MissingReason.FactUnreadable ? list.Herd.AnimalPlace(missing.Line) : list.Herd.EventPlace(missing.Line);
    }

    /// <summary>A cell of hers that has no day.</summary>
    private static bool IsInAnimals(Missing missing) => missing.Line < int.MinValue / 2;

    private static string PlaceOf(Missing missing, ListReport list)
    {
        var isOfAnimals = missing.Reason is MissingReason.FactUnreadable;
        if (missing.Line < 0 && !isOfAnimals && !IsInAnimals(missing))
        {
            return OpenSheetWords.Place(Place(missing, list));
        }

        if (missing.Line <= 0 && !IsInAnimals(missing))
        {
            return $"a line of {FileWords.Short(isOfAnimals ? list.Herd.AnimalsFile : list.Herd.EventsFile)}";
        }

        var place = Place(missing, list);
        return $"{FileWords.Short(place.File)} line {place.Line}";
    }
}
