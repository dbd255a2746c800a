using Byrelaw.Judging.Supposing;

namespace Byrelaw.Reporting.Json;

/// <summary>Which promises would open how much, for programs.</summary>
public sealed record PromisesJson(IReadOnlyList<PromisesOfListJson> Lists);

/// <summary>The same of one list.</summary>
public sealed record PromisesOfListJson(string List, int Animals, int Ask, IReadOnlyList<PromiseJson> Promises)
{
    internal static PromisesOfListJson Of(PromiseGains gains, Herd herd) => new(gains.Choice.List, gains.Animals, gains.Asked, [.. gains.Steps.Select(step => new PromiseJson(
        [.. step.Kinds.Select(kind => kind.Name)], LocalDatePattern.Iso.Format(step.Since), step.LeaveAsk, step.Usable, step.LeaveAskAtBest, step.Entries,
        [.. step.Against.Select(doubt => DoubtWords.Of(doubt, herd).Lead).Distinct()]))]);
}

/// <summary>Kinds that might be promised on top of those before.</summary>
public sealed record PromiseJson(
    IReadOnlyList<string> Kinds, string Since, int LeaveAsk, int Usable, int LeaveAskAtBest, int Entries, IReadOnlyList<string> Against);
