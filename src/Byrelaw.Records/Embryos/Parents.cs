namespace Byrelaw.Records.Embryos;

/// <summary>Who may be a donor or a sire: the herd's animals by any of their numbers, and those of the pedigree by name or official identity.</summary>
internal sealed class Parents
{
    private readonly Dictionary<string, Sex> _sexes = new(StringComparer.Ordinal);

    /// <summary>The herd's own numbers come first.</summary>
    public Parents(AnimalTable animals, ImmutableArray<PedigreeAnimal> pedigree)
    {
        for (var place = 0; place < animals.Numbers.Length; place++)
        {
            _sexes.TryAdd(animals.Numbers[place], animals.Rows[place].Sex);
        }

        foreach (var (number, place) in animals.Also)
        {
            _sexes.TryAdd(number, animals.Rows[place].Sex);
        }

        foreach (var animal in pedigree)
        {
            _sexes.TryAdd(animal.Name, animal.Sex);
        }

        foreach (var animal in pedigree.Where(animal => animal.OfficialId is not null))
        {
            _sexes.TryAdd(animal.OfficialId!, animal.Sex);
        }
    }

    /// <summary>Its sex; null where there is no such animal.</summary>
    public Sex? SexOf(string name) => _sexes.TryGetValue(name, out var sex) ? sex : null;

    /// <summary>The one name that a misspelt one is near to; null for none, or several.</summary>
    public string? Nearest(string name) => NearestName.OnlyOne(name, _sexes.Keys);
}
