using Byrelaw.Records.Entering;
using Byrelaw.Records.Ledger;

namespace Byrelaw.Planning.Entering;

/// <summary>What was done and should not have been. It is written all the same, because it happened; who records it is told.</summary>
public enum WrongButDoneWhy
{
    /// <summary>She did not surely pass the safety rules for treatment on that day.</summary>
    NotSafeToTreat,

    /// <summary>She did not surely pass the safety rules of the recipients' list on that day.</summary>
    NotSafeToCarry,

    /// <summary>The sheet itself says that a test found her in calf.</summary>
    FoundInCalf,

    /// <summary>The embryo is not the one on her line.</summary>
    OtherEmbryo,

    /// <summary>It went into the horn away from the corpus luteum.</summary>
    OtherSide,

    /// <summary>Nobody else read the straw back.</summary>
    NotReadBack,

    /// <summary>It was done on another day than the sheet's.</summary>
    OtherDay,
}

/// <summary>One such entry.</summary>
/// <param name="Entry">What was done.</param>
/// <param name="Why">What is wrong with it.</param>
public sealed record WrongButDone(RecordedEntry Entry, WrongButDoneWhy Why)
{
    /// <summary>All of a sheet.</summary>
    /// <param name="rulebook">With a programme.</param>
    /// <param name="herd">By what was known without the sheet.</param>
    /// <param name="sheet">The sheet as the ledger has it.</param>
    /// <param name="entries">What is written of it.</param>
    public static ImmutableArray<WrongButDone> Of(Rulebook rulebook, Herd herd, Sheet sheet, IReadOnlyList<RecordedEntry> entries)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        ArgumentNullException.ThrowIfNull(herd);
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(entries);
        var rules = Session.Of(rulebook.Programme!).FirstOrDefault(one => one.Number == sheet.Session) is { } session ? SessionsInTurn.RulesOf(rulebook, session) : rulebook;
        var (safety, programme) = (new SafetyOnDay(rules, herd, knownOn: null), rules.Programme!);
        return [.. entries.Where(entry => !entry.IsNotDone).SelectMany(entry => Of(entry).Select(why => new WrongButDone(entry, why)))];

        IEnumerable<WrongButDoneWhy> Of(RecordedEntry entry)
        {
            var (animal, row) = (herd.Find(entry.Animal), sheet.Rows.FirstOrDefault(one => one.Row == entry.Row));
            switch (entry.Kind)
            {
                // A device that comes out needs no rule; what is given with it does.
                case EventKind { Marks: Marks.Treatment } when entry.GivesSomething && !safety.Holds(ProgrammeLists.Treatment(programme), animal, entry.Date):
                    yield return WrongButDoneWhy.NotSafeToTreat;
                    break;
                case EventKind { Marks: Marks.Transfer }:
                    foreach (var why in OfTransfer(entry, row, animal))
                    {
                        yield return why;
                    }

                    break;
            }

            if ((entry.Kind is EventKind { Marks: Marks.Transfer } || entry.GivesSomething) && entries.Any(other => other.Animal == entry.Animal && other.Date <= entry.Date && IsFoundInCalf(other)))
            {
                yield return WrongButDoneWhy.FoundInCalf;
            }

            if (!sheet.IsOwn && entry.Date != (row?.For ?? sheet.For))
            {
                yield return WrongButDoneWhy.OtherDay;
            }
        }

        bool IsFoundInCalf(RecordedEntry entry) => !entry.IsNotDone && entry.Kind == herd.Vocabulary.FindKind("pregnancy test") && entry.Kind is TestKind test && test.PlaceOf(entry.Value) is >= 0 and var place && place == test.PlaceOf("pregnant");

        IEnumerable<WrongButDoneWhy> OfTransfer(RecordedEntry entry, SheetRow? row, int animal)
        {
            if (!safety.Holds(ProgrammeLists.Recipients(programme), animal, entry.Date))
            {
                yield return WrongButDoneWhy.NotSafeToCarry;
            }

            if (row?.Embryo is { } embryo && entry.Detail("embryo") is { Length: > 0 } other && other != embryo)
            {
                yield return WrongButDoneWhy.OtherEmbryo;
            }

            var corpus = entries.FirstOrDefault(one => one.Row == entry.Row && NameFolding.Fold(one.Kind.Name) == "ovary check")?.Detail("side") ?? "";
            if (entry.Detail("side") is { Length: > 0 } side && corpus.Length > 0 && NameFolding.Fold(corpus) != NameFolding.Fold(side))
            {
                yield return WrongButDoneWhy.OtherSide;
            }

            if (entry.Kind.Details.Any(detail => NameFolding.Fold(detail.Name) == "read by") && (entry.Detail("read by") is var by && (by.Length == 0 || by == entry.Detail("operator"))))
            {
                yield return WrongButDoneWhy.NotReadBack;
            }
        }
    }
}
