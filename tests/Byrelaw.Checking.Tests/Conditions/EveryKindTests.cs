using Byrelaw.Checking.Comparing;
using Byrelaw.Language.Reasoning;
using Byrelaw.Language.Rulebooks.Conditions;
using Byrelaw.Testing.Conditions;

namespace Byrelaw.Checking.Tests.Conditions;

/// <summary>Every kind of condition can be reasoned about, shown by examples and made animals for: a table that lacks one fails here.</summary>
public sealed class EveryKindTests
{
    private static readonly Rulebook Book = RulebookReader.Read("every.byre", new RuleFiles(("every.byre", EveryKind.Text)))!.Rulebook;

    [Fact]
    public void Every_kind_can_be_reasoned_about()
    {
        var maker = new FormulaMaker(Book);
        foreach (var leaf in Book.Rules.SelectMany(rule => rule.Needs.Leaves(Book)))
        {
            maker.Make(leaf).ShouldBeOfType<SingleCondition>(leaf.GetType().Name);
        }
    }

    [Fact]
    public void Every_kind_has_sides_that_differ()
    {
        foreach (var leaf in Book.Rules.SelectMany(rule => rule.Needs.Leaves(Book)))
        {
            var sides = Sides.Of(leaf).ToList();
            sides.Count.ShouldBeGreaterThan(1, leaf.Subject);
            sides.ShouldAllBe(side => side.Contains(' '));
        }
    }

    [Fact]
    public void Made_up_animals_have_what_the_rules_speak_of()
    {
        var ingredients = new Ingredients(Book);
        ingredients.LooksAtOthers.ShouldBeTrue();
        Book.Vocabulary.Kinds.Where(kind => !ingredients.Kinds.Contains(kind)).Select(kind => kind.Name)
            .ShouldBe(["mob", "liver copper"], ignoreOrder: true, "what only her mob is asked for cannot be shown on one animal");
        ingredients.Facts.Keys.Select(fact => fact.Name).ShouldBe(Book.Vocabulary.Facts.Select(fact => fact.Name), ignoreOrder: true);
    }
}
