namespace Byrelaw.Reporting.Words;

/// <summary>Says which devices are in and not out, for the head of every page.</summary>
public static class DeviceWords
{
    /// <summary>All of them; null where none is in.</summary>
    public static DevicesIn? Of(Draft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        return Of(draft.Herd, draft.Rulebook);
    }

    /// <summary>The same of a herd.</summary>
    public static DevicesIn? Of(Herd herd, Rulebook rulebook)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        var devices = Planning.Naming.DeviceIn.Of(herd, rulebook.Plans);
        return devices.IsEmpty ? null : new DevicesIn(devices.Length, string.Join(", ", devices.GroupBy(device => device.Since).OrderBy(group => group.Key)
            .Select(group => $"{Phrases.And([.. group.Select(device => device.Number)])} since {Dates.Long(group.Key)}")));
    }

    /// <summary><c>1031 and 1040 since 4 October 2026</c>; empty where none is.</summary>
    public static string Listed(Draft draft) => Of(draft)?.Listed ?? "";
}
