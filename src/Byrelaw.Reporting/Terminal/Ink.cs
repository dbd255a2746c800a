namespace Byrelaw.Reporting.Terminal;

/// <summary>How text is set off on a terminal; plain where colour is not wanted.</summary>
/// <param name="IsColoured">Whether escape sequences may be written.</param>
public sealed record Ink(bool IsColoured)
{
    /// <summary>No escape sequences at all.</summary>
    public static readonly Ink Plain = new(false);

    /// <summary>Bold.</summary>
    public string Bold(string text) => Wrap("1", text);

    /// <summary>Faint.</summary>
    public string Faint(string text) => Wrap("2", text);

    /// <summary>For errors.</summary>
    public string Red(string text) => Wrap("31", text);

    /// <summary>For warnings.</summary>
    public string Yellow(string text) => Wrap("33", text);

    private string Wrap(string code, string text) => IsColoured && text.Length > 0 ? $"\u001b[{code}m{text}\u001b[0m" : text;
}
