namespace Byrelaw.Planning.Seasons;

/// <summary>How many more would be needed to be as sure as wished, and whether there are so many.</summary>
internal static class MoreNeeded
{
    /// <summary>Each by itself, tried further than this farm may go, so that it can be said how far it falls short.</summary>
    public static ImmutableArray<Needed> Of(Forecaster forecaster, SeasonInputs inputs, SeasonNumbers numbers, ImmutableArray<SessionSize> sessions)
    {
        // More at each session: the one for which most are treated says how many are left to add. Who is watched takes no place.
        int? treated = numbers.Methods.IsEmpty || sessions.IsEmpty ? null : sessions.Max(session => session.Treated.Where(one => inputs.Plans.Method(one.Method.Name)?.IsNatural != true).Sum(one => one.Animals));
        return
        [
            .. from further in Enum.GetValues<Further>()
               where further != Further.Recipient || treated is not null
               select Needed.Find(forecaster, sessions, further, Most(further), Room(further)),
        ];

        static int Most(Further further) => further switch
        {
            Further.Session => 20,
            Further.Recipient => 100,
            _ => 30,
        };

        int Room(Further further) => Math.Max(0, further switch
        {
            Further.Session => inputs.MostSessions - inputs.Sessions,
            Further.Recipient => inputs.Animals - treated!.Value,
            Further.DonorWithRecipients when treated > 0 =>
                Math.Min(inputs.MostDonors, inputs.Animals * inputs.Donors / treated.Value) - inputs.Donors,
            _ => inputs.MostDonors - inputs.Donors,
        });
    }

    /// <summary>All sessions, donors and animals there are, by the method that has most of them accepted.</summary>
    public static SessionSize Everything(SeasonInputs inputs, SeasonNumbers numbers)
    {
        var surest = numbers.Methods.IsEmpty ? null : numbers.Methods.MaxBy(method => method.Option.Preparing.Used.Share);
        return new(
            Math.Max(inputs.MostDonors, inputs.Donors),
            surest is null ? [] : [new(surest.Option.Preparing, inputs.Animals)],
            Math.Max(inputs.MostSessions, inputs.Sessions));
    }
}
