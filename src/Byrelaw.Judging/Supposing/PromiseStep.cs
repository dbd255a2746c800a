namespace Byrelaw.Judging.Supposing;

/// <summary>Kinds that a farm might promise on top of those before, and what that would open on one list.</summary>
/// <param name="Kinds">The kinds.</param>
/// <param name="Since">The first day that any rule looks at, or of the first entry where rules look back to birth.</param>
/// <param name="LeaveAsk">How many are no longer asked about, with the steps before.</param>
/// <param name="Usable">How many are Ready or On course then.</param>
/// <param name="LeaveAskAtBest">How many would not be asked about if all else that is asked turned out well.</param>
/// <param name="Against">What the records have against these promises today, so that they would not count.</param>
/// <param name="Entries">How many entries of the kinds are on record from that day.</param>
public sealed record PromiseStep(
    ImmutableArray<Kind> Kinds, LocalDate Since, int LeaveAsk, int Usable, int LeaveAskAtBest, ImmutableArray<Doubted> Against, int Entries);

/// <summary>Which promises would open how much of a list.</summary>
/// <param name="Choice">The list.</param>
/// <param name="Animals">How many animals it has.</param>
/// <param name="Asked">How many of them are asked about today.</param>
/// <param name="Steps">The step that frees most animals for each kind first, the next on top.</param>
public sealed record PromiseGains(Choice Choice, int Animals, int Asked, ImmutableArray<PromiseStep> Steps);
