namespace Byrelaw.Workshop.Comparing;

/// <summary>What about a rule, a word or a programme differs.</summary>
public enum Aspect
{
    /// <summary>The demand as a whole.</summary>
    Demand,

    /// <summary>The number asked for: a count, a time, a value.</summary>
    Number,

    /// <summary>The days looked at.</summary>
    Window,

    /// <summary>What is counted, or since what time is reckoned.</summary>
    Counted,

    /// <summary>Which answers or values are good.</summary>
    Values,

    /// <summary>How many animals have to be sampled.</summary>
    Sample,

    /// <summary>How the parts of a list are put together.</summary>
    Together,

    /// <summary>A part of a list.</summary>
    Part,

    /// <summary>Whom the rule is for.</summary>
    Audience,

    /// <summary>What stands in for a not known.</summary>
    IfNotKnown,

    /// <summary>Whether it is judged on the day only.</summary>
    OnTheDay,

    /// <summary>Whether it is a safety rule.</summary>
    Safety,

    /// <summary>The list it belongs to.</summary>
    List,

    /// <summary>Points.</summary>
    Points,

    /// <summary>The reason.</summary>
    Because,

    /// <summary>Where the number comes from.</summary>
    Source,

    /// <summary>Who agreed, and when.</summary>
    Agreement,

    /// <summary>How it came to be what it is: the versions before.</summary>
    History,

    /// <summary>Whether all its lines can be read.</summary>
    Readable,

    /// <summary>How long it lasts.</summary>
    Until,

    /// <summary>A word's declaration.</summary>
    Declaration,

    /// <summary>A word's further names.</summary>
    FurtherNames,

    /// <summary>The unit or scale of a measure.</summary>
    Unit,

    /// <summary>A line of the programme or of what the farm says of its records.</summary>
    Line,
}

/// <summary>One thing that differs.</summary>
/// <param name="Aspect">What.</param>
/// <param name="Was">As it was, in the words of the rule file; null where there was nothing.</param>
/// <param name="Is">As it is; null where there is nothing any more.</param>
/// <param name="Part">For a part of a list: that part as it was, in the words of the rule file; else null.</param>
public sealed record Detail(Aspect Aspect, string? Was, string? Is, string? Part = null)
{
    /// <summary>Whether it can change what is answered of an animal; reasons, sources and agreements cannot.</summary>
    public bool MayChangeAnswers =>
        Aspect is not (Aspect.Because or Aspect.Source or Aspect.Agreement or Aspect.History or Aspect.Safety);
}
