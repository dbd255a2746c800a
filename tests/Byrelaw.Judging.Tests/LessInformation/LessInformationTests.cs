namespace Byrelaw.Judging.Tests.LessInformation;

/// <summary>"Doubt never lets an animal through": knowing less may turn any answer into Ask, but none into Ready or On course.</summary>
public sealed class LessInformationTests
{
    [Fact]
    public void Blanking_a_result_lets_nobody_through() => Check(Garbling.BlankAResult);

    [Fact]
    public void Garbling_a_row_lets_nobody_through() => Check(Garbling.GarbleARow);

    [Fact]
    public void Garbling_what_is_on_record_of_an_animal_lets_nobody_through() =>
        Check(one => Garbling.AsksForNothingOnRecord(one.Rulebook) ? Gen.Const((JudgingCase?)null) : Garbling.GarbleAnAnimal(one));

    [Fact]
    public void Losing_an_animals_number_lets_nobody_else_through() => Check(Garbling.LoseAnAnimal);

    [Fact]
    public void Breaking_a_line_lets_nobody_through() => Check(Garbling.BreakALine);

    [Fact]
    public void Keeping_less_complete_records_lets_nobody_through() => Check(Garbling.KeepLess);

    /// <summary>"With `pass` on every rule but these, no cell made unreadable lets anybody in."</summary>
    [Fact]
    public void Where_every_rule_passes_what_is_not_known_a_row_that_cannot_be_read_lets_nobody_through() => Check(Garbling.GarbleARow, Garbling.WithPass);

    [Fact]
    public void Where_every_rule_passes_what_is_not_known_a_result_that_is_not_known_lets_nobody_through() => Check(Garbling.BlankAResult, Garbling.WithPass);

    [Fact]
    public void Where_every_rule_passes_what_is_not_known_a_smudged_animal_lets_nobody_through() => Check(Garbling.SmudgeAnAnimal, Garbling.WithPass);

    private static void Check(Func<JudgingCase, Gen<JudgingCase?>> garble, Func<JudgingCase, JudgingCase>? pass = null) => Each.Hold(
        JudgingCase.Any.Select(pass ?? Garbling.WithoutPass).SelectMany(one => garble(one).Select(less => (One: one, Less: less))),
        Cases.Count / 2,
        pair => pair.Less is null ? null : LetThrough(pair.One, pair.Less),
        pair => $"{pair.One}\n--- and with less\n{pair.Less}");

    private static string? LetThrough(JudgingCase one, JudgingCase less)
    {
        var before = Answers(one);
        foreach (var (place, answer) in Answers(less))
        {
            var was = before.GetValueOrDefault(place, Answer.No);
            if (answer == Answer.Ready ? was != Answer.Ready : answer == Answer.OnCourse && was is not (Answer.Ready or Answer.OnCourse))
            {
                return $"{place}: {was} became {answer}";
            }
        }

        return null;
    }

    private static Dictionary<(string List, string Animal), Answer> Answers(JudgingCase one)
    {
        var herd = HerdReader.Read(FarmCsv.Animals(one.Farm), FarmCsv.Events(one.Farm), one.Rulebook.Vocabulary, one.Rulebook.Records, one.KnownOn);
        return new Judge(one.Rulebook, herd, one.KnownOn).JudgeAll(one.On).Lists
            .SelectMany(list => list.Animals.Select(animal => ((list.Choice.List, animal.Number), animal.Answer)))
            .ToDictionary(answer => answer.Item1, answer => answer.Answer);
    }
}
