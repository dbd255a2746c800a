using Byrelaw.Records.Spellings;

namespace Byrelaw.Records.Tests.Cells;

public class SpellingTests
{
    private static readonly Gen<string> Spelling = Gen.String[Gen.Char["0189aBä "], 0, 14];

    [Fact]
    public void A_table_finds_what_a_dictionary_finds() => Gen.Select(Spelling.Array[0, 60], Spelling.Array[0, 20], (known, asked) => (known, asked)).Hold(both =>
    {
        var table = new SpellingTable(capacity: 1);
        var dictionary = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < both.known.Length; i++)
        {
            table.Set(Encoding.UTF8.GetBytes(both.known[i]), i);
            dictionary[both.known[i]] = i;
        }

        foreach (var text in both.known.Concat(both.asked))
        {
            table.TryFind(Encoding.UTF8.GetBytes(text), out var value).ShouldBe(dictionary.TryGetValue(text, out var expected));
            value.ShouldBe(expected);
        }
    });

    [Fact]
    public void Animals_are_found_by_exactly_their_numbers() => Gen.Select(
        Gen.OneOf(Gen.Int[1, 300].Select(number => $"{number}"), Spelling, Gen.Int.Select(number => $"{number}")).Array[0, 40],
        Gen.OneOf(Gen.Int[0, 400].Select(number => $"{number}"), Gen.Int[0, 400].Select(number => $"0{number}"), Spelling).Array[0, 40],
        (known, asked) => (known, asked)).Hold(both =>
    {
        string[] numbers = [.. both.known.Where(number => number.Length > 0).Distinct()];
        var places = new AnimalPlaces(numbers);
        foreach (var text in numbers.Concat(both.asked))
        {
            places.TryFind(Encoding.UTF8.GetBytes(text), out var place).ShouldBe(numbers.Contains(text));
            if (numbers.Contains(text))
            {
                place.ShouldBe(Array.IndexOf(numbers, text));
            }
        }
    });

    [Theory]
    [InlineData("calvign", "calving")]
    [InlineData("calvin", "calving")]
    [InlineData("Calvings!", "calving")]
    [InlineData("haet", "heat")]
    [InlineData("meat", "heat")]
    [InlineData("foot trim", null)]
    [InlineData("xx", null)]
    public void A_name_that_was_perhaps_meant_is_offered(string text, string? nearest) =>
        NearestName.OnlyOne(text, ["calving", "heat", "mastitis"]).ShouldBe(nearest);

    [Fact]
    public void Of_two_names_as_near_none_is_offered() => NearestName.OnlyOne("bat", ["cat", "rat"]).ShouldBeNull();

    [Theory]
    [InlineData("l021", "1021")]
    [InlineData("102", null)]
    [InlineData("01021", "1021")]
    [InlineData("b7", "B7")]
    [InlineData("10 21", "1021")]
    public void A_number_that_was_perhaps_meant_is_offered(string text, string? nearest)
    {
        string[] known = ["1021", "1022", "B7"];
        NearestNumber.To(text, new AnimalPlaces(known)).ShouldBe(nearest);
    }
}
