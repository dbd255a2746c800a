using Byrelaw.Judging.Tuning;

namespace Byrelaw.Judging.Tests.Tuning;

/// <summary>A tuning says what judging says, at every value, and changes where judging does.</summary>
public sealed class TunerTests
{
    [Fact]
    public void What_is_told_of_a_value_is_what_judging_with_it_says() => Hold((one, tuning) =>
    {
        foreach (var value in one.Values(tuning))
        {
            var judged = one.Answers(one.Rulebook.With(tuning.Number, value), tuning.Choice);
            foreach (var animal in tuning.Animals)
            {
                if (animal.At(value) != judged[animal.Number])
                {
                    return $"{animal.Number} at {value}: {animal.At(value)}, judged {judged[animal.Number]}";
                }
            }

            var step = tuning.Steps[tuning.StepAt(value)];
            if (judged.Count != tuning.Animals.Length || Enum.GetValues<Answer>().Any(answer => step.Count(answer) != judged.Values.Count(other => other == answer)))
            {
                return $"at {value} counted {string.Join(' ', step.Counts)}";
            }
        }

        return null;
    }, oneIn: 8);

    [Fact]
    public void At_the_value_in_force_every_animal_has_the_answer_she_has() => Hold((one, tuning) =>
    {
        var judged = one.Answers(one.Rulebook, tuning.Choice);
        return tuning.Animals.FirstOrDefault(animal => animal.At(tuning.Current) != judged[animal.Number]) is { } other ? $"{other.Number} at {tuning.Current}" : null;
    });

    [Fact]
    public void From_one_step_to_the_next_somebody_changes_and_within_a_step_nobody() => Hold((_, tuning) =>
    {
        for (var step = 0; step < tuning.Steps.Length; step++)
        {
            var range = tuning.Steps[step].Range;
            if (step > 0 && !tuning.Changes(step - 1, step).Any())
            {
                return $"nobody changes at {range.From}";
            }

            if (tuning.Animals.Any(animal => range is { From: { } from, To: { } to } && animal.At(from) != animal.At(to)))
            {
                return $"somebody changes between {range.From} and {range.To}";
            }
        }

        return null;
    });

    private static void Hold(Func<TuneCase, NumberTuning, string?> wrong, int oneIn = 16) => Each.Hold(
        TuneCase.Any,
        Cases.Count / oneIn,
        one => one.Picked is { } picked ? wrong(one, new NumberTuner(one.Rulebook, one.Herd).Tune(picked.Number, picked.Choice)) : null,
        one => one.ToString());
}
