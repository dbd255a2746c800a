namespace Byrelaw.Planning.Slipping;

/// <summary>Works out what is left when something goes wrong.</summary>
public static class Slipper
{
    /// <summary>Embryos made from collected eggs are transferred seven or eight days old; common practice, no source.</summary>
    private const int OldestEmbryo = 8;

    private const int Cycle = 21;

    /// <summary>Works it out; null where the plan has no such session.</summary>
    /// <param name="rulebook">With a programme.</param>
    /// <param name="calendar">Its calendar.</param>
    /// <param name="slip">What goes wrong.</param>
    public static SlipAnswer? Slip(Rulebook rulebook, PlanCalendar calendar, Slip slip)
    {
        ArgumentNullException.ThrowIfNull(rulebook);
        ArgumentNullException.ThrowIfNull(calendar);
        ArgumentNullException.ThrowIfNull(slip);
        if (calendar.Sessions.FirstOrDefault(session => session.Number == slip.Session) is not { } before)
        {
            return null;
        }

        var after = After(before, slip);
        ImmutableArray<SlippedTreatment> treatments =
            [.. calendar.Treatments.Where(treatment => treatment.Session == slip.Session).Select(treatment => Slipped(treatment, after, slip))];
        return new(
            slip, before, after, after is not null && after.EmbryoAge(after.FirstTransfer) > OldestEmbryo, treatments,
            after is null ? [] : [.. after.TransferDays.Prepend(after.Collection ?? after.FirstTransfer).Distinct().SelectMany(day => Clash.On(day, after.Programme.Aims)), .. Clash.WithVisits(rulebook.Plans, [after])],
            Fallback(rulebook, calendar, before, treatments, slip));
    }

    /// <summary>The session's days after the slip. A late courier leaves the collection where it was; a late treatment moves nothing.</summary>
    private static Session? After(Session session, Slip slip) => slip.Kind switch
    {
        SlipKind.NoEggs => null,
        SlipKind.TreatmentLate => session,
        SlipKind.CollectionLater when session.Collection is { } day => Moved(session, "collection", day.PlusDays(slip.Days)),
        _ => Moved(session, "first transfer", session.FirstTransfer.PlusDays(slip.Days)),
    };

    private static Session Moved(Session session, string name, LocalDate day)
    {
        var programme = MovedProgramme.To(session.Programme, name, day);
        var first = programme.Date("first transfer")!.Value;
        return session with
        {
            Programme = programme,
            Collection = session.Collection is null ? null : programme.Date("collection"),
            FirstTransfer = first,
            FinalTransfer = programme.Date("final transfer") ?? first,
        };
    }

    private static SlippedTreatment Slipped(TreatmentCalendar before, Session? after, Slip slip)
    {
        var noReturn = PointOfNoReturn.Of(before);
        var served = before.InWindow;
        if (slip.Kind == SlipKind.TreatmentLate)
        {
            return Late(before, noReturn, slip);
        }

        var state = before.Start > slip.On ? SlipState.NotStarted : noReturn is { } point && point.Date > slip.On ? SlipState.MayWait : SlipState.Set;
        if (after is null)
        {
            return new(before, noReturn, state, null, served, 0);
        }

        var window = after.Window;
        if (before.Method.IsNatural)
        {
            // Heats that have been seen stay seen; only those that serve the new days count.
            var heats = window.Heats.Where(heat => before.Window.First is { } first && heat >= first).ToList();
            return new(before, null, SlipState.Set, null, served, Math.Min(1, (double)heats.Count / before.Method.CycleDays!.Value));
        }

        if (state == SlipState.NotStarted)
        {
            var moved = TreatmentCalendar.Of(before.Method, after);
            return new(before, noReturn, state, moved, served, moved.InWindow);
        }

        return new(before, noReturn, state, null, served, before.Heats.Where(heat => window.Serves(heat.Date)).Sum(heat => heat.Share ?? 0));
    }

    /// <summary>A treatment up to the point of no return that is late makes the heats as late; a later one leaves them, for whoever sees them.</summary>
    private static SlippedTreatment Late(TreatmentCalendar before, TreatmentDay? noReturn, Slip slip)
    {
        var isThisMethod = slip.Method is { } name && NameFolding.Fold(before.Method.Name) == NameFolding.Fold(name);
        var shifts = isThisMethod && noReturn is { } point && slip.Day <= point.Step.Day;
        var state = noReturn is { } last && last.Date >= slip.On ? SlipState.MayWait : SlipState.Set;
        var served = before.Heats.Where(heat => before.Window.Serves(shifts ? heat.Date.PlusDays(slip.Days) : heat.Date)).Sum(heat => heat.Share ?? 0);
        return new(before, noReturn, state, null, before.InWindow, before.Method.IsNatural ? before.InWindow : served);
    }

    private static Fallback Fallback(Rulebook rulebook, PlanCalendar calendar, Session before, ImmutableArray<SlippedTreatment> treatments, Slip slip)
    {
        var heats = treatments.Where(treatment => !treatment.Before.Method.IsNatural).SelectMany(treatment => treatment.Before.Heats.Select(heat => heat.Date)).Order().ToList();
        var ahead = heats.Where(heat => heat >= slip.On).ToList();
        var cycle = rulebook.Plans.Methods.FirstOrDefault(method => method.IsNatural)?.CycleDays ?? Cycle;
        var next = calendar.Sessions.FirstOrDefault(session => session.Number > slip.Session)?.Collection
            ?? VisitDays.Of(rulebook.Plans.Visits, "collection", before.Programme.Aims.Region, before.Programme.Aims.Holidays)
                .Where(day => day > (before.Collection ?? before.FirstTransfer)).Select(day => (LocalDate?)day).FirstOrDefault();
        return new(
            before.Programme.Aims.InTheTank,
            ahead.Count > 0 ? ahead[0] : null, ahead.Count > 0 ? ahead[^1] : null,
            heats.Count > 0 ? heats[0].PlusDays(cycle) : null, heats.Count > 0 ? heats[^1].PlusDays(cycle) : null, next);
    }
}
