namespace Byrelaw.Reporting.Documents;

/// <summary>Places of a page that a link leads to.</summary>
public static class Anchors
{
    /// <summary>An animal's row: <c>a-1064</c>, which no section can be called. What is no letter and no digit is written as its number between hyphens, so that two animals never share a place.</summary>
    public static string Of(string number)
    {
        var anchor = new StringBuilder("a-");
        foreach (var c in number)
        {
            _ = char.IsAsciiLetterOrDigit(c) ? anchor.Append(c) : anchor.Append(CultureInfo.InvariantCulture, $"-{(int)c:x}-");
        }

        return anchor.ToString();
    }
}
