namespace Byrelaw.Reporting.Words;

/// <summary>Says which devices are in and not out, for the head of every page.</summary>
public static class DeviceWords
{
    /// <summary><c> · DEVICES IN: 1031 since 4 October 2026</c>; empty where none is.</summary>
    public static string Head(Draft draft) => Listed(draft) is { Length: > 0 } devices ? $" · DEVICES IN: {devices}" : "";

    /// <summary><c>1031 and 1040 since 4 October 2026</c>; empty where none is.</summary>
    public static string Listed(Draft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        return string.Join(", ", Planning.Naming.DeviceIn.Of(draft.Herd, draft.Rulebook.Plans).GroupBy(device => device.Since).OrderBy(group => group.Key)
            .Select(group => $"{Phrases.And([.. group.Select(device => device.Number)])} since {Dates.Long(group.Key)}"));
    }
}
