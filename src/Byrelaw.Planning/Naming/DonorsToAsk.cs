using Byrelaw.Planning.FindingOut;

namespace Byrelaw.Planning.Naming;

/// <summary>Adds to a session which of its donors are asked about, on which days what they miss is to be found out, and of whom it cannot be in time.</summary>
internal static class DonorsToAsk
{
    /// <summary>The session with them; as it is where it has no list of donors, is given up, or its donors have been judged already.</summary>
    public static NamedSession In(NamedSession named, LocalDate today)
    {
        var session = named.Session;
        if (session.Donors is not { } donors || session.IsStopped || donors.Choice.JudgedFrom < today)
        {
            return named;
        }

        var day = donors.Choice.JudgedFrom;
        var gates = new Gates([new GateDays(donors.Choice, day, donors.Choice.JudgedTo)], null, day, day);
        var standings = new Asking(session, gates, today, donors.Planned).Of(donors.Animals);
        var proofs = standings.Where(one => one.Value.Proof is not null).ToDictionary(one => one.Key, one => one.Value.Proof!);
        var days = proofs.Count == 0 ? [] : new UsefulDays(new Prover(session.Rulebook, session.Judge.Herd, donors.Planned), gates, today).Of(proofs);
        return named with
        {
            DonorsToAsk = [.. donors.Animals.Where(donor => days.ContainsKey(donor.Animal)).Select(donor => new NamedAnimal(donor.Animal, donor.Number, "", day, donor.Score) { ToFindOut = days[donor.Animal] })],
            DonorsNotInTime = [.. donors.Animals.Where(donor => standings[donor.Animal].Failed == FailedCheck.NotKnownInTime).Select(donor => new DonorNotInTime(donor.Number, standings[donor.Animal].Closed))],
        };
    }
}

/// <summary>A donor of whom something is not known, and cannot be found out by the day on which she is judged.</summary>
/// <param name="Number">Her number on the farm.</param>
/// <param name="Closed">A record that counts too late, if that is what stands in the way; else null.</param>
public sealed record DonorNotInTime(string Number, AskedRecord? Closed);
