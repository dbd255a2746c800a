using Byrelaw.Judging.Criteria;

namespace Byrelaw.Planning.Seasons;

/// <summary>How the animals of one list stand: all that a season's numbers ask of a list, however it was judged.</summary>
/// <param name="Animals">In the order of the herd.</param>
public sealed record ListStanding(ImmutableArray<AnimalStanding> Animals)
{
    /// <summary>Of a list judged with all its reasons.</summary>
    /// <param name="list">Judged.</param>
    /// <param name="dry">Which cows are dry on its day.</param>
    public static ListStanding Of(ListJudgement list, DryCows dry)
    {
        ArgumentNullException.ThrowIfNull(list);
        ArgumentNullException.ThrowIfNull(dry);
        return new([.. list.Animals.Select(animal => new AnimalStanding(animal.Animal, animal.Answer, animal.Sort, dry.Of(animal.Animal)))]);
    }

    /// <summary>Of a list of which only the answers are worked out, as for every visit that is compared.</summary>
    public static ListStanding Of(Judge judge, Sorts sorts, Choice choice)
    {
        ArgumentNullException.ThrowIfNull(judge);
        ArgumentNullException.ThrowIfNull(sorts);
        ArgumentNullException.ThrowIfNull(choice);
        var (animals, answers) = judge.Answers(choice);
        var dry = DryCows.On(judge, choice.JudgedFrom);
        return new([.. animals.Select((animal, i) => new AnimalStanding(animal, answers[i], sorts.On(animal, choice.JudgedFrom), dry.Of(animal)))]);
    }

    /// <summary>How many a plan counts on.</summary>
    public int Counted => Animals.Count(animal => animal.IsCounted);

    /// <summary>How many have an answer.</summary>
    public int Count(Answer answer) => Animals.Count(animal => animal.Answer == answer);

    /// <summary>
    /// Everyone with the worse of her answers on two lists; Later on either is No, for both days stand. She who is not on the other is No.
    /// </summary>
    public ListStanding And(ListStanding? other)
    {
        if (other is null)
        {
            return this;
        }

        var there = other.Animals.ToDictionary(animal => animal.Animal);
        return new([.. Animals.Select(animal => there.TryGetValue(animal.Animal, out var also) ? animal.And(also) : animal with { Answer = Answer.No })]);
    }
}

/// <summary>How one animal stands on a list.</summary>
/// <param name="Animal">Her place in the herd.</param>
/// <param name="Answer">Her answer.</param>
/// <param name="Sort">Cow, heifer or not known.</param>
/// <param name="IsDry">Of a cow, whether she is dry.</param>
public readonly record struct AnimalStanding(int Animal, Answer Answer, AnimalSort Sort, Truth IsDry)
{
    /// <summary>Whether a plan counts on her: a plan is made to have things found out in time, so those asked about count.</summary>
    public bool IsCounted => Answer.MayBeUsed() || Answer == Answer.Ask;

    /// <summary>The worse of two.</summary>
    internal AnimalStanding And(AnimalStanding other) => this with
    {
        Answer = Answer == Answer.Later || other.Answer == Answer.Later ? Answer.No : (Answer)Math.Max((byte)Answer, (byte)other.Answer),
    };
}
