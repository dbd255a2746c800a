using Byrelaw.Language.Floors;

namespace Byrelaw.Planning.Sheets;

/// <summary>What a step of a donor's method is made of: she is served, or something is given to her, or both. <c>GnRH; inseminate</c> are two parts.</summary>
/// <param name="vocabulary">The words; without matings nothing is a service.</param>
internal sealed class StepParts(Vocabulary vocabulary)
{
    private static readonly char[] Between = [';', ',', '+'];

    private readonly int? _mating = vocabulary.FindKind("mating")?.Id;

    /// <summary>Whether a part of it is a service.</summary>
    public bool Serve(MethodStep step) => Of(step).Any(IsService);

    /// <summary>Whether a part of it is anything else.</summary>
    public bool Give(MethodStep step) => step.Device is not null || !Of(step).All(IsService);

    private bool IsService(string part) => _mating is not null && FloorHeadings.MayBe(part, vocabulary)?.Id == _mating;

    private static string[] Of(MethodStep step) => step.Text.Split(Between, StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
}
