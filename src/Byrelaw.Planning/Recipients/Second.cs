namespace Byrelaw.Planning.Recipients;

/// <summary>What becomes of animals that a treatment did not bring in heat in time: they are treated again.</summary>
/// <param name="Chance">Which days, as the method says.</param>
/// <param name="SeenInTime">The share of animals treated whose heat was seen in time, on whatever day.</param>
/// <param name="UsedAgain">
/// The share of those treated again that is used. It is the method's own: no rate of a second treatment is made up, though second treatments
/// usually do better because more animals can answer to them.
/// </param>
public sealed record Second(SecondChance Chance, Rate SeenInTime, Rate UsedAgain)
{
    /// <summary>The share of animals treated that is treated a second time.</summary>
    public Rate TreatedAgain => Rate.Matching(1 - SeenInTime.Share, SeenInTime.Variance);

    /// <summary>The share of animals first treated that is used at the second chance.</summary>
    public Rate UsedOfAll => TreatedAgain.Then(UsedAgain);

    /// <summary>The second chance's heats serve transfers that come this many days after the first ones, at the earliest.</summary>
    public int LaterFrom => Chance.From;

    /// <summary>And at the latest.</summary>
    public int LaterTo => Chance.To;

    /// <summary>The second chance of a method; null where it has none, or asks for no heat.</summary>
    /// <param name="method">The method.</param>
    /// <param name="used">The share of its animals that is used.</param>
    public static Second? Of(Method method, Rate used)
    {
        if (method.Again is not { } again || method.InHeat is not { } inHeat)
        {
            return null;
        }

        var inTime = inHeat.Days.IsEmpty ? 1 : Math.Clamp(inHeat.Days.Where(day => day.Day <= again.NotSeenBy).Sum(day => day.Share), 0, 1);
        var seen = inHeat.Share.ToRate().Then(new(inTime));
        return new(again, method.HeatSeen is { } share ? seen.Then(share.ToRate()) : seen, used);
    }
}
