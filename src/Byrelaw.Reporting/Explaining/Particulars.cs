namespace Byrelaw.Reporting.Explaining;

/// <summary>What tells an animal from the others in the yards: tag, mob, cow or heifer.</summary>
public static class Particulars
{
    /// <summary>The last four digits of her official identity, with dots before; empty where there is none.</summary>
    public static string Tag(AnimalReport report) => Tag(report.On.Herd, report.Animal.Animal);

    /// <summary>The same of an animal of a herd.</summary>
    public static string Tag(Herd herd, int animal)
    {
        var id = OfficialIdentity(herd, animal);
        return id.Length <= 4 ? id : $"…{id[^4..]}";
    }

    /// <summary>Her official identity in full; empty where there is none.</summary>
    public static string OfficialIdentity(AnimalReport report) => OfficialIdentity(report.On.Herd, report.Animal.Animal);

    private static string OfficialIdentity(Herd herd, int animal)
    {
        foreach (var fact in herd.Vocabulary.Facts)
        {
            if (fact.Type == FactType.Identity && herd.Facts[fact.Id] is var column
                && column.States[animal] == FactState.Known && column.Texts[animal] is { } text)
            {
                return text;
            }
        }

        return "";
    }

    /// <summary>Her mob on the day the records reach; empty where it is not known.</summary>
    public static string Mob(AnimalReport report) => Mob(report.On.Herd, report.Animal.Animal);

    /// <summary>The same of an animal of a herd.</summary>
    public static string Mob(Herd herd, int animal)
    {
        var mobs = herd.Mobs;
        var mob = mobs.At(animal, herd.Coverage.KnownDay);
        return mob == MobStays.NotKnown ? "" : mobs.Names[mob];
    }

    /// <summary><c>cow</c>, <c>heifer</c>, <c>male</c>, or what is not known of it where the records do not say.</summary>
    public static string Sort(AnimalReport report) => Sort(report.Animal.Sort);

    /// <summary>The same of a sort.</summary>
    public static string Sort(AnimalSort sort) => sort switch
    {
        AnimalSort.Cow => "cow",
        AnimalSort.Heifer => "heifer",
        AnimalSort.Male => "male",
        AnimalSort.SexNotKnown => "sex not known",
        _ => "cow or heifer?",
    };
}
