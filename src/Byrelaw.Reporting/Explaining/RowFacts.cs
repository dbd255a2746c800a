namespace Byrelaw.Reporting.Explaining;

/// <summary>What her row says of an animal: her own facts where she may be used, else the one reason; and what to beware of that stands nowhere else on the row.</summary>
public static class RowFacts
{
    /// <summary>A few words.</summary>
    /// <param name="report">The animal.</param>
    /// <param name="checks">The other check of the same session; null where there is none.</param>
    public static Wording Of(AnimalReport report, BothChecks? checks)
    {
        ArgumentNullException.ThrowIfNull(report);
        var waived = report.Animal.Rules.Where(rule => rule.Waiver is not null).Select(rule => Wording.Note($"waived to {report.On.Short(rule.Waiver!.Until)}: {rule.Name}"));
        var said = Phrases.Sentence(report.Animal.Answer.MayBeUsed() ? Facts(report) : Reason.Of(report) + Places(report));
        return Wording.Join(" · ", [.. waived, string.Join("; ", Beware(report, checks).Prepend(said).Where(words => words.Length > 0))]);
    }

    /// <summary><c>calved 15 Aug, heat 20 Sep, holds to 16 Nov</c>.</summary>
    private static string Facts(AnimalReport report)
    {
        var shaky = report.Animal.Rules.FirstOrDefault(rule => rule.IsShaky);
        var holds = report.Animal.ReadyUntil is { } until ? $"holds to {report.On.Short(until)}" : "";
        return string.Join(", ", Story.Of(report, sinceCalved: true).Where(part => !part.StartsWith("no ", StringComparison.Ordinal) && !part.StartsWith("not ", StringComparison.Ordinal))
            .Append(shaky is null ? "" : $"{Phrases.Small(shaky.Name)} only just").Append(holds).Where(part => part.Length > 0));
    }

    /// <summary>A No carries the lines that it rests on: she may have no page of her own.</summary>
    private static string Places(AnimalReport report)
    {
        if (report.Animal.Answer != Answer.No || report.On.List.IsBroken || ChiefRule.Of(report) is not { Gate: Gate.None } chief)
        {
            return "";
        }

        var lines = RuleWords.Evidence(chief).Where(evidence => evidence.Line > 0).Select(evidence => $"{FileWords.Short(evidence.File)} {evidence.Cell ?? $"{evidence.Line}"}").Distinct().ToList();
        return lines.Count is 0 or > 2 ? "" : $" ({string.Join(", ", lines)})";
    }

    /// <summary>In calf is a label, a waiver a note, and that she is on the other check's list too is no caution.</summary>
    private static IEnumerable<string> Beware(AnimalReport report, BothChecks? checks)
    {
        var told = new[] { Phrases.Small(InCalfWords.Of(report.Animal.InCalf)), checks is null ? "" : $"also on {checks.Other.Name}" };
        var chief = ChiefRule.Of(report)?.Name;
        return Cautions.Of(report).Where(caution => !told.Contains(caution) && !caution.StartsWith("waived until ", StringComparison.Ordinal) && (chief is null || !caution.EndsWith($": {chief}", StringComparison.Ordinal)))
            .Append(checks?.Beware(report.Animal) ?? "");
    }
}
