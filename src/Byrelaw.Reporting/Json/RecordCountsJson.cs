namespace Byrelaw.Reporting.Json;

/// <summary>How much records hold, and how much of it cannot be read, for programs.</summary>
/// <param name="Females">Animals.</param>
/// <param name="Males">Bulls and steers.</param>
/// <param name="SexNotKnown">Animals whose sex is not on record, or cannot be read.</param>
/// <param name="InHerd">Animals that are surely in the herd on the day the records reach.</param>
/// <param name="Errors">Problems that put something in doubt.</param>
/// <param name="Warnings">Problems that do not.</param>
public sealed record RecordCountsJson(int Females, int Males, int SexNotKnown, int InHerd, int Errors, int Warnings)
{
    internal static RecordCountsJson Of(Herd herd, IEnumerable<Diagnostic> problems)
    {
        var (females, males) = (herd.Sexes.Count(sex => sex == Sex.Female), herd.Sexes.Count(sex => sex is Sex.Male or Sex.Steer));
        var errors = problems.Count(problem => problem.Severity == Severity.Error);
        return new RecordCountsJson(
            females, males, herd.Count - females - males, Enumerable.Range(0, herd.Count).Count(animal => herd.Membership.At(animal, herd.Coverage.KnownDay) == Presence.In), errors, problems.Count() - errors);
    }
}
