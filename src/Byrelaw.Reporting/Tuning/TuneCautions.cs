namespace Byrelaw.Reporting.Tuning;

/// <summary>What to beware of when a rule is loosened.</summary>
internal static class TuneCautions
{
    /// <summary>Holds for every tuning.</summary>
    public const string Always =
        "This page recommends nothing: it counts. These are paper answers; a changed rule is agreed by those who answer for the animals, a licensed vet among them, before anyone acts on it.";

    private const string Safety =
        "A safety rule hangs on this number too. It goes on asking what it asks now, whatever value is looked at: only a stricter one moves it, and no text loosens it.";

    private const string Disease =
        "Disease, or a pregnancy, may hang on what this number moves. More animals let in may mean more that are ill, that carry something or that are in calf: ask a licensed vet before loosening it.";

    private const string Hidden = "A shorter look back, or a later one, does not make an animal well: it only no longer asks.";

    /// <summary>For one number; empty where no value lets anybody in.</summary>
    public static IReadOnlyList<string> Of(NumberTuning tuning, Rulebook rulebook)
    {
        if (!tuning.Animals.Any(animal => animal.Runs.Any(run => new ChangedAnswer(animal, animal.At(tuning.Current), run.Answer).IsLetIn)))
        {
            return [];
        }

        var moved = MovedBy.Rules(rulebook, tuning.Number).ToList();
        var conditions = tuning.Number.Condition.Leaves(rulebook);
        var cautions = new List<string>();
        if (moved.Exists(rule => rule.IsSafety))
        {
            cautions.Add(Safety);
        }

        if (conditions.Exists(HangsOnHealth))
        {
            cautions.Add(Disease);
        }

        if (cautions.Count > 0 && tuning.Number.Number.Part is NumberPart.FirstWindow or NumberPart.SecondWindow)
        {
            cautions.Add(Hidden);
        }

        cautions.AddRange(moved.SelectMany(Texts).Select(SafetyNotes.For).OfType<string>());
        return [.. cautions.Distinct()];
    }

    private static string[] Texts(Rule rule) => [$"{rule.Name} {ConditionWords.Of(rule.Needs)} {rule.Because}"];

    /// <summary>It asks for a test, wants none (or few) of something, keeps her away from something, or counts days since something other than a
    /// calving or a heat, such as a vaccination.</summary>
    private static bool HangsOnHealth(Condition condition) => condition switch
    {
        TestCondition or SpellCondition { Not: true } => true,
        CountCondition count => count.Counted.Any(counted => counted.Kind is TestKind) || count.Test.Comparison is Comparison.AtMost or Comparison.LessThan || count.Test.IsNone,
        ApartCondition apart => apart.Counted.Any(counted => counted.Kind is TestKind),
        TimeSinceCondition since => since.Kinds.Any(kind => !IsPlain(kind)),
        _ => false,
    };

    private static bool IsPlain(Kind kind) => NameFolding.Fold(kind.Name) is "calving" or "heat";
}
