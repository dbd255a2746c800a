namespace Byrelaw.Records.Sources;

/// <summary>Finds animals by a fact, as a laboratory's sheet names them by their tags: spaces and dashes aside.</summary>
internal sealed class FoundAnimals
{
    private readonly Dictionary<(int Fact, string Text), List<string>> _numbers = [];

    /// <summary>Takes what a fact says of an animal.</summary>
    public void Add(Fact fact, string text, string number)
    {
        var plain = Plain(text);
        if (plain.Length == 0 || number.Length == 0 || Unreadable.Is(text) || Unreadable.Is(number))
        {
            return;
        }

        if (!_numbers.TryGetValue((fact.Id, plain), out var numbers))
        {
            _numbers.Add((fact.Id, plain), [number]);
        }
        else if (!numbers.Contains(number))
        {
            numbers.Add(number);
        }
    }

    /// <summary>The animal's number; the text, marked, where none has it, and with the numbers of all where more than one has it: nobody can tell whose a row is.</summary>
    public string Number(Fact fact, string text) =>
        text.Length == 0 ? "" : _numbers.GetValueOrDefault((fact.Id, Plain(text))) is not { } numbers ? Unreadable.Of(text)
        : numbers is [var only] ? only
        : Unreadable.Of(text, numbers);

    private static string Plain(string text) => string.Concat(text.Where(sign => sign is not (' ' or '-'))).ToUpperInvariant();
}
