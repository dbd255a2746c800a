namespace Byrelaw.Records.Doubts;

/// <summary>Something that happened after she left and before she came back.</summary>
internal static class AfterLeaving
{
    public static IEnumerable<Doubt> Find(Herd herd)
    {
        foreach (var kind in herd.Vocabulary.Kinds.Where(kind => kind is not EventKind { Effect: HerdEffect.Joins }))
        {
            foreach (var (animal, run) in Entries.Animals(herd, kind))
            {
                foreach (var i in Entries.Of(run, animal))
                {
                    var stretch = herd.Membership.StretchAt(animal, run.Days[i]);
                    var left = herd.Membership.From[stretch];
                    if (herd.Membership.States[stretch] == Presence.Out && herd.Membership.Lines[stretch] > 0 && run.Days[i] > left)
                    {
                        yield return new Doubt(
                            "R0203", run.Lines[i], DoubtfulCell.Date,
                            $"{kind.Name} of {herd.Numbers[animal]}, who left on {Entries.Iso(left)} (line {herd.Membership.Lines[stretch]})",
                            "expected nothing after an animal has left",
                            "check her number and both dates; if she came back, write a row for that too");
                    }
                }
            }
        }
    }
}
