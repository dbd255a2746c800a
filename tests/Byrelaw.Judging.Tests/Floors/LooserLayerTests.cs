namespace Byrelaw.Judging.Tests.Floors;

/// <summary>"A random `change` of a safety rule adds nobody", nor does anything else that a layer may say of one.</summary>
public sealed class LooserLayerTests
{
    [Fact]
    public void A_layer_that_would_have_less_of_a_safety_rule_lets_nobody_in() => Each.Hold(
        from one in FloorCase.Any
        let plain = one.WithLayer("")
        from loosening in GenFloorRules.Loosening(
            [.. plain.Rulebook.Rules.Where(rule => rule.IsSafety).Select(rule => rule.Name)], [.. one.Farm.Animals.Select(animal => animal.Number)], plain.Rulebook.Records!.UpTo!.Value).Array[1, 2]
        select (Plain: plain, Layered: plain.WithLayer(string.Concat(loosening))),
        Cases.Count / 5,
        pair => LetThrough.Anew(LetThrough.Answers(pair.Plain.Rulebook, pair.Plain), LetThrough.Answers(pair.Layered.Rulebook, pair.Layered)),
        pair => pair.Layered.ToString());
}
