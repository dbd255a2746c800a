namespace Byrelaw.Reporting.Pages;

/// <summary>What to find out, who can, for whom, and how many answers hang on it.</summary>
public static class FindOutPart
{
    /// <summary>The part of the list's page.</summary>
    public static Part Of(ListReport list)
    {
        var all = FindOut.Of(list);
        var part = new DocumentBuilder().Heading(2, "What to find out, and for whom");
        if (all.Count == 0)
        {
            return part.Sentence("Nothing: the records answer for everyone.").As("find-out");
        }

        Table(part, "In the yards", "Scan, palpate, score, read the tag, look back in the book", all.Where(found => found.Who == SettledBy.Yards));
        Table(part, "Laboratory or time", "Sample, send, wait", all.Where(found => found.Who == SettledBy.LaboratoryOrTime));
        return part.As("find-out");
    }

    private static void Table(DocumentBuilder part, string heading, string caption, IEnumerable<FindOut> found)
    {
        var table = new Table(caption, "what to do", "animals", "settles alone", "for");
        foreach (var one in found)
        {
            table.Add(Phrases.Sentence(one.What), $"{one.Numbers.Count}", $"{one.Alone}", string.Join(", ", one.Numbers));
        }

        if (!table.IsEmpty)
        {
            part.Heading(3, heading).Table(table);
        }
    }
}
