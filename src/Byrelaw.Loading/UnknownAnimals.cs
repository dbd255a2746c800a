namespace Byrelaw.Loading;

/// <summary>Animals that a programme or a waiver names and the records do not have.</summary>
public static class UnknownAnimals
{
    private const string Code = "J0101";
    private const string WaiverCode = "J0102";

    /// <summary>One error each, at its place in the programme's file.</summary>
    public static IEnumerable<Diagnostic> In(Draft draft) =>
        draft.Lists.SelectMany(list => list.Unknown.Select(number => Problem(Code, Severity.Error, number, list.Choice.Span, draft.Herd)))
            .Concat(Booked(draft.Rulebook, draft.Herd)).Concat(Assumed(draft.Rulebook, draft.Herd)).Concat(Waived(draft.Rulebook, draft.Herd));

    /// <summary>An error for each animal that is booked for a session and is none of those on record.</summary>
    public static IEnumerable<Diagnostic> Booked(Rulebook rulebook, Herd herd) => (rulebook.Programme?.Aims.Bookings ?? [])
        .Where(booking => herd.Find(booking.Animal) < 0).Select(booking => Problem(Code, Severity.Error, booking.Animal, booking.Span, herd));

    /// <summary>An error for each donor that has a line of her own in what a plan rests on and is none of the animals on record.</summary>
    public static IEnumerable<Diagnostic> Assumed(Rulebook rulebook, Herd herd) => rulebook.Plans.Assumptions
        .Where(one => one.Donor is not null && herd.Find(one.Donor) < 0).Select(one => Problem(Code, Severity.Error, one.Donor!, one.Span, herd));

    /// <summary>A warning for each waiver that is for none of the animals on record.</summary>
    public static IEnumerable<Diagnostic> Waived(Rulebook rulebook, Herd herd) =>
        rulebook.Waivers.Where(waiver => herd.Find(waiver.Animal) < 0).Select(waiver => Problem(WaiverCode, Severity.Warning, waiver.Animal, waiver.Span, herd));

    /// <summary>The same of rules whose records nobody has read yet; none where they have no waiver, or are not there.</summary>
    public static IEnumerable<Diagnostic> Waived(Rulebook rulebook, string programme, WorkFolder work)
    {
        if (rulebook is not { Waivers.IsEmpty: false, Records: { } keeping })
        {
            return [];
        }

        var folder = RecordsFolder.Of(keeping.Folder, work.Full(programme));
        try
        {
            return Waived(rulebook, RecordsFolder.Read(rulebook, folder, work.Show(folder)));
        }
        catch (RecordsNotFoundException)
        {
            return [];
        }
    }

    private static Diagnostic Problem(string code, Severity severity, string number, SourceSpan span, Herd herd)
    {
        var inLine = span.Text.IndexOf($"\"{number}\"", StringComparison.Ordinal);
        var start = span.Start + Math.Max(0, inLine);
        var line = span.File.LineAt(start);
        var near = NearestName.To(number, herd.Numbers);
        return new Diagnostic(
            code, severity, span.File.Path, line, span.File.ColumnAt(start), inLine < 0 ? 1 : number.Length + 2,
            $"no animal `{number}` in {herd.AnimalsFile}", null,
            near is null ? null : $"did you mean `{near}`? ({herd.AnimalsFile}, line {herd.AnimalLines[herd.Find(near)]})", span.File.Line(line));
    }
}
