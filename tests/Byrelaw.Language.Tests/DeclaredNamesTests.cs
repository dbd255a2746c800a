namespace Byrelaw.Language.Tests;

public sealed class DeclaredNamesTests
{
    [Theory]
    [InlineData("event sale leaves the herd", "sale", HerdEffect.Leaves)]
    [InlineData("event sale also sold leaves the herd", "sold", HerdEffect.Leaves)]
    [InlineData("event purchase joins the herd", "purchase", HerdEffect.Joins)]
    [InlineData("event return to the farm joins the herd", "return to the farm", HerdEffect.Joins)]
    public void A_name_ends_where_a_clause_of_free_words_starts(string line, string name, HerdEffect effect) =>
        Rules.Good(line).Vocabulary.FindKind(name).ShouldBeOfType<EventKind>().Effect.ShouldBe(effect);
}
