using Byrelaw.Planning.FindingOut;

namespace Byrelaw.Planning.Naming;

/// <summary>Adds to those who are asked about on which days what they miss is to be found out.</summary>
internal static class DaysToFindOut
{
    /// <summary>The session with them.</summary>
    public static NamedSession In(NamedSession session, LocalDate today) => session with
    {
        ToAsk = Of(session, session.ToAsk, today),
        WatchedIfKnown = Of(session, session.WatchedIfKnown, today),
    };

    private static ImmutableArray<NamedAnimal> Of(NamedSession session, ImmutableArray<NamedAnimal> asked, LocalDate today)
    {
        var found = new Dictionary<int, ImmutableArray<ToFindOut>>();
        foreach (var method in session.Methods)
        {
            var proofs = asked.Where(animal => animal.Method == method.Method.Name && method.Animals[animal.Animal].Proof is not null).ToDictionary(animal => animal.Animal, animal => method.Animals[animal.Animal].Proof!);
            if (proofs.Count > 0)
            {
                var prover = new Prover(session.Session.Rulebook, session.Session.Judge.Herd);
                foreach (var (animal, days) in new UsefulDays(prover, MethodChecked.GatesOf(session.Session, method.Method, method.Day), today).Of(proofs))
                {
                    found[animal] = days;
                }
            }
        }

        return [.. asked.Select(animal => animal with { ToFindOut = found.GetValueOrDefault(animal.Animal, []) })];
    }
}
