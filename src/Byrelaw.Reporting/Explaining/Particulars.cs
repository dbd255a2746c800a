namespace Byrelaw.Reporting.Explaining;

/// <summary>What tells an animal from the others in the yards: tag, mob, cow or heifer.</summary>
public static class Particulars
{
    /// <summary>The last four digits of her official identity, with dots before; empty where there is none.</summary>
    public static string Tag(AnimalReport report)
    {
        var id = OfficialIdentity(report);
        return id.Length <= 4 ? id : $"…{id[^4..]}";
    }

    /// <summary>Her official identity in full; empty where there is none.</summary>
    public static string OfficialIdentity(AnimalReport report)
    {
        var herd = report.On.Herd;
        foreach (var fact in herd.Vocabulary.Facts)
        {
            if (fact.Type == FactType.Identity && herd.Facts[fact.Id] is var column
                && column.States[report.Animal.Animal] == FactState.Known && column.Texts[report.Animal.Animal] is { } text)
            {
                return text;
            }
        }

        return "";
    }

    /// <summary>Her mob on the day the records reach; empty where it is not known.</summary>
    public static string Mob(AnimalReport report)
    {
        var mobs = report.On.Herd.Mobs;
        var mob = mobs.At(report.Animal.Animal, report.On.Herd.Coverage.KnownDay);
        return mob == MobStays.NotKnown ? "" : mobs.Names[mob];
    }

    /// <summary><c>cow</c>, <c>heifer</c>, <c>male</c>, or what is not known of it where the records do not say.</summary>
    public static string Sort(AnimalReport report) => report.Animal.Sort switch
    {
        AnimalSort.Cow => "cow",
        AnimalSort.Heifer => "heifer",
        AnimalSort.Male => "male",
        AnimalSort.SexNotKnown => "sex not known",
        _ => "cow or heifer?",
    };
}
