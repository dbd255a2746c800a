using Byrelaw.Planning.Carrying;
using Byrelaw.Planning.Forecasting;
using Byrelaw.Planning.Mattering;
using Byrelaw.Planning.Naming;
using Byrelaw.Planning.Sheets;
using Byrelaw.Planning.Yardsticks;
using Byrelaw.Reporting.Plans;

namespace Byrelaw.Reporting.Json;

/// <summary>The same facts as a plan's pages, for programs.</summary>
public static class PlanJsonText
{
    /// <summary>A plan.</summary>
    public static string Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var (draft, numbers, aims) = (plan.Draft, plan.Numbers, PlanHead.Aims(plan));
        return SeenJson.Of(
            new PlanJson(
                PlanHead.Name(plan), JudgedWith.NameAndVersion, Fingerprints.RulebookOf(draft), draft.Herd.Fingerprint, ReachWords.Iso(draft.Herd), Iso(plan.Today),
                [.. plan.Sessions.Select(Session)], [.. MorningSheets.Of(plan).Select(MorningJson.Of)], [.. plan.Calendar.Tasks.Select(Task)], [.. plan.Calendar.Entries.Select(entry => Entry(entry, aims))],
                aims.Wants is { } wants ? new(Keys.Snake($"{wants.What}"), wants.Count, wants.Sure) : null,
                Outcome(numbers.Forecast, numbers.Budget, aims), Outcome(numbers.Between, null, aims), Outcome(numbers.IfAllPass, numbers.BudgetIfAllPass, aims),
                [.. plan.Yardsticks.Select(Yardstick)], [.. plan.WhatMatters.Select(Matter)],
                [.. plan.SideBySide.Select(one => new MethodJson(one.Method.Name, one.IsChosen, one.Sessions, one.Sure, one.ToAsk, one.Used.Share, one.CostPerAccepted, one.CostPerLiveHeifer, one.IsAtLeast))],
                [.. plan.WhoCarries?.Sorts.Select(Carrier) ?? []], [.. DecisionWords.Of(plan).Select(task => Decision(plan, task))]),
            JsonShapes.Readable.PlanJson);
    }

    private static PlanSessionJson Session(NamedSession one)
    {
        var days = one.Session.Days;
        return new(
            one.Number, days.Collection is { } day ? Iso(day) : null, Iso(days.FirstTransfer), Iso(days.FinalTransfer), one.Wanted, one.Short, Named(one.Named), Named(one.ToAsk),
            Named(one.Spares), Named(one.Watched), Named(one.WatchedIfKnown), [.. one.BookedAndOut.Select(booked => booked.Booking.Animal)], [.. one.BegunAndNotNamed.Select(begun => one.Session.Judge.Herd.Numbers[begun.Animal])],
            [.. one.Session.Collected.Select(donor => donor.Number)], [.. one.DonorsToAsk.Select(donor => donor.Number)], [.. one.DonorsNotInTime.Select(donor => donor.Number)]);
    }

    private static IReadOnlyList<NamedJson> Named(ImmutableArray<NamedAnimal> animals) => [.. animals.Select(one => new NamedJson(one.Number, one.Method, Iso(one.Start), one.IsBegun, one.IsBooked))];

    private static PlanTaskJson Task(Planning.LeadTimes.TaskDates task) => new(
        task.Task.Name, task.Session, Iso(task.Due), Iso(task.LastStart), task.Earliest is { } early ? Iso(early) : null, task.IsDone, task.DaysPast, task.IsForAnimals, [.. task.Animals.Select(one => one.Number)]);

    private static DecisionJson Decision(Plan plan, Planning.LeadTimes.TaskDates task)
    {
        var (spent, still) = (SpentBy.Of(plan, task.Session, task.Due), StillCosts.Of(plan, task.Session, task.Due));
        return new(
            task.Task.Name, task.Session, Iso(task.Due), [.. task.Task.DecidedBy], task.Task.IfStopped!, spent?.Money.Amount, still?.Money.Amount, spent is { IsAll: false } || still is { IsAll: false },
            DecisionWords.Key(plan, task), task.SaidDone is { } done ? Iso(done.On) : null);
    }

    private static PlanEntryJson Entry(PlanEntry entry, Aims aims) => new(entry.Id, Keys.Snake($"{entry.Kind}"), Iso(entry.From), Iso(entry.To), entry.Session, EntryWords.What(entry, aims));

    private static OutcomeJson? Outcome(Forecast? forecast, Budget? budget, Aims aims) => forecast is null ? null : new(
        [
            .. forecast.Stages.Select(stage => new StageJson(
                Keys.Snake($"{stage.Stage}"), stage.Counts.Quantile(0.1), stage.Counts.Quantile(0.5), stage.Counts.Quantile(0.9), stage.Counts.Mean, stage.Rate?.Share, stage.OfFrozen?.Share)),
        ],
        forecast.Chance, forecast.CountedOn, forecast.Thawed?.Mean, budget is null ? null : Money(budget, aims));

    private static BudgetJson Money(Budget budget, Aims aims) => new(
        budget.Currency, budget.Total, budget.IsAtLeast, budget.Low, budget.High, budget.Limit, budget.ChanceWithinLimit, budget.Each.Transfer, budget.Each.LiveHeifer,
        [.. budget.Lines.Select(line => new ChargeJson(PlanWords.Of(line.Charge), line.Charge.Price, line.Number, line.Amount))],
        [.. budget.NotPriced.Select(PlanWords.Of)], [.. PaidBy.Of(aims.Shared, budget).Select(one => new PayerJson(one.Who, one.Amount))]);

    private static YardstickJson Yardstick(YardstickHeld held) => new(
        held.Yardstick.Method, held.Said, held.Yardstick.Cost?.Currency, held.Plan, held.IsAtLeast, [.. held.Parts.Select(part => new YardstickPartJson(YardsticksPart.Name(part), part.Value, part.SoFar))],
        held.Without is { } without ? [.. without.Select(YardsticksPart.Name)] : null);

    private static MatterJson Matter(Matter one) => new(MattersPart.Name(one), one.Low, one.High, one.IsExact, one.AtLow, one.AtHigh, one.Difference);

    private static CarrierJson Carrier(CarrierBeside one) => new(
        Keys.Snake($"{one.Carrier}"), one.Sure, one.ToAsk, one.Pregnant?.Share?.Value, one.Pregnant?.Share?.Weight, one.Pregnant?.Source ?? one.Pregnant?.Because, one.CostPerLiveCalf, one.IsAtLeast,
        one.Bought?.Animals, one.Bought?.More, one.Bought?.Chance);

    private static string Iso(LocalDate date) => LocalDatePattern.Iso.Format(date);
}
