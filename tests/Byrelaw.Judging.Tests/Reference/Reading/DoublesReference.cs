namespace Byrelaw.Judging.Tests.Reference;

/// <summary>
/// "Two numbers with one identity, or alike but for leading zeros, spaces, width, unseen signs: each one's entries are in doubt for the
/// other, by kind and day." The reference knows the few signs that the generators write.
/// </summary>
public static class DoublesReference
{
    /// <summary>What is in doubt of each animal for what is on record, or in doubt, of another that may be she.</summary>
    public static IEnumerable<Unread> Of(IReadOnlyList<AnimalAsRead> animals, Vocabulary vocabulary, IReadOnlyList<Happening> happenings, IReadOnlyList<Unread> unread) =>
        from one in animals
        from other in animals
        where one.Index != other.Index && MayBe(one, other, vocabulary)
        from doubt in happenings.Where(row => row.Animal == other.Index).Select(row => new Unread(one.Index, row.Kind, row.Day, row.Line))
            .Concat(unread.Where(row => row.Animal == other.Index).Select(row => row with { Animal = one.Index }))
        select doubt;

    private static bool MayBe(AnimalAsRead one, AnimalAsRead other, Vocabulary vocabulary) =>
        Alike(one.Number) == Alike(other.Number)
        || vocabulary.Facts.Any(fact => fact.Type == FactType.Identity
            && one.Facts[fact.Id].Text is { } hers && other.Facts[fact.Id].Text is { } others
            && Alike(hers.Replace("-", "", StringComparison.Ordinal)) == Alike(others.Replace("-", "", StringComparison.Ordinal)));

    private static string Alike(string text) => text.Replace(" ", "", StringComparison.Ordinal).ToUpperInvariant().TrimStart('0') is { Length: > 0 } some ? some : "0";
}
