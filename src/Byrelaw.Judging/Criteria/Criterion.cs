namespace Byrelaw.Judging.Criteria;

/// <summary>
/// A condition made ready to be asked of any animal on any day. It answers for one day and says for
/// how long the answer stands; a timeline is nothing but asking again when it no longer does. What
/// was found is written into notes by the same code, where someone asks for it.
/// </summary>
internal abstract class Criterion
{
    /// <summary>Answers for one animal on one day.</summary>
    /// <param name="animal">Her place in the herd.</param>
    /// <param name="day">The day of judging.</param>
    /// <param name="until">Lowered to the last day through which the answer is sure to stay the same; it may stay the same for longer.</param>
    /// <param name="notes">Where to write down what was found; null where nobody asks.</param>
    public abstract Kleene On(int animal, int day, ref int until, Notes? notes);

    /// <summary>Answers for every animal of a herd on one day: the same as one by one.</summary>
    public virtual void OnAll(int day, Span<Kleene> answers)
    {
        for (var animal = 0; animal < answers.Length; animal++)
        {
            var until = int.MaxValue;
            answers[animal] = On(animal, day, ref until, null);
        }
    }
}
