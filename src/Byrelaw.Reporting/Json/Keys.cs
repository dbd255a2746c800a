namespace Byrelaw.Reporting.Json;

/// <summary>The words that stand for answers and reasons in JSON. They never change.</summary>
internal static class Keys
{
    public static string Of(Answer answer) => answer switch
    {
        Answer.Ready => "ready",
        Answer.OnCourse => "on_course",
        Answer.Later => "later",
        Answer.Ask => "ask",
        _ => "no",
    };

    public static string Of(Answer answer, ListUse use) => (answer, use) switch
    {
        (Answer.Ready, ListUse.ForLookingOnly) => "matches",
        (Answer.OnCourse, ListUse.ForLookingOnly) => "will_match",
        _ => Of(answer),
    };

    public static string Of(RuleAnswer answer) => answer switch
    {
        RuleAnswer.Met => "met",
        RuleAnswer.NotMet => "not_met",
        RuleAnswer.NotKnown => "not_known",
        RuleAnswer.DoesNotApply => "does_not_apply",
        _ => "broken",
    };

    public static string Of(SettledBy who) => who == SettledBy.Yards ? "yards" : "laboratory_or_time";

    public static string Of(MissingReason reason) => reason switch
    {
        MissingReason.NoResult => "no_result",
        MissingReason.ResultPending => "result_pending",
        MissingReason.ResultTooVague => "result_too_vague",
        MissingReason.NotKept => "not_kept",
        MissingReason.NeverRecorded => "never_recorded",
        MissingReason.UnreadableRow => "unreadable_row",
        MissingReason.StartNotOnRecord => "start_not_on_record",
        MissingReason.ToldBeside => "told_beside",
        MissingReason.FactMissing => "fact_missing",
        MissingReason.FactUnreadable => "fact_unreadable",
        MissingReason.TooFewOfTheMob => "too_few_of_the_mob",
        MissingReason.MobNotKnown => "mob_not_known",
        MissingReason.BullsMobNotKnown => "bulls_mob_not_known",
        MissingReason.MayBeABull => "may_be_a_bull",
        MissingReason.ValueNotForeseen => "value_not_foreseen",
        _ => "herd_values_missing",
    };

    /// <summary>The name of a value as a key: <c>SameName</c> is <c>same_name</c>.</summary>
    public static string Snake(string name) => System.Text.Json.JsonNamingPolicy.SnakeCaseLower.ConvertName(name);

    public static string BasisOf(RuleJudgement rule) => rule switch
    {
        { Waiver: not null } => "waived",
        { Rule.Basis: Basis.Changed } => "changed",
        { Rule.Basis: Basis.Local } => "local",
        _ => "base",
    };
}
