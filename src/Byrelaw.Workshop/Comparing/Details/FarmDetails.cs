namespace Byrelaw.Workshop.Comparing.Details;

/// <summary>What differs in the programme and in what the farm says of its records: line by line, as the canonical text has them.</summary>
internal static class FarmDetails
{
    public static IEnumerable<Difference> Between(Rulebook old, Rulebook @new)
    {
        if (Lines(old.Records is { } a ? FarmText.Of(a) : null, @new.Records is { } b ? FarmText.Of(b) : null) is { Count: > 0 } records)
        {
            yield return new RecordsDifference { OldName = old.Records is null ? null : "records", NewName = @new.Records is null ? null : "records", Details = [.. records] };
        }

        if (Lines(old.Programme is { } c ? FarmText.Of(c) : null, @new.Programme is { } d ? FarmText.Of(d) : null) is { Count: > 0 } programme)
        {
            yield return new ProgrammeDifference { OldName = old.Programme?.Name, NewName = @new.Programme?.Name, Details = [.. programme] };
        }

        if (Unread(old) != Unread(@new))
        {
            yield return new UnreadDifference { OldName = "lines that cannot be read", NewName = "lines that cannot be read", Details = [new(Aspect.Readable, Unread(old), Unread(@new))] };
        }
    }

    /// <summary>The lines that only one of two blocks has.</summary>
    private static List<Detail> Lines(string? old, string? @new)
    {
        var (was, now) = (Split(old), Split(@new));
        return
        [
            .. was.Except(now).Select(line => new Detail(Aspect.Line, line, null)),
            .. now.Except(was).Select(line => new Detail(Aspect.Line, null, line)),
        ];
    }

    private static List<string> Split(string? block) => block is null ? [] : [.. block.Split('\n').Select(line => line.Trim())];

    /// <summary>How many places cannot be read, by list.</summary>
    private static string Unread(Rulebook rulebook) =>
        string.Join(", ", rulebook.BrokenParts.GroupBy(part => part.List ?? "any list").OrderBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => $"{NumberText.Of(group.Count())} in {group.Key}"));
}
