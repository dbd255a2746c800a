using Pidgin;

namespace Byrelaw.Language.Grammar;

/// <summary>
/// None, one or more of a thing, as Pidgin's own <c>Many</c>. That one is a method of the generic
/// parser type itself, so a native compiler follows it into ever deeper types (warning IL3054).
/// </summary>
internal static class SeveralExtensions
{
    /// <summary>None, one or more, until one fails without having taken anything.</summary>
    public static Parser<Token, IEnumerable<T>> Several<T>(this Parser<Token, T> item) => new SeveralParser<T>(item);

    private sealed class SeveralParser<T>(Parser<Token, T> item) : Parser<Token, IEnumerable<T>>
    {
        public override bool TryParse(ref ParseState<Token> state, ref PooledList<Expected<Token>> expecteds, out IEnumerable<T> result)
        {
            var items = new List<T>();
            var start = state.Location;
            var own = new PooledList<Expected<Token>>(state.Configuration.ArrayPoolProvider.GetArrayPool<Expected<Token>>());
            while (item.TryParse(ref state, ref own, out var one))
            {
                if (state.Location == start)
                {
                    throw new InvalidOperationException("Several of something that takes nothing would never end.");
                }

                items.Add(one);
                own.Clear();
                start = state.Location;
            }

            var stoppedInside = state.Location > start;
            if (stoppedInside)
            {
                expecteds.AddRange(own.AsSpan());
            }

            own.Dispose();
            result = items;
            return !stoppedInside;
        }
    }
}
