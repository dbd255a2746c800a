namespace Byrelaw.Records.Sources;

/// <summary>Finds animals by a fact, as a laboratory's sheet names them by their tags: spaces and dashes aside.</summary>
internal sealed class FoundAnimals
{
    private readonly Dictionary<(int Fact, string Text), string?> _numbers = [];

    /// <summary>Takes what a fact says of an animal.</summary>
    public void Add(Fact fact, string text, string number)
    {
        var key = (fact.Id, Plain(text));
        if (text.Length == 0)
        {
            return;
        }

        // Two animals with it: nobody can tell whose a row is.
        _numbers[key] = _numbers.TryGetValue(key, out var other) && other != number ? null : number;
    }

    /// <summary>The animal's number; the text, marked, where none or more than one has it.</summary>
    public string Number(Fact fact, string text) =>
        text.Length == 0 ? "" : _numbers.GetValueOrDefault((fact.Id, Plain(text))) ?? Unreadable.Of(text);

    private static string Plain(string text) => string.Concat(text.Where(sign => sign is not (' ' or '-'))).ToUpperInvariant();
}
