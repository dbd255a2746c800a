namespace Byrelaw.Records.Spellings;

/// <summary>Finds the answers of tests as they stand in the file. For one thread.</summary>
internal sealed class AnswerLookup
{
    /// <summary>Not a declared answer, as <see cref="TestKind.PlaceOf"/> says it.</summary>
    public const int Undeclared = -1;

    private readonly Dictionary<int, SpellingTable> _byTest = [];

    /// <summary>The answer's place among the declared ones, <see cref="KindRun.NotKnown"/> for a result that is not there yet, or <see cref="Undeclared"/>.</summary>
    public int Find(TestKind test, ReadOnlySpan<byte> spelling)
    {
        if (!_byTest.TryGetValue(test.Id, out var answers))
        {
            _byTest.Add(test.Id, answers = new SpellingTable());
        }

        if (!answers.TryFind(spelling, out var answer))
        {
            answer = test.PlaceOf(Encoding.UTF8.GetString(spelling));
            answers.Set(spelling, PendingCell.Is(spelling) ? KindRun.NotKnown : answer);
            answers.TryFind(spelling, out answer);
        }

        return answer;
    }
}
