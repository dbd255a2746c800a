namespace Byrelaw.Records.Sources;

/// <summary>Finds animals by a fact, as a laboratory's sheet names them by their tags: spaces and dashes aside.</summary>
internal sealed class FoundAnimals
{
    private const int ByNumbers = -1;

    private readonly Dictionary<(int Fact, string Text), List<string>> _numbers = [];

    /// <summary>Takes what a fact says of an animal.</summary>
    public void Add(Fact fact, string text, string number)
    {
        var plain = Plain(text);
        if (plain.Length == 0 || number.Length == 0 || Unreadable.Is(text) || Unreadable.Is(number))
        {
            return;
        }

        Add((fact.Id, plain), number);
    }

    private void Add((int Fact, string Text) what, string number)
    {
        if (!_numbers.TryGetValue(what, out var numbers))
        {
            _numbers.Add(what, [number]);
        }
        else if (!numbers.Contains(number))
        {
            numbers.Add(number);
        }
    }

    /// <summary>Takes an animal's number as a source writes it that names her by it.</summary>
    public void Add(string number)
    {
        if (number.Length > 0 && !Unreadable.Is(number))
        {
            Add((ByNumbers, PlainNumber(number)), number);
        }
    }

    /// <summary>The number of the animal who has this one but for zeros in front; marked as <see cref="Number"/> is.</summary>
    public string ByNumber(string text) => text.Length == 0 ? "" : Found((ByNumbers, PlainNumber(text)), text);

    /// <summary>The animal's number; the text, marked, where none has it, and with the numbers of all where more than one has it: nobody can tell whose a row is.</summary>
    public string Number(Fact fact, string text) =>
        text.Length == 0 ? "" : Found((fact.Id, Plain(text)), text);

    private string Found((int Fact, string Text) what, string text) =>
        _numbers.GetValueOrDefault(what) is not { } numbers ? Unreadable.Of(text)
        : numbers is [var only] ? only
        : Unreadable.Of(text, numbers);

    /// <summary>Zeros in front aside; of zeros alone one is left.</summary>
    private static string PlainNumber(string text) => text.TrimStart('0') is { Length: > 0 } plain ? plain : "0";

    private static string Plain(string text) => string.Concat(text.Where(sign => sign is not (' ' or '-'))).ToUpperInvariant();
}
