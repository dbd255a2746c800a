using Byrelaw.Planning.Sheets;

namespace Byrelaw.Planning.Naming;

/// <summary>Who was to begin by a sheet of hormones that is not on record yet: she may have been treated, so nobody takes her place, and nobody counts on her.</summary>
/// <param name="Animal">Her place in the herd.</param>
/// <param name="Session">The session of the sheet.</param>
/// <param name="Method">The method whose day 0 that morning was.</param>
/// <param name="Sheet">Its number.</param>
/// <param name="Row">Her row.</param>
public sealed record OnOpenSheet(int Animal, int Session, string Method, string Sheet, int Row)
{
    /// <summary>All of them, in the order of their rows: spares stand last on a sheet.</summary>
    internal static ImmutableArray<OnOpenSheet> Of(Herd herd, ImmutableArray<JudgedSession> sessions, ImmutableArray<MethodChecked>[] methods)
    {
        if (TreatmentKind.Of(herd.Vocabulary) is not { } given)
        {
            return [];
        }

        return
        [
            .. from open in herd.OpenRows
               where open.Sheet.Work == DrawnSheet.LetterOf(SheetWork.Hormones) && open.Animal >= 0 && open.Kind == given.Declaration.Id && open.Sheet.Session is not null
               let place = sessions.ToList().FindIndex(session => session.Number == open.Sheet.Session)
               where place >= 0
               let method = methods[place].FirstOrDefault(method => !method.Method.IsNatural && method.Days.Start == open.For)
               where method is not null
               orderby open.Sheet.Number, open.Row.Row
               select new OnOpenSheet(open.Animal, open.Sheet.Session!.Value, method.Method.Name, open.Sheet.Number, open.Row.Row),
        ];
    }
}
