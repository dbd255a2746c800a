using Byrelaw.Records.Embryos;

namespace Byrelaw.Planning.Pairing;

/// <summary>An embryo that is to be had on the day.</summary>
/// <param name="Embryo">As its row says.</param>
/// <param name="IsFresh">Whether it was never frozen.</param>
/// <param name="Age">How many days old it is that day; null where nobody can tell.</param>
public sealed record EmbryoToday(Embryo Embryo, bool IsFresh, int? Age)
{
    /// <summary>Its label.</summary>
    public string Label => Embryo.Label;

    /// <summary>Those that are fresh or in the tank, in the order of their labels; one in doubt is none.</summary>
    /// <param name="book">The farm's embryos.</param>
    /// <param name="asked">The day, and which are left out.</param>
    public static ImmutableArray<EmbryoToday> Of(EmbryoBook book, PairingAsked asked)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(asked);
        return
        [
            .. from embryo in book.Embryos.OrderBy(embryo => embryo.Label, AnimalNumberOrder.Instance)
               let state = book.StandingOf(embryo).State
               where state is EmbryoStatus.Fresh or EmbryoStatus.InTheTank && !asked.Without.Contains(embryo.Label) && !(embryo.ToBeHadFrom > asked.Day)
               select new EmbryoToday(embryo, state == EmbryoStatus.Fresh, book.AgeOn(embryo, asked.Day)),
        ];
    }
}
