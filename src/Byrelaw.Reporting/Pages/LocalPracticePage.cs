namespace Byrelaw.Reporting.Pages;

/// <summary>One page that says what a farm does differently from the rules it starts from, for the vet and the others to sign.</summary>
public static class LocalPracticePage
{
    /// <summary>The page, named <c>local-practice</c>: everything that changes answers.</summary>
    /// <param name="rulebook">As read for today.</param>
    /// <param name="notYet">Lines that people agreed to on a day that has not come.</param>
    public static Page Of(Rulebook rulebook, IEnumerable<string>? notYet = null)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        var name = rulebook.Programme?.Name ?? rulebook.Files[0].Path;
        var items = rulebook.Rules.Select(rule => rule.List).Concat(rulebook.Drops.Select(drop => drop.Rule.List)).Concat(rulebook.Prefers.Select(prefer => prefer.List))
            .Distinct().Select(list => (List: list, Items: LocalPractice.ItemsOf(rulebook, list))).Where(list => list.Items.Count > 0).ToList();
        var top = new DocumentBuilder().Heading(1, $"What is done differently: {name}")
            .Sentence($"All rules stand as the files used say, but for what is written here. Files used: {Phrases.And([.. rulebook.Files.Skip(1).Select(file => file.Path)])}.");
        return new Page("local-practice", $"What is done differently: {name}", new PageHead(rulebook.Programme?.Name ?? "", new HeadFact("", "to be signed")),
        [
            (items.Count == 0 ? top.Sentence("Nothing is done differently.") : top).As("top"),
            .. items.Select(list => new DocumentBuilder().Heading(2, Phrases.Sentence(list.List)).Bullets(list.Items).As("local")),
            Section("The lists and their days", OwnLists.Of(rulebook)),
            Section("The records", OwnRecords.Of(rulebook)),
            Section("The farm's own words", OwnWords.Of(rulebook)),
            Section("Agreed, and not in force yet", (notYet ?? []).Select(line => (Wording)line)),
            Signatures(),
            new DocumentBuilder().Sentence($"Rulebook: {Fingerprint.Of(rulebook)}").As("fingerprints"),
        ]);
    }

    private static Part Section(string heading, IEnumerable<Wording> items) =>
        items.ToList() is { Count: > 0 } some ? new DocumentBuilder().Heading(2, heading).Bullets(some).As("local") : Part.None;

    private static Part Signatures()
    {
        var table = new Table("Signed by", "who", "name", "signature", "date");
        foreach (var who in (string[])["farmer", "vet", "adviser"])
        {
            table.Add(who, "", "", "");
        }

        return new DocumentBuilder().Heading(2, "Read and agreed")
            .Sentence("Whoever signs has read every line above. No safety rule is dropped, waived or passed by any of them: a change of one only adds to it. Medicines are used as the label, the law of the country and a licensed vet say.")
            .Table(table).As("signatures");
    }
}
