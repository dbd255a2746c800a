using Byrelaw.Planning.Naming;

namespace Byrelaw.Reporting.Lists;

/// <summary>Who is named for which session of a draft.</summary>
public static class DraftNames
{
    /// <summary>The sessions by name; none where the draft is not of every session that is to come, where rules cannot be read, or where no list of recipients is drawn up.</summary>
    public static ImmutableArray<NamedSession> Of(Draft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        if (draft.Rulebook.Programme is not { } programme || !draft.Herd.ReachesADay || draft.Lists.IsEmpty || draft.Lists.Any(list => list.Session is null || list.IsBroken)
            || ProgrammeLists.Recipients(programme) is null || programme.Aims.MethodsOf(draft.Rulebook.Plans).IsEmpty)
        {
            return [];
        }

        var ahead = Session.Of(programme).Where(session => session.FinalTransfer >= draft.Herd.KnownDay).Select(session => session.Number);
        return ahead.All(number => draft.Lists.Any(list => list.Session == number)) ? Namer.Name(draft, draft.Herd.KnownDay) : [];
    }
}
