namespace Byrelaw.Planning.Naming;

/// <summary>What comes of treating or watching animals by a method in a session.</summary>
internal static class Uses
{
    /// <summary>The share that is used.</summary>
    public static Rate Of(MethodChecked method) => Chain(method, null).Used;

    /// <summary>The losses on the way, one by one.</summary>
    /// <param name="method">In its session.</param>
    /// <param name="cycling">Of natural heat: the share of animals watched that cycles; null where all are taken to.</param>
    public static UseChain Chain(MethodChecked method, Rate? cycling) => method.Method.IsNatural
        ? UseChain.OfNaturalHeat(method.Method, method.Days.Heats.Length, cycling)
        : UseChain.OfTreatment(method.Method, method.Days.Serves);
}
